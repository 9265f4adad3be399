using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Tests.Motions;

namespace ClearanceCheck.Sweeping.Tests;

/// <summary>Least gaps that lean on stops, worked out by hand.</summary>
public sealed class StopTests
{
    private static readonly SweepSettings Settings = new() { ToleranceMm = 0.1 };

    [Fact]
    public void A_tire_that_hangs_on_its_shock_is_measured_there()
    {
        // Down by at most 60: the shock from 400 above is 460 long. The line lies 300 below, the radii are 20 and 10.
        var shock = new LongestStop("shock", 0, new(0, 0, 400), 1, Vector3d.Zero, 460);

        Extreme least = Run(Slider(shock), Ball(new(0, 0, -300), 10), Ball(Vector3d.Zero, 20));

        Leans(least, 300 - 60 - 30, shock, Slider(shock));
        least.Basins[0].Pose[0].ShouldBe(-60, 1e-3);
    }

    [Fact]
    public void An_arm_that_swings_up_to_its_bump_stop_is_measured_there()
    {
        // The pad, 300 out on the arm, starts 100 under the seat and stops 20 before it: sin q = 80 / 300.
        var bump = new HeightStop("bump stop", 0, new(0, 300, 100), 1, new(0, 300, 0), Vector3d.UnitZ, 20);
        double sin = 80 / 300.0, cos = Math.Sqrt(1 - (sin * sin));
        double expected = Math.Sqrt(((500 - (500 * cos)) * (500 - (500 * cos))) + ((300 - (500 * sin)) * (300 - (500 * sin)))) - 40;
        FormulaMotion arm = Arm(bump);

        Extreme least = Run(arm, Ball(new(0, 500, 300), 10), Ball(new(0, 500, 0), 30));

        Leans(least, expected, bump, arm);
        least.Basins[0].Pose[0].ShouldBe(Math.Asin(sin), 1e-5);
    }

    [Fact]
    public void A_shock_that_bottoms_ends_the_travel()
    {
        // Lateral slide: the shock's end goes through (0, 100, 200 + q) and may come to 180 from the origin.
        var shock = new ShortestStop("shock bottomed", 0, Vector3d.Zero, 1, new(0, 100, 200), 180);
        double q = Math.Sqrt((180 * 180) - (100 * 100)) - 200;

        Extreme least = Run(Slider(shock), Ball(new(50, 0, -300), 10), Ball(Vector3d.Zero, 20));

        Leans(least, Math.Sqrt((50 * 50) + ((300 + q) * (300 + q))) - 30, shock, Slider(shock));
        least.Basins[0].Pose[0].ShouldBe(q, 1e-3);
    }

    [Fact]
    public void A_minimum_may_lean_on_two_stops()
    {
        FormulaMotion system = TwoSliders(Wall(-Vector3d.UnitY, 40), Wall(-Vector3d.UnitZ, 70));

        Extreme least = Run(system, Ball(new(0, -500, -500), 10), Ball(Vector3d.Zero, 10));

        double expected = Math.Sqrt((460 * 460) + (430 * 430)) - 20;
        foreach (Stop stop in system.Stops) Leans(least, expected, stop, system);
        least.Cells.ShouldBeLessThan(60);
    }

    [Fact]
    public void A_minimum_may_lean_on_a_stop_at_the_edge_of_the_box()
    {
        // y + 2 z >= -150 with y at its end, -100: z = -25.
        double norm = Math.Sqrt(5);
        var stop = new HeightStop("slanted", 0, Vector3d.Zero, 1, Vector3d.Zero, new Vector3d(0, -1 / norm, -2 / norm), -150 / norm);
        FormulaMotion system = TwoSliders(stop);

        Extreme least = Run(system, Ball(new(0, -900, -300), 10), Ball(Vector3d.Zero, 10));

        Leans(least, Math.Sqrt((800 * 800) + (275.0 * 275)) - 20, stop, system);
        least.Cells.ShouldBeLessThan(60);
    }

    [Fact]
    public void A_stop_that_is_not_in_the_way_changes_nothing()
    {
        FormulaMotion system = TwoSliders(Wall(-Vector3d.UnitY, 40), Wall(-Vector3d.UnitZ, 70));

        Extreme least = Run(system, Ball(new(0, 500, -30), 10), Ball(Vector3d.Zero, 10));

        least.Value.ShouldBe(400 - 20, 1e-3);
        least.Bound.ShouldBeInRange(379.9, 380);
    }

    [Theory]
    [InlineData(double.PositiveInfinity)]
    [InlineData(50)]
    public void A_travel_that_the_stops_leave_nothing_of_is_never_clear(double ceilingMm)
    {
        FormulaMotion system = Slider(new LongestStop("far too short", 0, new(0, 0, 400), 1, Vector3d.Zero, 250));
        SweepSettings settings = Settings with { CeilingMm = ceilingMm };

        Extreme gap = Sweep.LeastGap(system, 0, Ball(new(0, 0, -900), 10), 1, Ball(Vector3d.Zero, 20), settings);
        Extreme chord = Sweep.LongestChord(system, 0, new(0, 0, -900), 1, Vector3d.Zero, Settings);

        gap.Value.ShouldBe(double.NaN);
        gap.Bound.ShouldBe(double.NegativeInfinity);
        gap.RefusedAtRoot.ShouldBeFalse();
        gap.Basins.ShouldBeEmpty();
        chord.Value.ShouldBe(double.NaN);
        chord.Bound.ShouldBe(double.PositiveInfinity);
    }

    [Fact]
    public void A_pose_outside_the_stops_is_brought_back_the_short_way()
    {
        FormulaMotion system = TwoSliders(Wall(-Vector3d.UnitY, 40), Wall(-Vector3d.UnitZ, 70));
        var space = new ReachableSpace(system);
        double[] pose = [-90, 12];

        SolvedPose? at = space.Project(pose, 0.2);

        at.ShouldNotBeNull();
        pose[0].ShouldBe(-40, 1e-6);
        pose[1].ShouldBe(12, 1e-6);
    }

    private static void Leans(Extreme least, double expected, Stop stop, FormulaMotion system)
    {
        least.Value.ShouldBe(expected, 1e-3);
        least.Bound.ShouldBeInRange(expected - 0.1, least.Value);
        SolvedPose at = system.At(least.Basins[0].Pose.AsSpan());
        stop.Reserve(at.Relative(stop.FirstBody, stop.SecondBody)).ShouldBe(0, 1e-3);
    }

    private static Extreme Run(FormulaMotion system, Solid first, Solid second) => Sweep.LeastGap(system, 0, first, 1, second, Settings);

    private static CapsuleChain Ball(Vector3d at, double radius) => new([at], radius);

    // The body may go so far from the origin against the axis' opposite.
    private static HeightStop Wall(Vector3d towards, double most) => new("wall", 0, Vector3d.Zero, 1, Vector3d.Zero, towards, -most);

    private static FormulaMotion Slider(params ImmutableArray<Stop> stops) =>
        new(new PoseBox([new("travel", false, -100, 100)]), [(0, [new Move.Slide(Vector3d.UnitZ, [1])])], stops);

    private static FormulaMotion TwoSliders(params ImmutableArray<Stop> stops) => new(
        new PoseBox([new("lateral", false, -100, 100), new("travel", false, -100, 100)]),
        [(0, [new Move.Slide(Vector3d.UnitY, [1, 0]), new Move.Slide(Vector3d.UnitZ, [0, 1])])], stops);

    private static FormulaMotion Arm(params ImmutableArray<Stop> stops) =>
        new(new PoseBox([new("swing", true, -0.6, 0.5)]), [(0, [new Move.Turn(Vector3d.Zero, Vector3d.UnitX, [1])])], stops);
}
