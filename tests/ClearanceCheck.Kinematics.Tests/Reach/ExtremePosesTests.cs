using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Reach;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Kinematics.Tests.Reach;

public sealed class ExtremePosesTests
{
    // Seats 500 mm over the axle's line; a bump stop may be crushed to 420, a shock may open to 600: 80 mm up and 100 mm down at the stops themselves.
    private const double StopY = 400, ShockY = 450, SeatZ = 500, CrushedMm = 420, OpenMm = 600;

    [Fact]
    public void With_one_wheel_up_the_hubs_lie_on_the_line_through_the_two_stops_that_hold_the_axle()
    {
        ExtremePose pose = Find("articulated-left-up");

        // The axle's line passes the pad at z = 80 on the left and a circle of 600 mm about the right shock's seat. The pad is the axle's
        // own point 400 mm out, the shock's end its own point 450 mm out on the other side. With the tilt s = sin(a), c = cos(a):
        //   pad:   h + 400 s = 80
        //   shock: (450 c - 450)^2 + (500 - h + 450 s)^2 = 600^2
        // One unknown, solved by bisection on s.
        double s = Root(0, 0.5, sine =>
        {
            double c = Math.Sqrt(1 - (sine * sine)), h = 80 - (StopY * sine);
            double across = (ShockY * c) - ShockY, down = SeatZ - h + (ShockY * sine);
            return (across * across) + (down * down) - (OpenMm * OpenMm);
        });
        double height = 80 - (StopY * s);
        pose.IsReached.ShouldBeTrue();
        pose.Pose[0].ShouldBe(height + (TiltingAxle.HalfTrack * s), 1e-6);
        pose.Pose[1].ShouldBe(height - (TiltingAxle.HalfTrack * s), 1e-6);

        // Similar triangles say it to the tilt's second order, and the hub goes further than the stop inboard of it.
        double slope = (80 + 100) / (StopY + ShockY);
        pose.Pose[0].ShouldBe(80 + (slope * (TiltingAxle.HalfTrack - StopY)), 2);
        pose.Pose[1].ShouldBe(-100 - (slope * (TiltingAxle.HalfTrack - ShockY)), 2);
        pose.Holds.Select(h => (h.Kind, h.Name)).ShouldBe([(PoseHoldKind.Stop, "left bump stop"), (PoseHoldKind.Stop, "right shock")]);
        pose.Holds.ShouldAllBe(h => Math.Abs(h.ReserveMm) < 1e-6);
    }

    [Fact]
    public void Both_wheels_go_together_as_far_as_their_own_stops()
    {
        Both(Find("full-droop"), -100);
        Both(Find("full-bump"), 80);

        static void Both(ExtremePose pose, double height)
        {
            pose.Pose[0].ShouldBe(height, 1e-6);
            pose.Pose[1].ShouldBe(height, 1e-6);
            pose.Holds.Length.ShouldBe(2);
        }
    }

    [Fact]
    public void One_wheel_goes_until_its_stop_holds_it_while_the_other_stays_at_ride_height()
    {
        ExtremePose bump = Find("left-bump"), droop = Find("right-droop");

        // The pad 400 mm out of a hub 780 mm out, the other hub fixed: 80 mm at the pad are 80 * 1560 / 1180 at the hub.
        bump.Pose[0].ShouldBe(80.0 * 1560 / 1180, 1e-6);
        bump.Pose[1].ShouldBe(0);
        droop.Pose[0].ShouldBe(0);
        droop.Pose[1].ShouldBe(-100.0 * 1560 / 1230, 0.2);
        droop.Holds.Select(h => h.Name).ShouldBe(["right shock"]);
    }

    [Fact]
    public void The_two_sides_of_a_mirrored_axle_answer_each_other()
    {
        ExtremePose left = Find("articulated-left-up"), right = Find("articulated-right-up");

        left.Pose[0].ShouldBe(right.Pose[1], 1e-6);
        left.Pose[1].ShouldBe(right.Pose[0], 1e-6);
    }

    [Fact]
    public void No_pose_of_a_fine_grid_that_meets_all_stops_goes_further()
    {
        TiltingAxle axle = Axle();

        foreach ((string name, int l, int r) in new[] { ("full-droop", -1, -1), ("full-bump", 1, 1), ("articulated-left-up", 1, -1), ("articulated-right-up", -1, 1) })
        {
            double best = double.NegativeInfinity;
            for (double left = -300; left <= 300; left += 2)
                for (double right = -300; right <= 300; right += 2)
                    if (axle.Stops.All(s => s.Reserve(axle.At([left, right])[1]) >= 0)) best = Math.Max(best, (l * left) + (r * right));
            ExtremePose pose = Find(name);
            double found = (l * pose.Pose[0]) + (r * pose.Pose[1]);
            found.ShouldBeGreaterThanOrEqualTo(best - 1e-6, name);
            found.ShouldBeLessThan(best + 9, name);
        }
    }

    [Fact]
    public void Without_stops_the_travel_looked_at_ends_it_and_that_is_said()
    {
        ExtremePose pose = ExtremePoses.Of("rear", new TiltingAxle(new PoseBox([TiltingAxle.Left(120), TiltingAxle.Right(120)]), [])).Single(p => p.Name == "articulated-left-up");

        pose.Pose.ShouldBe([120, -120]);
        pose.Holds.ShouldBe([
            new PoseHold(PoseHoldKind.EndOfTravel, "end of the travel looked at, rear.left bump", 0),
            new PoseHold(PoseHoldKind.EndOfTravel, "end of the travel looked at, rear.right droop", 0)]);
    }

    [Fact]
    public void A_stop_that_ride_height_already_passes_is_told_and_the_other_poses_still_come_back_onto_it()
    {
        // The left shock is 496 mm long at most and 500 mm long at ride height.
        ImmutableArray<Stop> stops = [.. Axle().Stops.Select(s => s.Name == "left shock" ? (LongestStop)s with { LongestMm = 496 } : s)];
        ImmutableArray<ExtremePose> poses = ExtremePoses.Of("rear", new TiltingAxle(new PoseBox([TiltingAxle.Left(), TiltingAxle.Right()]), stops));

        ExtremePose ride = poses.Single(p => p.Name == ExtremePoses.RideHeight), bump = poses.Single(p => p.Name == "full-bump"), droop = poses.Single(p => p.Name == "right-droop");
        ride.IsReached.ShouldBeFalse();
        ride.Passed.Single().Name.ShouldBe("left shock");
        ride.Passed.Single().BeyondMm.ShouldBe(4, 1e-9);
        bump.Pose[0].ShouldBe(80, 1e-6);
        // With the left wheel at ride height the right one has to stand higher than that: 780 + 450 parts of 1560 of the left shock's
        // place are the left hub's height, 330 the right one's, and 4 mm have to be gained.
        droop.IsReached.ShouldBeTrue();
        droop.Pose[1].ShouldBe(4 * 1560.0 / 330, 0.1);
    }

    [Fact]
    public void One_stop_in_the_middle_lets_both_wheels_hang_alike()
    {
        var middle = new LongestStop("strap", 0, new(0, 0, SeatZ), 1, Vector3d.Zero, OpenMm);

        ExtremePose pose = ExtremePoses.Of("rear", new TiltingAxle(new PoseBox([TiltingAxle.Left(), TiltingAxle.Right()]), [middle])).Single(p => p.Name == "full-droop");

        pose.Pose[0].ShouldBe(-100, 1e-6);
        pose.Pose[1].ShouldBe(-100, 1e-6);
    }

    [Fact]
    public void A_steered_axle_has_its_locks_and_a_stop_may_end_them_before_the_range()
    {
        // A tab on the knuckle, 100 mm ahead of a pivot at y 700, may not come nearer than 60 mm to a point of the axle 90 mm to its left.
        var tab = new ShortestStop("left steering stop", 1, new(100, 790, 0), 2, new(100, 700, 0), 60);
        var box = new PoseBox([TiltingAxle.Left(), TiltingAxle.Right(), new PoseCoordinate("rear.steer", true, -0.6, 0.6), new PoseCoordinate("rear.wrap", true, -0.1, 0.1)]);
        ImmutableArray<ExtremePose> poses = ExtremePoses.Of("rear", new TiltingAxle(box, [.. Axle().Stops, tab]));

        ExtremePose left = poses.Single(p => p.Name == "lock-left"), right = poses.Single(p => p.Name == "lock-right"), hanging = poses.Single(p => p.Name == "full-droop-lock-right");
        // The tab goes round a circle of 100 mm: (100 - 100 cos a)^2 + (90 - 100 sin a)^2 = 60^2.
        double expected = Root(0, 0.6, a => 3600 - Square(100 - (100 * Math.Cos(a))) - Square(90 - (100 * Math.Sin(a))));
        left.Pose[2].ShouldBe(expected, 1e-8);
        left.Pose.Take(2).ShouldBe([0, 0]);
        left.Holds.Select(h => (h.Kind, h.Name)).ShouldBe([(PoseHoldKind.Stop, "left steering stop")]);
        right.Pose[2].ShouldBe(-0.6);
        right.Holds.Select(h => (h.Kind, h.Name)).ShouldBe([(PoseHoldKind.Lock, "steering lock right")]);
        hanging.Pose[0].ShouldBe(-100, 1e-6);
        hanging.Pose[2].ShouldBe(-0.6, 1e-12);
        poses.ShouldAllBe(p => p.Pose[3] == 0);
        poses.Where(p => !p.Name.Contains("lock")).ShouldAllBe(p => p.Pose[2] == 0);
    }

    [Fact]
    public void At_a_lock_the_steering_comes_first_and_a_shock_on_the_knuckle_takes_the_axle_with_it()
    {
        // The shock's lower end sits on the knuckle, 150 mm ahead of its pivot and 60 mm outside it, straight below its seat: steering carries it aside.
        var shock = new LongestStop("knuckle shock", 0, new(150, 760, SeatZ), 2, new(150, 760, 0), OpenMm);
        var box = new PoseBox([TiltingAxle.Left(), TiltingAxle.Right(), new PoseCoordinate("rear.steer", true, -0.6, 0.6)]);
        ImmutableArray<ExtremePose> poses = ExtremePoses.Of("rear", new TiltingAxle(box, [.. Axle().Stops, shock]));

        ExtremePose hanging = poses.Single(p => p.Name == "full-droop"), locked = poses.Single(p => p.Name == "full-droop-lock-left");

        locked.Pose[2].ShouldBe(0.6, 1e-9);
        locked.IsReached.ShouldBeTrue();
        locked.Holds.Select(h => h.Name).ShouldContain("knuckle shock");
        (locked.Pose[0] + locked.Pose[1]).ShouldBeGreaterThan(hanging.Pose[0] + hanging.Pose[1] + 1);
    }

    [Fact]
    public void A_stop_that_comes_a_little_later_does_not_hold_the_pose()
    {
        var late = new HeightStop("late", 0, new(0, StopY, SeatZ), 1, new(0, StopY, 0), Vector3d.UnitZ, CrushedMm - 1);

        ExtremePose bump = ExtremePoses.Of("rear", new TiltingAxle(new PoseBox([TiltingAxle.Left(), TiltingAxle.Right()]), [.. Axle().Stops, late])).Single(p => p.Name == "full-bump");

        bump.Holds.Select(h => h.Name).ShouldBe(["left bump stop", "right bump stop"]);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(400)]
    [InlineData(-400)]
    public void Slopes_of_reserves_are_those_of_the_formula_inside_the_range_and_at_its_ends(double left)
    {
        TiltingAxle axle = Axle();
        double[] pose = [left, 0];

        StopSlopes slopes = StopSlopes.Of(axle, pose, axle.At(pose), [true, true]).ShouldNotBeNull();

        // Left bump stop: 80 mm less the pad's height, which is (780 + 400) / 1560 of the left hub's.
        slopes.Slopes[0][0].ShouldBe(-1180.0 / 1560, 1e-8);
        slopes.Slopes[0][1].ShouldBe(-380.0 / 1560, 1e-8);
        // Left shock: -(d/dl) sqrt((450 c - 450)^2 + (500 - z)^2) with s = (l - r) / 1560, c^2 = 1 - s^2 and z = (l + r) / 2 + 450 s.
        double s = left / 1560, c = Math.Sqrt(1 - (s * s)), across = (450 * c) - 450, down = 500 - (left / 2) - (450 * s);
        double slope = ((across * 450 * -s / c / 1560) + (down * -(0.5 + (450.0 / 1560)))) / Math.Sqrt((across * across) + (down * down));
        slopes.Slopes[2][0].ShouldBe(-slope, 1e-8);
    }

    [Fact]
    public void Corners_that_are_equally_good_but_for_the_last_digits_give_their_middle()
    {
        (double[], double)[] limits = [([1, 0], 1), ([-1, 0], 1), ([0, 1], 1), ([0, -1], 1), ([-1, -1], 1)];

        double[] best = CornerProgram.Maximize([1, 1 + 1e-12], limits, 1e-8).ShouldNotBeNull();

        // p + q = 1 between (1, 0) and (0, 1).
        best[0].ShouldBe(0.5, 1e-12);
        best[1].ShouldBe(0.5, 1e-12);
        CornerProgram.Maximize([1, 2], limits, 1e-8).ShouldBe([0, 1]);
        CornerProgram.Maximize([1, 2], [.. limits, ([1, 1], -3)], 1e-8).ShouldBeNull();
    }

    private static double Square(double x) => x * x;

    // Where a function that rises through zero does so.
    private static double Root(double low, double high, Func<double, double> function)
    {
        for (int k = 0; k < 200; k++)
        {
            double middle = (low + high) / 2;
            if (function(middle) < 0) low = middle;
            else high = middle;
        }

        return low;
    }

    private static ExtremePose Find(string name) => ExtremePoses.Of("rear", Axle()).Single(p => p.Name == name);

    private static TiltingAxle Axle() => new(new PoseBox([TiltingAxle.Left(), TiltingAxle.Right()]),
    [
        new HeightStop("left bump stop", 0, new(0, StopY, SeatZ), 1, new(0, StopY, 0), Vector3d.UnitZ, CrushedMm),
        new HeightStop("right bump stop", 0, new(0, -StopY, SeatZ), 1, new(0, -StopY, 0), Vector3d.UnitZ, CrushedMm),
        new LongestStop("left shock", 0, new(0, ShockY, SeatZ), 1, new(0, ShockY, 0), OpenMm),
        new LongestStop("right shock", 0, new(0, -ShockY, SeatZ), 1, new(0, -ShockY, 0), OpenMm),
    ]);
}
