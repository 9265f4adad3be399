using System.Globalization;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Rules;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Tests;

/// <summary>What was found by hand, held against the findings of the fixture one-line.</summary>
public sealed class HandCheckTests
{
    private const string Met = "line-near-exhaust--axle-brake-line--tailpipe", Missed = "line-missed--axle-brake-line--tailpipe";
    private const double HalfWidth = 1.5, Limit = 1, Short = 0.5;

    private static readonly Lazy<InspectionResult> Plain = new(() => Inspect());

    private static double Value => Plain.Value.Findings.Single(f => f.Id == Met).Evidence!.Value;

    // What both give-or-takes explain, from the finding as it was without the check.
    private static double Explained
    {
        get
        {
            Evidence evidence = Plain.Value.Findings.Single(f => f.Id == Met).Evidence!;
            return (evidence.CoverageFactor * Math.Sqrt(Math.Pow(evidence.StandardUncertainty, 2) + (HalfWidth * HalfWidth / 3))) + 1;
        }
    }

    [Fact]
    public void Without_a_check_nothing_is_said()
    {
        Plain.Value.Findings.ShouldAllBe(f => f.Checked == null);
        Plain.Value.Assumptions.ShouldNotContain(a => a.Path.StartsWith("checks/"));
        Find(Plain.Value, Met).Verdict.ShouldBe(Verdict.Conforms);
        Find(Plain.Value, Missed).Verdict.ShouldBe(Verdict.Fails);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(0)]
    [InlineData(1)]
    public void A_check_that_agrees_is_told_and_changes_nothing_else(int sign)
    {
        double found = Value + (sign * (Explained - 0.001));
        InspectionResult result = Inspect(Check(Met, found));

        Finding finding = Find(result, Met), plain = Find(Plain.Value, Met);
        finding.Checked.ShouldBe($"By hand {Mm(found)} ({LengthFormat.Inches(Length.FromMillimetres(found))}) was found, by R. A.; {Mm(Value)} was expected.");
        (finding.Verdict, finding.Missing).ShouldBe((plain.Verdict, plain.Missing));
        result.Decision.Kind.ShouldBe(Plain.Value.Decision.Kind);
        result.Assumptions.ShouldBe(Plain.Value.Assumptions);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(1)]
    public void A_check_that_contradicts_makes_a_conforming_finding_undecided(int sign)
    {
        double found = Value + (sign * (Explained + 0.001));
        InspectionResult result = Inspect(Check(Met, found) with { Note = "pipe cold" });

        Finding finding = Find(result, Met);
        finding.Verdict.ShouldBe(Verdict.Undecided);
        finding.Checked.ShouldBe(
            $"By hand {Mm(found)} ({LengthFormat.Inches(Length.FromMillimetres(found))}) was found, by R. A. (pipe cold); {Mm(Value)} was expected, so the points of this pair are wrong somewhere: measure them again.");
        finding.Missing.ShouldBe($"{Mm(found)} was found by hand where {Mm(Value)} was expected: measure the points of this pair again");
        result.Decision.Reasons.ShouldContain(r => r.StartsWith("line-near-exhaust: too close to call"));
    }

    [Fact]
    public void A_check_counts_for_every_rule_that_looks_at_the_same_gap()
    {
        double wrong = Value + Explained + 0.001;
        InspectionResult result = Inspect(Check(Missed, wrong)), two = Inspect(Check(Missed, wrong), Check(Met, Value));

        Find(result, Met).Verdict.ShouldBe(Verdict.Undecided);
        Find(result, Met).Checked.ShouldBe(Find(result, Missed).Checked);
        Find(two, Met).Verdict.ShouldBe(Verdict.Undecided);
        Find(two, Met).Checked.ShouldNotBeNull().ShouldStartWith($"By hand {Mm(Value)} (");
        Find(two, Met).Checked!.ShouldEndWith(" was expected. " + Find(result, Met).Checked);
        result.Findings.Where(f => f.Checked != null).Select(f => f.Id).ShouldBe([Missed, Met], ignoreOrder: true);
    }

    [Fact]
    public void A_check_never_clears_what_fails()
    {
        Finding wide = Find(Inspect(Check(Missed, Value + 300)), Missed), narrow = Find(Inspect(Check(Missed, 0)), Missed);

        (wide.Verdict, narrow.Verdict).ShouldBe((Verdict.Fails, Verdict.Fails));
        wide.Missing.ShouldBeNull();
        wide.Checked.ShouldNotBeNull().ShouldEndWith("measure them again.");
        narrow.Checked.ShouldNotBeNull().ShouldStartWith("By hand 0 mm (0 in) was found");
    }

    [Fact]
    public void A_rough_check_that_agrees_but_does_not_meet_the_limit_takes_the_finding_back()
    {
        Finding finding = Find(Inspect(Check(Met, Short) with { HalfWidthMm = 500 }), Met);

        finding.Checked.ShouldNotBeNull().ShouldEndWith(" was expected.");
        finding.Verdict.ShouldBe(Verdict.Undecided);
        finding.Missing.ShouldBe($"{Mm(Short)} was found by hand, and that does not meet the limit: check it again in this pose, and mend it if it is so");
    }

    [Fact]
    public void A_check_that_names_no_finding_is_told()
    {
        InspectionResult result = Inspect(Check("line-near-exhaust--axle-brake-line--towbar", 12));

        result.Assumptions.ShouldContain(new Assumption(
            "checks/line-near-exhaust--axle-brake-line--towbar", "The hand check of 12 mm by R. A. was not used: this inspection has no such finding."));
        result.Findings.ShouldAllBe(f => f.Checked == null);
    }

    [Fact]
    public void A_check_of_what_is_not_in_millimetres_is_told()
    {
        InspectionResult result = Inspect(Check("hose-short--rear-brake-hose", 12));

        Finding hose = Find(result, "hose-short--rear-brake-hose");
        (hose.Checked, hose.Verdict).ShouldBe((null, Find(Plain.Value, hose.Id).Verdict));
        result.Assumptions.ShouldContain(new Assumption("checks/hose-short--rear-brake-hose", "The hand check of 12 mm by R. A. was not used: that finding is in %, not in mm."));
    }

    private static HandCheck Check(string id, double mm) => new(id, mm, HalfWidth, "R. A.", null, mm.ToString(CultureInfo.InvariantCulture) + " mm");

    private static string Mm(double mm) => NumberFormat.UpTo(mm, 1) + " mm";

    private static Finding Find(InspectionResult result, string id) => result.Findings.Single(f => f.Id == id);

    private static InspectionResult Inspect(params HandCheck[] checks) => OneLine.Inspect(OneLine.Vehicle() with { HandChecks = [.. checks] }, library: Library());

    // The same pair under a limit that it meets easily, and under one that it misses by far.
    private static RuleLibrary Library() => OneLine.Library() with
    {
        Rules =
        [
            OneLine.Rule(OneLine.Exhaust, "gap", "brake-line", "hot-exhaust", Limit, Severity.Warning),
            OneLine.Rule("line-missed", "gap", "brake-line", "hot-exhaust", 400, Severity.Warning),
            OneLine.Rule(OneLine.Hose, "hose-slack", "brake-hose", null, 2, Severity.Danger),
        ],
    };
}
