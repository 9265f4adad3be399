using ClearanceCheck.Documents;
using ClearanceCheck.Quantities;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Rules.Tests;

public sealed class BaseLibraryTests
{
    public static TheoryData<string> Ids => [.. Libraries.Base.Rules.Select(r => r.Id)];

    [Fact]
    public void It_loads_without_a_word()
    {
        (RuleLibrary? library, DiagnosticBag diagnostics) = Libraries.Read([.. BaseLibrary.Files]);

        DiagnosticRenderer.Render(diagnostics).ShouldBe("");
        library.ShouldNotBeNull().NotLoaded.ShouldBeEmpty();
        library.Name.ShouldBe("base");
        library.Version.ShouldBe("1.0.0");
        library.Hash.Length.ShouldBe(64);
    }

    [Fact]
    public void Its_files_and_rules_are_these()
    {
        BaseLibrary.Files.Select(f => f.Name).ShouldBe(["any-parts.yaml", "brake-hoses.yaml", "brake-lines.yaml", "checklist.yaml", "coverage.yaml", "moving-parts.yaml", "tires-and-wheels.yaml"]);
        Libraries.Base.Rules.Select(r => $"{r.Id} {r.Severity} {r.Limit.AtLeast}").ShouldBe(
        [
            "moving-parts-collide Warning 0",
            "moving-parts-close Notice 10",
            "meant-contact-too-deep Warning -2",
            "joined-parts-overlap Notice -2",
            "brake-hose-pulled-tight Danger 2",
            "brake-hose-short-of-slack Warning 5",
            "brake-line-near-exhaust Warning 50",
            "brake-line-touches-exhaust Danger 6.4",
            "brake-line-near-moving-part Warning 19",
            "brake-line-struck-by-moving-part Danger 6.4",
            "fuel-line-struck-by-moving-part Danger 6.4",
            "wiring-near-moving-part Caution 10",
            "driveshaft-strikes-part Danger 0",
            "driveshaft-near-part Warning 25",
            "tire-strikes-frame-or-suspension Danger 0",
            "tire-close-to-frame-or-suspension Caution 10",
            "tire-rubs-bodywork Warning 0",
            "tire-rubs-liner Notice 0",
            "tire-near-exhaust Warning 50",
            "wheel-strikes-brake-or-steering Danger 0",
            "wheel-near-caliper Warning 3",
            "wheel-near-hose-or-rod-end Warning 5",
            "tire-strikes-hose-end Danger 6.4",
        ]);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_field_is_filled(string id)
    {
        Rule rule = Find(id);

        foreach (string? text in new[] { rule.Title, rule.Consequence, rule.Advice, rule.HandCheck, rule.Source.Text }) text.ShouldNotBeNullOrWhiteSpace();
        rule.Recheck.ShouldContain(rule.Quantity);
        string.Equals(rule.Title, rule.Id.Replace('-', ' '), StringComparison.OrdinalIgnoreCase).ShouldBeFalse("a title of its own");
        rule.Examples.Length.ShouldBeGreaterThanOrEqualTo(5);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_limit_says_where_it_comes_from_and_how_well_that_is_known(string id)
    {
        Rule rule = Find(id);

        rule.Source.Basis.ShouldBeOneOf("published", "common-practice", "plain-fact");
        if (rule.Source.Basis == "published") rule.Source.Text.ShouldContain(rule.Source.Known);
        else rule.Source.Known.ShouldBe("none");
        if (rule.Severity == Severity.Danger) rule.Source.Basis.ShouldNotBe("common-practice");
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_rule_has_an_example_of_each_outcome(string id)
    {
        foreach (ExampleOutcome outcome in Enum.GetValues<ExampleOutcome>().Where(o => o != ExampleOutcome.NotEvaluated))
            Find(id).Examples.ShouldContain(e => e.Expect == outcome, $"{id}: {outcome}");
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Nothing_is_left_unpinned(string id) => RuleExamples.Unpinned(Find(id)).ShouldBeEmpty();

    [Fact]
    public void No_two_rules_are_alike_in_quantity_selectors_and_limit() =>
        Libraries.Base.Rules.Select(r => $"{r.Quantity}; {r.Part.InWords()}; {r.To?.InWords()}; {string.Join(' ', r.OnlyWhen)}; {r.Limit}").ShouldBeUnique();

    [Fact]
    public void A_danger_never_asks_for_more_than_the_warning_on_the_same_parts()
    {
        foreach (Rule danger in Libraries.Base.Rules.Where(r => r.Severity == Severity.Danger))
        {
            foreach (Rule warning in Libraries.Base.Rules.Where(r => r.Severity == Severity.Warning
                && r.Quantity == danger.Quantity && r.Part.InWords() == danger.Part.InWords() && r.To?.InWords() == danger.To?.InWords()))
            {
                warning.Limit.Number.ShouldBeGreaterThan(danger.Limit.Number);
                foreach (RuleCase special in warning.Cases) special.Limit.Number.ShouldBeGreaterThan(danger.Limit.Number);
            }
        }
    }

    [Fact]
    public void Every_pair_quantity_has_two_selectors_and_every_other_one()
    {
        foreach (Rule rule in Libraries.Base.Rules)
            (rule.To is not null).ShouldBe(QuantityCatalogue.Standard.Find(rule.Quantity)!.IsOfPair, rule.Id);
    }

    [Fact]
    public void Sources_marked_read_stand_in_the_text_with_the_figure()
    {
        foreach (Rule rule in Libraries.Base.Rules.Where(r => r.Source.Basis == "published"))
            rule.Source.Text.ShouldContain(FormattableString.Invariant($"{rule.Limit.Number} {(rule.Quantity == "gap" ? "mm" : "%")}"));
    }

    [Fact]
    public void Only_kinds_with_the_right_shape_are_selected()
    {
        foreach (Rule rule in Libraries.Base.Rules)
            if (rule.Quantity == "gap") PartKinds.All.Any(k => rule.Part.CouldSelect(k) && k.Forms.Any(f => f is not (PartFormKind.Hose or PartFormKind.BumpStop))).ShouldBeTrue(rule.Id);
            else PartKinds.All.Where(rule.Part.CouldSelect).ShouldAllBe(k => k.Forms.Contains(PartFormKind.Hose));
    }

    private static Rule Find(string id) => Libraries.Base.Rules.Single(r => r.Id == id);
}
