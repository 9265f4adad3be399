using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Rules;
using ClearanceCheck.Sweeping;

namespace ClearanceCheck.Reporting.Tests.Wording;

public sealed class ReportWordsTests
{
    [Theory]
    [InlineData("common-practice", "none", "Common practice, no source: x")]
    [InlineData("published", "read", "Published, read in the source: x")]
    [InlineData("published", "second-hand", "Published, known at second hand: x")]
    [InlineData("common-practice", "from-memory", "Common practice, from memory, not looked up: x")]
    [InlineData("plain-fact", "none", "Plain fact, needs no source: x")]
    [InlineData("shop", "none", "The shop's own rule: x")]
    public void A_source_says_how_it_is_known(string basis, string known, string sentence) =>
        ReportWords.Source(new SourceCard(basis, known, "x")).ShouldBe(sentence);

    [Fact]
    public void Every_word_for_machines_reads_back_and_every_outcome_has_its_own_words()
    {
        Check<DecisionKind>(MachineWords.Of, ReportWords.Decision);
        Check<Verdict>(MachineWords.Of, ReportWords.Verdict);
        Check<Severity>(MachineWords.Of, ReportWords.Severity);
        Check<Grade>(MachineWords.Of, ReportWords.Grade);
        MachineWords.Parse<Verdict>("passes", MachineWords.Of).ShouldBeNull();
    }

    private static void Check<T>(Func<T, string> machine, Func<T, string> people)
        where T : struct, Enum
    {
        foreach (T value in Enum.GetValues<T>()) MachineWords.Parse(machine(value), machine).ShouldBe(value);
        Enum.GetValues<T>().Select(people).ShouldBeUnique();
    }
}
