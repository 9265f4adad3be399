using ClearanceCheck.Documents;

namespace ClearanceCheck.Rules.Tests;

/// <summary>Broken libraries and overlays, each with its one message; none crashes, and the rules beside the fault still count.</summary>
public sealed class BrokenSetTests
{
    // A header that is wrong leaves nothing to go by.
    private static readonly string[] WithoutLibrary = ["header-", "base-"];

    public static TheoryData<string> Names => [.. Directory.EnumerateFiles(BrokenSet.Folder, "*.txt").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_broken_set_gets_its_message(string name)
    {
        BrokenSet set = BrokenSet.Read(name);
        string said = Cultures.Under("", set.Say);
        if (Environment.GetEnvironmentVariable("CLEARANCECHECK_BROKEN") is { Length: > 0 } folder) File.WriteAllText(Path.Combine(folder, name + ".txt"), BrokenSet.WithSaid(set.Input, said));
        else said.ShouldBe(set.Said);

        Cultures.Under("de-DE", set.Say).ShouldBe(said);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void One_fault_gets_one_message_with_its_place_and_what_would_be_right(string name)
    {
        (RuleLibrary? library, DiagnosticBag diagnostics) = BrokenSet.Read(name).Load();

        Diagnostic fault = diagnostics.Ordered.ShouldHaveSingleItem();
        fault.Help.ShouldNotBeNullOrWhiteSpace();
        fault.Message.ShouldEndWith(".");
        (fault.Span.Line > 1 || name.StartsWith("header-", StringComparison.Ordinal)).ShouldBeTrue();
        bool isNote = name.StartsWith("note-", StringComparison.Ordinal);
        (fault.Severity == Documents.Severity.Note).ShouldBe(isNote);
        if (WithoutLibrary.Any(p => name.StartsWith(p, StringComparison.Ordinal)))
        {
            library.ShouldBeNull();
            return;
        }

        library.ShouldNotBeNull().Rules.ShouldNotBeEmpty();
        library.NotLoaded.Length.ShouldBe(isNote ? 0 : 1);
    }

    [Fact]
    public void There_are_more_than_sixty_broken_sets() => Names.Count.ShouldBeGreaterThan(60);
}
