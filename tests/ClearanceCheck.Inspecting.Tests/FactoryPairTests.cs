using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Rules;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Tests;

/// <summary>Pairs of original parts that do not move against each other are listed and not judged; contact always is.</summary>
public sealed class FactoryPairTests
{
    private const string Line = "chassis-brake-line", Pipe = "tailpipe", Pair = "line-near-exhaust--chassis-brake-line--tailpipe";

    // The fixture's line and pipe ride on the chassis, half a metre apart.
    private static RuleLibrary Library => OneLine.Library() with { Rules = [OneLine.Rule(OneLine.Exhaust, "gap", "brake-line", "hot-exhaust", 600, Severity.Danger)] };

    [Fact]
    public void Two_original_parts_are_listed_with_their_gap()
    {
        InspectionResult result = OneLine.Inspect(Original(Line, Pipe), library: Library);

        result.Findings.ShouldNotContain(f => f.Id == Pair);
        ExemptZone zone = result.Exempt.Single(z => z.Why.StartsWith("factory arrangement", StringComparison.Ordinal));
        zone.Parts.ShouldBe([Line, Pipe]);
        double apart = OneLine.Inspect(Original(), library: Library).Findings.Single(f => f.Id == Pair).Evidence!.Value;
        zone.Why.ShouldContain(FormattableString.Invariant($"{Math.Round(apart)} mm"));
    }

    [Theory]
    [InlineData(Line)]
    [InlineData(Pipe)]
    public void One_original_part_is_judged(string original) =>
        OneLine.Inspect(Original(original), library: Library).Findings.Single(f => f.Id == Pair).Verdict.ShouldBe(Verdict.Fails);

    [Fact]
    public void Original_parts_that_move_against_each_other_are_judged()
    {
        InspectionResult result = OneLine.Inspect(Original("axle-brake-line", Pipe), library: Library);

        result.Findings.ShouldContain(f => f.Id == "line-near-exhaust--axle-brake-line--tailpipe" && f.Verdict == Verdict.Fails);
    }

    [Fact]
    public void Original_parts_that_overlap_fail()
    {
        InspectionResult result = OneLine.Inspect(Moved(gapMm: -30), library: Library);

        result.Findings.Single(f => f.Id == Pair).Verdict.ShouldBe(Verdict.Fails);
    }

    [Fact]
    public void Original_parts_that_may_touch_are_too_close_to_call()
    {
        InspectionResult result = OneLine.Inspect(Moved(gapMm: -0.5), library: Library);

        Finding finding = result.Findings.Single(f => f.Id == Pair);
        finding.Verdict.ShouldBe(Verdict.Undecided);
        finding.Missing.ShouldNotBeNull().ShouldContain("look whether they do");
    }

    private static Vehicle Original(params string[] ids)
    {
        Vehicle vehicle = OneLine.Vehicle();
        return vehicle with { Parts = [.. vehicle.Parts.Select(p => ids.Contains(p.Id) ? p with { IsOriginal = true } : p)] };
    }

    // The pipe is carried along the line that joins the nearest points, so that the gap becomes this.
    private static Vehicle Moved(double gapMm)
    {
        Evidence evidence = OneLine.Inspect(OneLine.Vehicle(), library: Library).Findings.Single(f => f.Id == Pair).Evidence!;
        var along = (evidence.WitnessSecond - evidence.WitnessFirst) * ((gapMm - evidence.Value) / (evidence.WitnessSecond - evidence.WitnessFirst).Length);
        return Original(Line, Pipe).With(p => p.Path.StartsWith("parts/tailpipe/path/", StringComparison.Ordinal) ? p with
        {
            ValueMm = p.ValueMm + (p.Path[^1] switch { 'x' => along.X, 'y' => along.Y, _ => along.Z }),
        } : p);
    }
}
