using System.Collections.Immutable;

namespace ClearanceCheck.Rules.Tests;

public sealed class RuleExamplesTests
{
    private static readonly Rule Pinned = Libraries.Base.Rules.Single(r => r.Id == "brake-line-near-exhaust");

    [Fact]
    public void A_rule_without_examples_has_everything_unpinned() =>
        RuleExamples.Unpinned(Pinned with { Examples = [] }).ShouldBe(
        [
            "the limit, moved up",
            "the limit, moved down",
            "case 1, dropped",
            "the limit of case 1, moved up",
            "the limit of case 1, moved down",
            "the fact shielded of case 1, dropped",
            "the key kind, dropped of part",
            "the word brake-line, dropped from kind of part",
            "the key group, dropped of to",
            "the word hot-exhaust, dropped from group of to",
        ]);

    [Theory]
    [InlineData(false, "the limit, moved down")]
    [InlineData(true, "the limit of case 1, moved down")]
    public void Without_an_example_just_under_a_limit_it_can_be_moved_down(bool isShielded, string open) =>
        RuleExamples.Unpinned(Pinned with { Examples = WithoutFailures(isShielded) }).ShouldBe([open]);

    [Fact]
    public void An_example_a_full_millimetre_under_the_limit_pins_nothing() =>
        RuleExamples.Unpinned(Pinned with { Examples = WithoutFailures(false).Add(new RuleExample(49, 0, [], null, null, ExampleOutcome.Fails)) })
            .ShouldBe(["the limit, moved down"]);

    [Fact]
    public void Ids_are_pinned_by_examples_that_name_ids()
    {
        Rule rule = Pinned with { Part = new PartSelector { Ids = ["rear-line"] } };
        var named = new RuleExample(50, 0, [], new ExamplePart(null, "rear-line"), null, ExampleOutcome.Conforms);
        var other = new RuleExample(50, 0, [], new ExamplePart(null, "front-line"), null, ExampleOutcome.NotCovered);

        RuleExamples.Unpinned(rule with { Examples = [named, other] }).ShouldNotContain(what => what.Contains("of part"));
        RuleExamples.Unpinned(rule with { Examples = [named] }).ShouldContain("the key id, dropped of part");
        RuleExamples.Unpinned(rule with { Examples = [other] }).ShouldContain("the word rear-line, dropped from id of part");
    }

    [Fact]
    public void An_example_widens_by_two_standard_uncertainties()
    {
        RuleExamples.Outcome(Pinned, new RuleExample(54, 2, [], null, null, ExampleOutcome.Conforms)).ShouldBe(ExampleOutcome.Conforms);
        RuleExamples.Outcome(Pinned, new RuleExample(53.9, 2, [], null, null, ExampleOutcome.Conforms)).ShouldBe(ExampleOutcome.Undecided);
    }

    [Fact]
    public void An_unknown_fact_does_not_hold_and_changes_nothing() =>
        RuleExamples.Outcome(Pinned, new RuleExample(30, 0, ["moving"], null, null, ExampleOutcome.Fails)).ShouldBe(ExampleOutcome.Fails);

    private static ImmutableArray<RuleExample> WithoutFailures(bool isShielded) =>
        Pinned.Examples.RemoveAll(e => e.Expect == ExampleOutcome.Fails && e.Facts.Contains("shielded") == isShielded);
}
