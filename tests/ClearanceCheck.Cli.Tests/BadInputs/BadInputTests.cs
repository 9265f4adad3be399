using ClearanceCheck.Tests.Shared;

namespace ClearanceCheck.Cli.Tests.BadInputs;

/// <summary>Every row of the list of bad inputs through the door: all that is said, word by word, and the status it ends with.</summary>
public sealed class BadInputTests
{
    private const int MostLinesOfAFault = 6;

    public static TheoryData<string> Names => [.. BadInputs.All.Select(b => b.Golden)];

    [Theory]
    [MemberData(nameof(Names))]
    public void It_gets_its_whole_message(string name)
    {
        BadInput bad = BadInputs.All.Single(b => b.Golden == name);
        using Workshop shop = Workshop.WithFixture();
        bad.Spoil(shop);

        Answer answer = shop.Run(["inspect", "inspection.yaml", "--out", "out", .. bad.Options]);

        string shown = bad.Shows is null ? "" : "\n" + bad.Shows(shop);
        Golden.Matches(name, $"status {answer.Status}\n{answer.Error.ReplaceLineEndings("\n")}{shown}".TrimEnd('\n'));
        answer.Status.ShouldBe(bad.Shows is null ? ExitStatus.UnusableInput : ExitStatus.Findings);
        if (bad.Shows is null) shop.Has("out").ShouldBeFalse();
        foreach (string fault in answer.Error.Split("\n\n", StringSplitOptions.RemoveEmptyEntries)) fault.Trim('\n').Split('\n').Length.ShouldBeLessThanOrEqualTo(MostLinesOfAFault);
    }

    [Fact]
    public void Every_row_of_the_list_has_a_case_or_says_what_it_waits_for() =>
        BadInputs.All.Select(b => b.Row).Concat(BadInputs.Waiting.Keys).Distinct().Order().ShouldBe(Enumerable.Range(1, BadInputs.LastRow));

    [Fact]
    public void No_row_waits_that_has_a_case() => BadInputs.Waiting.Keys.ShouldAllBe(w => BadInputs.All.All(b => b.Row != w));

    [Fact]
    public void Every_expected_text_belongs_to_a_case() => Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "Expectations"), "*.txt")
        .Select(f => Path.GetFileNameWithoutExtension(f)).ShouldBe(Names.Select(n => n.Data), ignoreOrder: true);
}
