using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Quantities;
using ClearanceCheck.Rules;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Tests;

/// <summary>Limits that hang on the part, limits with two sides, and rules that decide simply, on the smallest vehicle.</summary>
public sealed class LimitFormTests
{
    private static readonly double Found = Inspect(new RuleLimit(50, null)).Evidence!.Value;

    [Fact]
    public void A_table_sets_the_limit_by_the_size_of_the_part()
    {
        Finding finding = Inspect(RuleLimit.By(new PartLimit.Steps("outside-diameter", [new LimitStep(0, 10), new LimitStep(4, 28.5), new LimitStep(9, 90)])));

        finding.Limit.AtLeast.ShouldBe(28.5);
        finding.Limit.By.ShouldBe("outside diameter");
    }

    [Fact]
    public void A_part_below_the_first_step_is_not_covered_and_that_is_said()
    {
        InspectionResult result = Result(RuleLimit.By(new PartLimit.Steps("outside-diameter", [new LimitStep(9, 90)])), OneLine.Vehicle());

        result.Findings.ShouldNotContain(f => f.Rule == OneLine.Exhaust);
        result.MatchedNothing.ShouldContain(r => r.Rule == OneLine.Exhaust);
        result.NotInspected.ShouldContain(i => i.What.StartsWith(OneLine.Exhaust, StringComparison.Ordinal) && i.Why.Contains("below the first step of the rule's table, 9 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void A_missing_property_leaves_the_rule_not_evaluated_with_the_reading_to_take()
    {
        Finding finding = Inspect(RuleLimit.By(new PartLimit.Steps("free-length", [new LimitStep(0, 10)])));

        finding.Verdict.ShouldBe(Verdict.NotEvaluated);
        finding.Evidence.ShouldBeNull();
        finding.Missing.ShouldNotBeNull().ShouldContain("free length");
        finding.Missing.ShouldContain("measure it off the vehicle");
        finding.Missing.ShouldContain("`free-length`");
        (finding.Limit.AtLeast, finding.Limit.AtMost, finding.Limit.By).ShouldBe((null, null, "free length"));
    }

    [Fact]
    public void A_typed_property_sets_the_limit_of_the_part_itself()
    {
        Vehicle vehicle = OneLine.Vehicle();
        Vehicle typed = vehicle with { Parts = [.. vehicle.Parts.Select(p => p with { Properties = p.Properties.Add("joint-limit", 22) })] };

        Finding finding = Two(RuleLimit.By(new PartLimit.Own("joint-limit")), new TwoExtremes(12, 23), typed);

        (finding.Limit.AtMost, finding.Verdict).ShouldBe((22, Verdict.Fails));
    }

    [Theory]
    [InlineData(10, 30, 5, 40, Verdict.Conforms, 10, false)]
    [InlineData(4, 30, 5, 40, Verdict.Fails, 4, false)]
    [InlineData(10, 41, 5, 40, Verdict.Fails, 41, true)]
    [InlineData(10, 39.5, 5, 40, Verdict.Undecided, 39.5, true)]
    [InlineData(5.5, 41, 5, 40, Verdict.Fails, 41, true)]
    public void A_limit_with_two_sides_holds_each_against_its_own_extreme_and_the_worse_decides(
        double least, double most, double from, double to, Verdict expected, double shown, bool isUpper)
    {
        Finding finding = Two(RuleLimit.Between(from, to), new TwoExtremes(least, most), OneLine.Vehicle());

        finding.Verdict.ShouldBe(expected);
        finding.Evidence!.Value.ShouldBe(shown);
        (finding.Limit.AtMost is not null).ShouldBe(isUpper);
        (finding.Limit.Least, finding.Limit.Most).ShouldBe((from, to));
    }

    [Fact]
    public void A_limit_on_the_other_side_is_held_against_the_other_extreme() =>
        Two(new RuleLimit(null, 40), new TwoExtremes(10, 41), OneLine.Vehicle()).Verdict.ShouldBe(Verdict.Fails);

    [Fact]
    public void A_simple_rule_decides_by_the_value_where_a_guarded_one_can_not()
    {
        double limit = Found - 0.5;
        Inspect(new RuleLimit(limit, null)).Verdict.ShouldBe(Verdict.Undecided);

        Inspect(new RuleLimit(limit, null), rule => rule with { Floor = 5 }).Verdict.ShouldBe(Verdict.Conforms);
        Inspect(new RuleLimit(limit, null), rule => rule with { Floor = Found - 0.6 }).Verdict.ShouldBe(Verdict.Undecided);
        Inspect(new RuleLimit(Found + 0.5, null), rule => rule with { Floor = 5 }).Verdict.ShouldBe(Verdict.Fails);
    }

    private static Finding Inspect(RuleLimit limit, Func<Rule, Rule>? change = null) => Result(limit, OneLine.Vehicle(), change).Find(OneLine.Exhaust, "axle-brake-line");

    private static InspectionResult Result(RuleLimit limit, Vehicle vehicle, Func<Rule, Rule>? change = null)
    {
        Rule rule = OneLine.Rule(OneLine.Exhaust, "gap", "brake-line", "hot-exhaust", 50, Severity.Warning) with { Limit = limit };
        return OneLine.Inspect(vehicle, library: new RuleLibrary("tests", "1.0.0", "00", [change?.Invoke(rule) ?? rule], []));
    }

    private static Finding Two(RuleLimit limit, Quantity quantity, Vehicle vehicle)
    {
        Rule rule = OneLine.Rule("out-of-range", quantity.Id, "brake-hose", null, 0, Severity.Danger) with { Limit = limit };
        return Inspector.Run(new InspectionRequest
        {
            Vehicle = vehicle,
            Library = new RuleLibrary("tests", "1.0.0", "00", [rule], []),
            Quantities = new QuantityCatalogue([quantity]),
            ProgramVersion = "0",
            Inputs = [],
        }).Result.ShouldNotBeNull().Findings.Single(f => f.Rule == "out-of-range");
    }
}
