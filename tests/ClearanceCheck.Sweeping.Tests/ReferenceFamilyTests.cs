using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Tests.Cases;
using ClearanceCheck.Sweeping.Tests.Motions;

namespace ClearanceCheck.Sweeping.Tests;

/// <summary>The reference sweep with other lines, other tolerances and a fourth coordinate.</summary>
/// <remarks>Values from an independent C++ program: the line in a valley 7.59067 mm.</remarks>
public sealed class ReferenceFamilyTests
{
    private static readonly Revolved Tire = SolidDisc.Of(ReferenceSweepMotion.TireCentre, Vector3d.UnitY, ReferenceSweepMotion.TireRadiusMm, ReferenceSweepMotion.TireHalfWidthMm);

    // For what is compared with all pieces against all pieces: an eighth of the facets.
    private static readonly Revolved FewFacets = SolidDisc.Of(ReferenceSweepMotion.TireCentre, Vector3d.UnitY, ReferenceSweepMotion.TireRadiusMm, ReferenceSweepMotion.TireHalfWidthMm, coarseMm: 0.05);

    [Fact]
    public void Smaller_tolerances_raise_the_bound_and_cost_few_cells()
    {
        Extreme[] runs = [.. new[] { 1, 0.1, 0.01, 0.001 }.Select(t => Run(new ReferenceSweepMotion(), ReferenceLine.Points, t))];

        foreach (Extreme run in runs) Print($"gap {run.Value:F5}, never less than {run.Bound:F5}, {run.Cells} cells");
        for (int i = 1; i < runs.Length; i++)
        {
            runs[i].Bound.ShouldBeGreaterThanOrEqualTo(runs[i - 1].Bound);
            runs[i].Cells.ShouldBeInRange(runs[i - 1].Cells, (int)(2.5 * runs[i - 1].Cells));
        }
    }

    [Fact]
    public void The_bound_holds_for_moved_copies_of_the_line()
    {
        var random = new SplitMix64(808);
        var cells = new List<int>();
        var motion = new ReferenceSweepMotion();
        for (int copy = 0; copy < 24; copy++)
        {
            Vector3d by = random.Cube(6);
            Vector3d[] points = [.. ReferenceLine.Points.Select(p => p + by)];
            Extreme least = Run(motion, points, 0.1, FewFacets);
            if (least.Value < 0.5) continue;
            cells.Add(least.Cells);

            double sampled = Sampled(motion, points);

            least.Bound.ShouldBeLessThanOrEqualTo(sampled + 1e-6);
            least.Value.ShouldBeLessThanOrEqualTo(sampled + 0.1);
            (least.Value - least.Bound).ShouldBeLessThanOrEqualTo(0.1);
        }

        cells.Sort();
        Print($"{cells.Count} lines, cells: median {cells[cells.Count / 2]}, worst {cells[^1]}");
        cells.Count.ShouldBeGreaterThan(18);
        cells[^1].ShouldBeLessThan(2000);
    }

    [Fact]
    public void A_straight_line_in_a_long_valley_is_closed()
    {
        Vector3d[] points = [.. Enumerable.Range(0, 41).Select(i => new Vector3d(-392, 405, -60 + (6.5 * i)))];

        Extreme least = Run(new ReferenceSweepMotion(), points, 0.1);

        Print($"gap {least.Value:F5}, never less than {least.Bound:F5}, {least.Cells} cells");
        least.Value.ShouldBe(7.59067, 2e-3);
        least.Bound.ShouldBeInRange(7.59067 - 0.1 - 0.0006, 7.59067);
    }

    [Fact]
    public void A_fourth_coordinate_is_closed_within_a_tenth_of_a_millimetre()
    {
        var motion = new WindupSweepMotion();
        Extreme least = Run(motion, ReferenceLine.Points, 0.1, FewFacets);
        var oracle = new PoseOracle(new SweepCase(motion, 0, new CapsuleChain(ReferenceLine.Points, ReferenceLine.RadiusMm), 1, FewFacets));

        double sampled = oracle.Least(new SplitMix64(1), 2000).Gap;

        Print($"gap {least.Value:F5}, never less than {least.Bound:F5}, sampled {sampled:F5}, {least.Cells} cells");
        least.BudgetSpent.ShouldBeFalse();
        (least.Value - least.Bound).ShouldBeLessThanOrEqualTo(0.1);
        least.Bound.ShouldBeLessThanOrEqualTo(sampled + 1e-6);
        least.Value.ShouldBeLessThan(6.43005 + 2e-3);
        least.Cells.ShouldBeLessThan(6000);
    }

    private static Extreme Run(IMovingSystem motion, IEnumerable<Vector3d> points, double toleranceMm, Revolved? tire = null) => Sweep.LeastGap(
        motion, 0, new CapsuleChain(points, ReferenceLine.RadiusMm), 1, tire ?? Tire, new SweepSettings { ToleranceMm = toleranceMm });

    // Steps of 20 mm and 4 degrees, or of 5 mm and 1 degree in the long run; then down from the best.
    private static double Sampled(ReferenceSweepMotion motion, Vector3d[] points)
    {
        var pair = new SweepCase(motion, 0, new CapsuleChain(points, ReferenceLine.RadiusMm), 1, FewFacets);
        GapObjective objective = pair.Objective();
        int steps = Long.Times(1) == 1 ? 12 : 48, turns = Long.Times(1) == 1 ? 18 : 70;
        double least = double.PositiveInfinity;
        double[] best = [];
        for (int l = 0; l <= steps; l++)
            for (int r = 0; r <= steps; r++)
                for (int s = 0; s <= turns; s++)
                {
                    double[] pose = [-130 + (240.0 * l / steps), -130 + (240.0 * r / steps), (-35 + (70.0 * s / turns)) * Math.PI / 180];
                    double gap = ((ISweepObjective)objective).Evaluate(motion.At(pose), out _);
                    if (gap < least) (least, best) = (gap, pose);
                }

        double[] low = [.. motion.Box.Coordinates.Select(c => c.Low)], high = [.. motion.Box.Coordinates.Select(c => c.High)];
        return new PoseOracle(pair).Descend(least, best, low, high, 1e-6).Gap;
    }

    private static void Print(string line) => TestContext.Current.TestOutputHelper?.WriteLine(line);
}
