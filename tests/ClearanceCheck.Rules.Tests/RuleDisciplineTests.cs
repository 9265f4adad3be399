namespace ClearanceCheck.Rules.Tests;

/// <summary>Every rule of the base library keeps the discipline, and the discipline notices each thing that could be missing.</summary>
public sealed class RuleDisciplineTests
{
    private static readonly Rule Whole = Libraries.Base.Rules.Single(r => r.Id == "steering-rod-near-part");

    private static readonly Dictionary<string, (Rule Broken, string Fault)> Breaks = new()
    {
        ["no title"] = (Whole with { Title = "Steering rod near part" }, "a title of its own"),
        ["no consequence"] = (Whole with { Consequence = " " }, "consequence"),
        ["no advice"] = (Whole with { Advice = null }, "advice"),
        ["no hand check"] = (Whole with { HandCheck = null }, "hand-check"),
        ["no recheck"] = (Whole with { Recheck = ["hose-slack"] }, "recheck names its quantity"),
        ["no over"] = (Whole with { Origins = [.. Whole.Origins.Where(o => o.Field != "over")] }, "over"),
        ["no source"] = (Whole with { Source = Whole.Source with { Text = "" } }, "source text"),
        ["a shop's source"] = (Whole with { Source = Whole.Source with { Basis = "shop" } }, "a basis that base rules rest on"),
        ["a guess at danger"] = (Whole with { Severity = Severity.Danger }, "danger on a guess"),
        ["memory as published"] = (Whole with { Source = new RuleSource("published", "from-memory", "from memory") }, "a published source was read, by us or by another"),
        ["memory not said"] = (Whole with { Source = Whole.Source with { Known = "from-memory" } }, "the text says that it is from memory"),
        ["mark not said"] = (Whole with { Source = new RuleSource("published", "second-hand", "A manual") }, "the text says how the source is known"),
        ["a source for a fact"] = (Whole with { Source = new RuleSource("plain-fact", "read", "A manual") }, "a plain fact has no source"),
        ["read but not published"] = (Whole with { Source = Whole.Source with { Known = "read" } }, "what was read is published"),
        ["no failure shown"] = (Whole with { Examples = [.. Whole.Examples.Where(e => e.Expect != ExampleOutcome.Fails)] }, "an example that is Fails"),
    };

    public static TheoryData<string> Ids => [.. Libraries.Base.Rules.Select(r => r.Id)];

    public static TheoryData<string> BreakNames => [.. Breaks.Keys];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_rule_says_all_that_it_owes(string id) => RuleDiscipline.Faults(Libraries.Base.Rules.Single(r => r.Id == id)).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(BreakNames))]
    public void What_is_missing_is_noticed(string name)
    {
        (Rule broken, string fault) = Breaks[name];

        RuleDiscipline.Faults(broken).ShouldContain(fault);
    }

    [Fact]
    public void A_rule_without_any_source_is_not_loaded()
    {
        (RuleLibrary? library, Documents.DiagnosticBag diagnostics) = Libraries.Read(Libraries.Changed("    source: { basis: shop }\n  hose-short:", "  hose-short:"));

        library.ShouldNotBeNull().NotLoaded.ShouldHaveSingleItem().ShouldStartWith("line-near-pipe was not loaded");
        diagnostics.Ordered.ShouldContain(d => d.Message.Contains("source", StringComparison.Ordinal));
    }

    [Fact]
    public void There_are_at_least_sixty() => Libraries.Base.Rules.Length.ShouldBeGreaterThanOrEqualTo(60);
}
