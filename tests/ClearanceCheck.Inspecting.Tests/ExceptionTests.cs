using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Rules;
using ClearanceCheck.Vehicles;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Inspecting.Tests;

/// <summary>A finding that somebody takes the word for: when that counts, when it is void, and that it is always shown.</summary>
public sealed class ExceptionTests
{
    private static readonly DateOnly Today = new(2031, 4, 2);

    private static readonly RuleAcceptance Terms = new(5, 180);

    // The axle's line comes within some 29 mm of the tailpipe, give or take a few: see ShieldTests.
    private static readonly AcceptedFinding Sound = new(
        "line-behind-shield", OneLine.Exhaust, ["tailpipe", "axle-brake-line"], 10, "mm", "10 mm", "R. Amsel", new DateOnly(2031, 9, 1), "Checked hot");

    [Fact]
    public void An_accepted_finding_counts_no_longer_and_is_still_shown()
    {
        InspectionResult result = Inspect(Sound, Terms);

        Finding finding = Open(result);
        finding.Verdict.ShouldBe(Verdict.Fails);
        finding.IsOpen.ShouldBeFalse();
        finding.Accepted.ShouldBe(new AcceptedCard("line-behind-shield", true, "10 mm", "R. Amsel", "2031-09-01", "Checked hot", null));
        result.Decision.Reasons.ShouldContain(r => r.Contains("accepted by R. Amsel until 2031-09-01", StringComparison.Ordinal));
        result.Decision.DoThis.ShouldNotContain(line => line.FindingId == finding.Id);
        result.Assumptions.ShouldNotContain(a => a.Path.StartsWith("accepted/", StringComparison.Ordinal));
    }

    public static TheoryData<string, AcceptedFinding, RuleAcceptance?> Voids => new()
    {
        { "its rule lets nothing be accepted", Sound, null },
        { "its floor is in %, and the finding in mm", Sound with { Unit = "%" }, Terms },
        { "it counted until 2031-04-01", Sound with { Until = Today.AddDays(-1) }, Terms },
        { "its rule lets a finding be accepted for 180 days at most, and this one runs for 181 more", Sound with { Until = Today.AddDays(181) }, Terms },
        { "its rule lets nothing below 5 mm be accepted, and its floor is 4 mm", Sound with { Floor = 4, FloorTyped = "4 mm" }, Terms },
        { "and its floor is 28 mm", Sound with { Floor = 28, FloorTyped = "28 mm" }, Terms },
    };

    [Theory]
    [MemberData(nameof(Voids))]
    public void An_exception_outside_its_terms_is_void_and_says_why(string why, AcceptedFinding accepted, RuleAcceptance? terms)
    {
        Finding finding = Open(Inspect(accepted, terms));

        finding.IsOpen.ShouldBeTrue();
        finding.Accepted.ShouldNotBeNull().Holds.ShouldBeFalse();
        finding.Accepted.Void.ShouldNotBeNull().ShouldContain(why);
    }

    [Fact]
    public void An_exception_counts_on_its_last_day() =>
        Open(Inspect(Sound with { Until = Today }, Terms)).IsOpen.ShouldBeFalse();

    [Fact]
    public void Without_a_day_of_the_inspection_nothing_is_accepted() =>
        Open(Inspect(Sound, Terms, today: null)).Accepted.ShouldNotBeNull().Void.ShouldBe("it counted until 2031-09-01");

    [Fact]
    public void The_worst_end_with_its_give_or_take_has_to_clear_the_floor()
    {
        Evidence evidence = Open(Inspect(Sound, Terms)).Evidence.ShouldNotBeNull();
        double worst = evidence.Bound - (evidence.CoverageFactor * evidence.Basins.Max(b => b.StandardUncertainty));

        Open(Inspect(Sound with { Floor = worst - 0.01 }, Terms)).IsOpen.ShouldBeFalse();
        Open(Inspect(Sound with { Floor = worst + 0.01 }, Terms)).IsOpen.ShouldBeTrue();
    }

    [Fact]
    public void What_a_hand_found_below_the_floor_makes_it_void()
    {
        HandCheck check = new($"{OneLine.Exhaust}--axle-brake-line--tailpipe", 11, 1.5, "R. A.", null, "11 mm");

        Open(Inspect(Sound, Terms, vehicle: OneLine.Vehicle() with { HandChecks = [check] })).Accepted.ShouldNotBeNull().Void
            .ShouldBe("11 mm was found by hand, which does not clear its floor of 10 mm");
    }

    [Theory]
    [InlineData("another-rule", "this inspection has no such finding")]
    [InlineData(OneLine.Exhaust, "the finding meets its limit")]
    public void An_exception_that_nothing_needs_is_noted(string rule, string why)
    {
        InspectionResult result = Inspect(Sound with { Rule = rule }, Terms, limit: rule == OneLine.Exhaust ? 5 : 50);

        result.Assumptions.ShouldContain(a => a.Path == "accepted/line-behind-shield" && a.Text.Contains(why, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Severity.Danger, DecisionKind.Conditions)]
    [InlineData(Severity.Warning, DecisionKind.None)]
    public void An_accepted_danger_leaves_conditions_and_a_void_one_holds(Severity severity, DecisionKind expected)
    {
        Inspect(Sound, Terms, severity).Decision.Kind.ShouldBe(expected);
        Inspect(Sound with { Until = Today.AddDays(-1) }, Terms, severity).Decision.Kind.ShouldBe(severity == Severity.Danger ? DecisionKind.Held : DecisionKind.Conditions);
    }

    private static Finding Open(InspectionResult result) => result.Find(OneLine.Exhaust, "axle-brake-line");

    // An open tightening audit would be a condition of its own.
    private static Vehicle Tightened(Vehicle vehicle) => vehicle with
    {
        Record = vehicle.Record with { Tightened = [.. vehicle.Record.Tightened, new Tightening("rear", ["upper-link-frame"], true, "R.A.", null)] },
    };

    private static InspectionResult Inspect(AcceptedFinding accepted, RuleAcceptance? terms, Severity severity = Severity.Warning, double limit = 50, Vehicle? vehicle = null) =>
        Inspect(accepted, terms, Today, severity, limit, vehicle);

    private static InspectionResult Inspect(
        AcceptedFinding accepted, RuleAcceptance? terms, DateOnly? today, Severity severity = Severity.Warning, double limit = 50, Vehicle? vehicle = null)
    {
        Rule rule = OneLine.Rule(OneLine.Exhaust, "gap", "brake-line", "hot-exhaust", limit, severity) with { Accept = terms, Part = new PartSelector { Ids = ["axle-brake-line"] } };
        return Inspector.Run(new InspectionRequest
        {
            Vehicle = Tightened(vehicle ?? OneLine.Vehicle()) with { Accepted = [accepted] },
            Library = new RuleLibrary("tests", "1.0.0", "00", [rule], []),
            ProgramVersion = "0",
            Inputs = [],
            Today = today,
        }).Result.ShouldNotBeNull();
    }
}
