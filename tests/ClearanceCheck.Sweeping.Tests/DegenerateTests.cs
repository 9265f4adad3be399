using ClearanceCheck.Sweeping.Tests.Cases;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Tests.Motions;

namespace ClearanceCheck.Sweeping.Tests;

public sealed class DegenerateTests
{
    private static readonly SweepSettings Settings = new() { ToleranceMm = 0.1, MaximumCells = 2000 };

    private static readonly FormulaMotion Slider =
        new(new PoseBox([new("travel", false, -100, 100)]), [(0, [new Move.Slide(Vector3d.UnitX, [1])])], []);

    [Fact]
    public void Two_points_without_radius_touch_at_zero()
    {
        Extreme least = Sweep.LeastGap(Slider, 0, new CapsuleChain([new(37, 0, 0)], 0), 1, new CapsuleChain([Vector3d.Zero], 0), Settings);

        least.Value.ShouldBe(0, 1e-3);
        least.Bound.ShouldBeInRange(-0.1, least.Value);
    }

    [Fact]
    public void A_point_passes_a_line_without_radius_at_its_distance()
    {
        Extreme least = Sweep.LeastGap(Slider, 0, new CapsuleChain([new(30, -50, 12), new(30, 50, 12)], 0), 1, new CapsuleChain([Vector3d.Zero], 0), Settings);

        least.Value.ShouldBe(12, 1e-3);
        least.Bound.ShouldBeInRange(11.9, 12);
    }

    [Fact]
    public void Identical_solids_overlap_by_twice_their_radius()
    {
        Vector3d[] points = [new(0, 0, 0), new(0, 40, 10), new(10, 90, -20), new(10, 90, -20)];
        var solid = new CapsuleChain(points, 7);

        Extreme moving = Sweep.LeastGap(Slider, 0, solid, 1, solid, Settings);
        Extreme still = Sweep.LeastGap(Slider, 1, solid, 1, solid, Settings);

        moving.Value.ShouldBe(-14, 1e-6);
        moving.Bound.ShouldBeInRange(-14.1, -14);
        moving.BudgetSpent.ShouldBeFalse();
        (still.Value, still.Bound, still.Cells).ShouldBe((-14, -14, 0));
    }

    [Fact]
    public void Repeated_points_change_nothing()
    {
        Vector3d a = new(20, -50, 30), b = new(25, 60, 35);
        var ball = new CapsuleChain([Vector3d.Zero], 5);

        Extreme once = Sweep.LeastGap(Slider, 0, new CapsuleChain([a, b], 3), 1, ball, Settings);
        Extreme often = Sweep.LeastGap(Slider, 0, new CapsuleChain([a, a, a, b, b], 3), 1, ball, Settings);

        often.Value.ShouldBe(once.Value, 1e-6);
    }

    [Fact]
    public void A_ball_through_a_disc_is_an_overlap_with_a_bound()
    {
        var disc = SolidDisc.Of(Vector3d.Zero, Vector3d.UnitX, 50, 10);

        Extreme least = Sweep.LeastGap(Slider, 0, disc, 1, new CapsuleChain([Vector3d.Zero], 5), Settings);

        // One piece of the disc after another: how deep the ball lies in all of them together is known as "at least".
        least.Value.ShouldBeInRange(-15.1, -5);
        least.Bound.ShouldBeInRange(-15.1, least.Value);
    }

    [Fact]
    public void Parts_of_one_body_have_no_pose_space()
    {
        Extreme least = Sweep.LeastGap(Slider, 1, new CapsuleChain([Vector3d.Zero], 2), 1, new CapsuleChain([new(0, 10, 0)], 3), Settings);

        (least.Value, least.Bound, least.Cells, least.Basins[0].Pose.Length).ShouldBe((5, 5, 0, 0));
    }

    [Fact]
    public void A_coordinate_that_moves_nothing_costs_nothing()
    {
        FormulaMotion idle = new(
            new PoseBox([new("travel", false, -100, 100), new("idle", false, -100, 100), new("other", true, -1, 1)]),
            [(0, [new Move.Slide(Vector3d.UnitX, [1, 0, 0])])], []);
        var ball = new CapsuleChain([Vector3d.Zero], 5);
        var line = new CapsuleChain([new(30, -50, 12), new(30, 50, 19)], 2);

        Extreme one = Sweep.LeastGap(Slider, 0, line, 1, ball, Settings), more = Sweep.LeastGap(idle, 0, line, 1, ball, Settings);

        more.Value.ShouldBe(one.Value, 1e-4);
        more.Cells.ShouldBeLessThanOrEqualTo(2 * one.Cells);
        more.Basins.Length.ShouldBe(1);
    }

    [Fact]
    public void Two_places_as_near_as_each_other_are_two_basins()
    {
        var posts = new CapsuleChain([new(-60, 0, 20), new(-60, 0, 120), new(60, 0, 120), new(60, 0, 20.5)], 5);

        Extreme least = Sweep.LeastGap(Slider, 0, posts, 1, new CapsuleChain([Vector3d.Zero], 5), Settings);

        least.Basins.Length.ShouldBe(2);
        least.Basins[0].Value.ShouldBe(10, 1e-3);
        least.Basins[1].Value.ShouldBe(10.5, 1e-3);
    }
}
