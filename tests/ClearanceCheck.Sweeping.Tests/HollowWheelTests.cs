using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Tests.Motions;

namespace ClearanceCheck.Sweeping.Tests;

/// <summary>Wheels and tires with known answers: what lives inside a barrel, what leaves it, what a tire meets.</summary>
/// <remarks>
/// The wheel's axis is y, outboard to the left; barrel R 190 from y -92 to 112 with a wall of 6 mm about its middle line, disc at y 60.
/// A ball's distance from a solid of revolution is that of (rho, y) from the profile in the half plane: the oracle here.
/// </remarks>
public sealed class HollowWheelTests
{
    private const double FacetsMm = 0.012;
    private const double HalfWallMm = 3;
    private static readonly SweepSettings Settings = new() { ToleranceMm = 0.1, MaximumCells = 5000 };

    private static readonly ImmutableArray<Section> Profile =
    [
        new([new(190, -92), new(190, 30)], HalfWallMm), new([new(190, 30), new(180, 112)], HalfWallMm),
        new([new(57, 0), new(150, 38)], 4.5), new([new(150, 38), new(183, 60)], 4.5),
    ];

    private static readonly Revolved Wheel = new(Vector3d.Zero, Vector3d.UnitY, Profile);

    [Fact]
    public void A_hose_end_inside_the_barrel_is_measured_against_the_barrel()
    {
        // The hose end stands 165 mm above the axis, its ball 6 mm; the wheel goes 12 mm up and down and 20 mm to either side.
        Extreme least = Sweep.LeastGap(UpAndAcross(12, 20), 0, Ball(new(0, -40, 165), 6), 1, Wheel, Settings);

        Print(least);
        // Farthest from the axis with the wheel down 12 mm and to one side: rho = sqrt(177^2 + 20^2).
        double expected = 190 - HalfWallMm - 6 - Math.Sqrt((177 * 177) + (20 * 20));
        least.Value.ShouldBe(expected, FacetsMm);
        least.Bound.ShouldBeInRange(expected - 0.1 - FacetsMm, expected);
        least.Basins[0].Pose[0].ShouldBe(-12, 1e-3);
        Math.Abs(least.Basins[0].Pose[1]).ShouldBe(20, 1e-3);
        least.Cells.ShouldBeLessThan(400);
    }

    [Fact]
    public void A_hose_end_that_leaves_the_barrel_through_its_open_side_is_nearest_to_the_edge()
    {
        // Along a slope from well inside to well outside and beyond the barrel's radius.
        Vector3d start = new(0, -30, 150), along = new(0, -1, 0.42);
        var system = new FormulaMotion(new PoseBox([new("out", false, 0, 160)]), [(0, [new Move.Slide(-along, [1])])], []);

        Extreme least = Sweep.LeastGap(system, 0, Ball(start, 5), 1, Wheel, Settings);

        (double gap, double at) = Enumerable.Range(0, 160_001).Select(i => (FromProfile(start + (along * (i / 1000.0))) - 5, i / 1000.0)).Min();
        Print(least);
        least.Value.ShouldBe(gap, FacetsMm);
        least.Basins[0].Pose[0].ShouldBe(at, 0.5);
        // Nearest to the open edge, not to the barrel's inside.
        (start + (along * at)).Y.ShouldBeLessThan(-92);
        least.BudgetSpent.ShouldBeFalse();
    }

    [Theory]
    [InlineData(2)]
    [InlineData(0.25)]
    public void A_caliper_beside_the_barrel_is_that_far_off(double gap)
    {
        // A block whose outer edge, a line along the axis, is the only part near the barrel.
        double reach = 190 - HalfWallMm - gap;
        var caliper = new SolidBox(new(-40, -70, 100), new(40, 10, Math.Sqrt((reach * reach) - (40 * 40))));

        Sweep.StillGap(Wheel, caliper).Value.ShouldBe(gap, FacetsMm);
        Sweep.StillGap(caliper, Wheel).Value.ShouldBe(Sweep.StillGap(Wheel, caliper).Value);
    }

    [Fact]
    public void A_caliper_that_a_worn_bearing_lets_swing_is_nearest_at_the_end_of_the_play()
    {
        var system = new FormulaMotion(new PoseBox([new("play", true, -0.01, 0.01)]), [(0, [new Move.Turn(Vector3d.Zero, Vector3d.UnitX, [1])])], []);
        var caliper = new SolidBox(new(-40, -70, 100), new(40, 10, 180));

        Extreme least = Sweep.LeastGap(system, 0, caliper, 1, Wheel, Settings);

        double sampled = Enumerable.Range(0, 201).Min(i => Gap(caliper, Wheel, system, [-0.01 + (i * 0.0001)]));
        Print(least);
        least.Value.ShouldBe(sampled, 0.01);
        least.Bound.ShouldBeInRange(sampled - 0.1 - 0.01, sampled + 1e-6);
        Math.Abs(least.Basins[0].Pose[0]).ShouldBe(0.01, 1e-6);
        least.Cells.ShouldBeLessThan(300);
    }

    [Fact]
    public void A_rolling_tire_that_runs_into_a_fender_is_deepest_at_full_bump_and_full_roll()
    {
        Revolved tire = Tire();
        const double bump = 109;
        var system = new FormulaMotion(
            new PoseBox([new("travel", false, -90, bump), new("roll", true, -0.05, 0.05)]),
            [(0, [new Move.Slide(Vector3d.UnitZ, [1, 0]), new Move.Turn(new(0, 110, 0), Vector3d.UnitX, [0, 1])])], []);

        Extreme least = Sweep.LeastGap(system, 0, Fender(), 1, tire, Settings);

        Print(least);
        // The tread, 416 mm from the middle, rolls about it; under the fender's edge, 50 mm beside the middle, it comes highest.
        (double cosine, double sine) = (Math.Cos(0.05), Math.Sin(0.05));
        double deepest = bump + (416 * cosine) + (sine * (50 + (416 * sine)) / cosine) - 513;
        least.Value.ShouldBe(-deepest, 0.05);
        least.Basins[0].Pose[0].ShouldBe(bump, 1e-3);
        Math.Abs(least.Basins[0].Pose[1]).ShouldBe(0.05, 1e-4);
        least.BudgetSpent.ShouldBeFalse();
        least.Bound.ShouldBeInRange(-deepest - 0.2, -deepest + 0.05);
    }

    [Theory]
    [InlineData(12)]
    [InlineData(0)]
    [InlineData(-7.5)]
    public void A_tire_reaches_a_fender_at_full_bump_by_what_was_planted(double overlap)
    {
        double bump = 515 - 2 - 416 + overlap;
        var system = new FormulaMotion(new PoseBox([new("travel", false, -90, bump)]), [(0, [new Move.Slide(Vector3d.UnitZ, [1])])], []);

        Extreme least = Sweep.LeastGap(system, 0, Fender(), 1, Tire(), Settings);

        Print(least);
        least.Value.ShouldBe(-overlap, FacetsMm);
        least.Bound.ShouldBeInRange(-overlap - 0.1 - FacetsMm, -overlap + FacetsMm);
        least.Basins[0].Pose[0].ShouldBe(bump, 1e-3);
        least.BudgetSpent.ShouldBeFalse();
        least.Cells.ShouldBeLessThan(200);
    }

    [Fact]
    public void A_round_drum_turned_inside_a_barrel_costs_no_more_than_any_part()
    {
        // Every sector of the drum is as near to the barrel as every other: without the hollow's own bound all would stay open.
        var drum = new Revolved(Vector3d.Zero, Vector3d.UnitY, [new Section([new(170, -60), new(170, -5)], 2)]);

        Extreme least = Sweep.LeastGap(UpAndAcross(4, 4), 0, drum, 1, Wheel, Settings with { MaximumCells = 2000 });

        Print(least);
        double expected = 190 - HalfWallMm - 172 - Math.Sqrt(32);
        least.Value.ShouldBe(expected, 2 * FacetsMm);
        least.Bound.ShouldBeInRange(expected - 0.1 - (2 * FacetsMm), expected);
        least.BudgetSpent.ShouldBeFalse();
    }

    private static FormulaMotion UpAndAcross(double up, double across) => new(
        new PoseBox([new("up", false, -up, up), new("across", false, -across, across)]),
        [(0, [new Move.Slide(Vector3d.UnitZ, [1, 0]), new Move.Slide(Vector3d.UnitX, [0, 1])])], []);

    // Hangs over the tread, its underside at z 513.
    private static SimplexTree Fender() => Simplices.Plate([new(-300, 60, 515), new(300, 60, 515), new(300, 160, 515), new(-300, 160, 515)], 4)!;

    private static CapsuleChain Ball(Vector3d centre, double radius) => new([centre], radius);

    private static Revolved Tire() => new(
        new(0, 110, 0), Vector3d.UnitY, [new Section([new(416, -110), new(416, 110), new(205, 110), new(205, -110)], 0)]);

    private static double FromProfile(Vector3d point)
    {
        double rho = Math.Sqrt((point.X * point.X) + (point.Z * point.Z));
        return Profile.Min(s => SegmentDistance.FromPoint(
            new(rho, point.Y, 0), new(s.Corners[0].Radius, s.Corners[0].Along, 0), new(s.Corners[1].Radius, s.Corners[1].Along, 0)) - s.Radius);
    }

    private static double Gap(Solid still, Solid moving, FormulaMotion system, double[] pose) => Sweep.GapAt(new RigidSolid(0, still), new RigidSolid(1, moving), system.At(pose.AsSpan()));

    private static void Print(Extreme least) => TestContext.Current.TestOutputHelper?.WriteLine(
        $"gap {least.Value:F4}, never less than {least.Bound:F4}, {least.Cells} cells at {string.Join(", ", least.Basins[0].Pose)}");
}
