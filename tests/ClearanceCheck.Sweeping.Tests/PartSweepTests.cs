using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Tests.Motions;

namespace ClearanceCheck.Sweeping.Tests;

/// <summary>Pairs that only some coordinates move: searched over those, told as whole poses, and never beyond what stops allow.</summary>
public sealed class PartSweepTests
{
    private static readonly SweepSettings Settings = new() { ToleranceMm = 0.1, ReachMm = 1 };
    private static readonly CapsuleChain Fixed = new([new Vector3d(0, 0, 150)], 10);
    private static readonly CapsuleChain Carried = new([Vector3d.Zero], 10);

    [Fact]
    public void Coordinates_that_move_nothing_stand_as_at_ride_height()
    {
        Extreme least = Least();

        least.Value.ShouldBe(30, 1e-6);
        least.Bound.ShouldBeInRange(29.9, 30);
        least.Basins[0].Pose.ShouldBe([0, 100]);
        least.Basins[0].Witness.OnSecond.Z.ShouldBe(110, 1e-6);
    }

    [Fact]
    public void Where_a_stop_forbids_that_an_end_of_theirs_is_taken() =>
        Least(new ShortestStop("between the two", 1, Vector3d.Zero, 2, Vector3d.Zero, 120)).Basins[0].Pose.ShouldBe([-100, 100]);

    [Fact]
    public void Where_no_whole_pose_allows_the_value_all_coordinates_are_searched()
    {
        Extreme least = Least(new LongestStop("between the two", 1, Vector3d.Zero, 2, Vector3d.Zero, 90));

        least.Value.ShouldBe(40, 0.01);
        least.Bound.ShouldBeInRange(39.8, 40.01);
    }

    [Fact]
    public void Chords_are_searched_over_what_moves_them()
    {
        Extreme longest = Sweep.LongestChord(System([]), 1, Vector3d.Zero, 0, new Vector3d(30, 0, 0), Settings);

        longest.Value.ShouldBe(Math.Sqrt(10_900), 1e-6);
        longest.Basins.ShouldAllBe(b => b.Pose[0] == 0);
        longest.Cells.ShouldBeLessThan(20);
    }

    private static Extreme Least(params ImmutableArray<Stop> stops) => Sweep.LeastGap(System(stops), 0, Fixed, 1, Carried, Settings);

    // Body 1 goes up and down with the second coordinate, body 2 sideways with the first.
    private static PartedMotion System(ImmutableArray<Stop> stops)
    {
        PoseCoordinate aside = new("aside", false, -100, 100), up = new("up", false, -100, 100);
        var whole = new FormulaMotion(new PoseBox([aside, up]), [(0, [new Move.Slide(Vector3d.UnitZ, [0, 1])]), (0, [new Move.Slide(Vector3d.UnitY, [1, 0])])], stops);
        var part = new FormulaMotion(new PoseBox([up]), [(0, [new Move.Slide(Vector3d.UnitZ, [1])])], []);
        return new PartedMotion(whole, new MovingPart(part, [0, 1], [1]));
    }
}
