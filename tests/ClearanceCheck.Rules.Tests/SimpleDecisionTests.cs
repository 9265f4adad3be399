using ClearanceCheck.Documents;
using CsCheck;

namespace ClearanceCheck.Rules.Tests;

/// <summary><c>decision: simple</c>: the value decides on the limit, and a floor is judged with the give or take.</summary>
public sealed class SimpleDecisionTests
{
    [Theory]
    [InlineData(50, 50, 7, ConformityOutcome.Conforms)]
    [InlineData(49.9, 49.9, 0, ConformityOutcome.Fails)]
    [InlineData(50, 50, 15, ConformityOutcome.Conforms)]
    [InlineData(50, 50, 15.1, ConformityOutcome.Undecided)]
    [InlineData(52, 49, 1, ConformityOutcome.Undecided)]
    [InlineData(60, 60, 30, ConformityOutcome.Undecided)]
    public void The_value_decides_on_the_limit_and_the_interval_on_the_floor(double value, double bound, double giveOrTake, ConformityOutcome expected)
    {
        Conformity.JudgeSimply(new RuleLimit(50, null), 35, value, bound, giveOrTake).ShouldBe(expected);
        Conformity.JudgeSimply(new RuleLimit(null, -50), -35, -value, -bound, giveOrTake).ShouldBe(expected);
    }

    [Fact]
    public void What_a_guarded_rule_finds_right_a_simple_one_does_too() =>
        Gen.Select(Gen.Double[0, 100], Gen.Double[0, 10], Gen.Double[0, 30]).Sample((value, slack, giveOrTake) =>
            Conformity.Judge(new RuleLimit(50, null), value, value - slack, giveOrTake) != ConformityOutcome.Conforms
            || Conformity.JudgeSimply(new RuleLimit(50, null), 35, value, value - slack, giveOrTake) == ConformityOutcome.Conforms);

    [Theory]
    [InlineData(double.NaN, 1, 1)]
    [InlineData(60, double.NaN, 1)]
    [InlineData(60, 60, double.NaN)]
    public void A_number_that_is_none_is_refused(double value, double bound, double giveOrTake) =>
        Should.Throw<ArgumentException>(() => Conformity.JudgeSimply(new RuleLimit(50, null), 35, value, bound, giveOrTake));

    [Fact]
    public void A_rule_reads_its_floor_and_its_examples_pin_it()
    {
        string text = Libraries.Changed("severity: warning", """
            severity: warning
                decision: simple
                floor: 45 mm
                examples:
                  - { value: 59.9 mm, expect: fails }
                  - { value: 60 mm, uncertainty: 7.5 mm, expect: conforms }
                  - { value: 60 mm, uncertainty: 7.52 mm, expect: undecided }
                  - { value: 1 mm, part: { kind: brake-line }, to: { kind: exhaust-pipe }, expect: fails }
                  - { value: 1 mm, part: { kind: fuel-line }, expect: not-covered }
                  - { value: 1 mm, to: { kind: tire }, expect: not-covered }
            """.ReplaceLineEndings("\n"));

        (RuleLibrary? library, DiagnosticBag diagnostics) = Libraries.Read(text);

        DiagnosticRenderer.Render(diagnostics).ShouldBe("");
        Rule rule = library.ShouldNotBeNull().Rules[0];
        rule.Floor.ShouldBe(45);
        RuleExamples.Unpinned(rule).ShouldBeEmpty();
        RuleExamples.Unpinned(rule with { Examples = rule.Examples.RemoveAt(2) }).ShouldContain("the floor, moved down");
    }

    [Fact]
    public void A_rule_reads_on_what_terms_its_findings_may_be_accepted() =>
        Libraries.Read(Libraries.Changed("severity: warning", "severity: warning\n    accept: { floor: 25 mm, days: 180 }")).Library.ShouldNotBeNull()
            .Rules[0].Accept.ShouldBe(new RuleAcceptance(25, 180));
}
