using ClearanceCheck.Documents;
using ClearanceCheck.Quantities;
using CsCheck;

namespace ClearanceCheck.Rules.Tests;

/// <summary>The forms of a limit: what they are read as, what they come to for a part, and how they judge.</summary>
public sealed class LimitFormTests
{
    private static readonly QuantityCatalogue Quantities = new([.. QuantityCatalogue.Standard.All, new LargestTestQuantity(), new BothSidesTestQuantity()]);

    private static readonly PartLimit.Steps Table = new("outside-diameter", [new LimitStep(6, 40), new LimitStep(11, 60), new LimitStep(16, 90)]);

    [Fact]
    public void A_limit_between_two_values_judges_both_sides()
    {
        Rule rule = Read("test-pinch", "between: [ 3 mm, 8 mm ]",
            "{ value: 2.9 mm, expect: fails }", "{ value: 3 mm, expect: conforms }", "{ value: 8 mm, expect: conforms }", "{ value: 8.1 mm, expect: fails }",
            "{ value: 7.5 mm, uncertainty: 0.5 mm, expect: undecided }");

        rule.Limit.ShouldBe(RuleLimit.Between(3, 8));
        rule.Limit.Sides.ShouldBe([new RuleLimit(3, null), new RuleLimit(null, 8)]);
        RuleExamples.Unpinned(rule).Where(u => u.Contains("limit", StringComparison.Ordinal)).ShouldBeEmpty();
    }

    [Theory]
    [InlineData("{ value: 2.9 mm, expect: fails }", "the limit, its lower side moved down")]
    [InlineData("{ value: 8 mm, expect: conforms }", "the limit, its upper side moved down")]
    public void Each_side_of_a_limit_between_two_values_is_pinned_by_examples_of_its_own(string left, string open)
    {
        string[] all = ["{ value: 2.9 mm, expect: fails }", "{ value: 3 mm, expect: conforms }", "{ value: 8 mm, expect: conforms }", "{ value: 8.1 mm, expect: fails }"];

        RuleExamples.Unpinned(Read("test-pinch", "between: [ 3 mm, 8 mm ]", [.. all.Where(e => e != left)])).ShouldContain(open);
    }

    [Theory]
    [InlineData("at-least: 3 mm", 3, null)]
    [InlineData("at-most: 8 mm", null, 8)]
    public void A_quantity_that_is_bounded_on_both_sides_can_be_limited_on_either(string limit, int? least, int? most) =>
        Read("test-pinch", limit).Limit.ShouldBe(new RuleLimit(least, most));

    [Fact]
    public void A_table_by_a_property_is_read_with_its_units()
    {
        Rule rule = Read("gap", "at-least-by: { property: outside-diameter, steps: [[6 mm, 40 mm], [11 mm, 60 mm], [5/8 in, 90 mm]] }",
            "{ value: 39.9 mm, part: { outside-diameter: 6 mm }, expect: fails }",
            "{ value: 40 mm, part: { outside-diameter: 10.9 mm }, expect: conforms }",
            "{ value: 59.9 mm, part: { outside-diameter: 11 mm }, expect: fails }",
            "{ value: 100 mm, part: { outside-diameter: 5.9 mm }, expect: not-covered }",
            "{ value: 100 mm, expect: not-evaluated }",
            "{ value: 100 mm, part: { kind: brake-line }, expect: not-evaluated }");

        rule.Limit.OfPart.ShouldBe(new PartLimit.Steps("outside-diameter", [new LimitStep(6, 40), new LimitStep(11, 60), new LimitStep(15.875, 90)]));
    }

    [Fact]
    public void Every_step_of_a_table_is_pinned_or_named()
    {
        string[] open = [.. RuleExamples.Unpinned(Read("gap", "at-least-by: { property: outside-diameter, steps: [[6 mm, 40 mm], [11 mm, 60 mm]] }",
            "{ value: 39.95 mm, part: { outside-diameter: 6 mm }, expect: fails }", "{ value: 40 mm, part: { outside-diameter: 10.95 mm }, expect: conforms }"))];

        open.ShouldContain("the limit, step 2 moved up");
        open.ShouldNotContain("the limit, step 1 moved up");
        open.ShouldNotContain("the limit, step 1 moved down");
        open.ShouldNotContain("the limit, on another property");
        open.ShouldNotContain("the limit, the size of step 2 moved down");
        open.ShouldContain("the limit, the size of step 2 moved up");
    }

    [Theory]
    [InlineData(6, 0, 40)]
    [InlineData(10.9, 0, 40)]
    [InlineData(11, 0, 60)]
    [InlineData(50, 0, 90)]
    [InlineData(10.9, 0.25, 60)]
    [InlineData(11, 0.25, 60)]
    [InlineData(5.9, 0.25, 40)]
    public void A_size_that_may_lie_on_either_side_of_a_step_takes_the_stricter(double size, double halfWidth, double limit) =>
        Table.For(size, halfWidth).ShouldBe(new LimitForPart.Known(new RuleLimit(limit, null)));

    [Fact]
    public void Nothing_is_asked_below_the_first_step() =>
        Table.For(5.7, 0.25).ShouldBe(new LimitForPart.NotCovered("outside-diameter", 5.7, 6));

    [Fact]
    public void No_size_within_the_half_width_has_a_stricter_limit_than_the_one_taken() =>
        Gen.Select(Gen.Double[5, 20], Gen.Double[0, 6], Gen.Double[-1, 1]).Sample((size, halfWidth, share) =>
            Table.For(size + (share * halfWidth), 0) is not LimitForPart.Known within
            || (Table.For(size, halfWidth) is LimitForPart.Known taken && taken.Limit.Number >= within.Limit.Number));

    [Fact]
    public void A_limit_of_the_part_itself_is_judged_with_its_property()
    {
        Rule rule = Read("free-span", "at-most-own: free-length",
            "{ value: 300 mm, part: { free-length: 300 mm }, expect: conforms }",
            "{ value: 300.1 mm, part: { free-length: 300 mm }, expect: fails }",
            "{ value: 10 mm, expect: not-evaluated }");

        rule.Limit.OfPart.ShouldBe(new PartLimit.Own("free-length"));
        rule.Limit.For(_ => (300, 2)).ShouldBe(new LimitForPart.Known(new RuleLimit(null, 298)));
        rule.Limit.For(_ => null).ShouldBe(new LimitForPart.Missing("free-length"));
        RuleExamples.Unpinned(rule).ShouldNotContain(u => u.StartsWith("the limit", StringComparison.Ordinal));
    }

    [Fact]
    public void A_case_may_have_another_form_of_limit()
    {
        Rule rule = Read("gap", "at-least: 50 mm }\n    cases: [ { when: [ shielded ], limit: { at-least-by: { property: outside-diameter, steps: [[0 mm, 20 mm], [10 mm, 30 mm]] } } } ]\n    recheck: [ gap ",
            "{ value: 49 mm, expect: fails }",
            "{ value: 29 mm, facts: [ shielded ], part: { outside-diameter: 12 mm }, expect: fails }",
            "{ value: 21 mm, facts: [ shielded ], part: { outside-diameter: 4.7 mm }, expect: conforms }");

        rule.Cases.Single().Limit.OfPart.ShouldBeOfType<PartLimit.Steps>();
    }

    private static Rule Read(string quantity, string limit, params string[] examples)
    {
        bool isPair = quantity == "gap";
        string closing = limit.EndsWith("gap ", StringComparison.Ordinal) ? "]" : "}";
        string text = $"""
            format: 1
            library: the-shop
            version: 1.0.0
            rules:
              a-rule:
                quantity: {quantity}
                part: {"{"} kind: [ brake-line, brake-hose ] {"}"}
                {(isPair ? "to: { group: [ hot-exhaust ] }" : "title: A rule")}
                limit: {"{"} {limit} {closing}
                severity: warning
                source: {"{"} basis: shop {"}"}
            """.ReplaceLineEndings("\n");
        if (examples.Length > 0) text += "\n    examples: [ " + string.Join(", ", examples) + " ]";
        (RuleLibrary? library, DiagnosticBag diagnostics) = RuleLibraryReader.Read([Libraries.File("a.yaml", text)], Quantities);
        DiagnosticRenderer.Render(diagnostics).ShouldBe("");
        return library.ShouldNotBeNull().Rules.Single();
    }
}
