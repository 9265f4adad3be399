using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Reach;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Kinematics.Tests.Reach;

public sealed class StopPathsTests
{
    [Fact]
    public void Stops_are_met_in_order_up_to_30_mm_beyond_the_first()
    {
        StopPath up = Path("both-up", Pad("first", 400, 419.3), Pad("second", -400, 401.7), Pad("third", 300, 389.2));

        // Seats 500 mm over the line: 80.7, 98.3 and 110.8 mm; the last lies beyond 80.7 + 30.
        up.Crossings.Select(c => c.Stop).ShouldBe(["first", "second"]);
        up.Crossings[0].At.ShouldBe(80.7, 1e-9);
        up.Crossings[1].At.ShouldBe(98.3, 1e-9);
        up.EndsWithoutStop.ShouldBeFalse();
    }

    [Fact]
    public void With_one_wheel_up_and_one_down_a_stop_is_met_where_its_own_place_on_the_axle_comes_to_it()
    {
        StopPath roll = Path("left-up-right-down", Pad("left", 400, 420));

        // The pad goes up by 400 / 780 of what the hub does.
        roll.Crossings.Single().At.ShouldBe(80 * TiltingAxle.HalfTrack / 400, 1e-9);
    }

    [Fact]
    public void Where_no_stop_is_met_the_path_ends_30_mm_beyond_the_travel_looked_at()
    {
        StopPath down = Path("both-down", Pad("first", 400, 420));

        down.Crossings.ShouldBeEmpty();
        down.EndsWithoutStop.ShouldBeTrue();
        down.EndOfRange.ShouldBe(150);
        down.SolvedTo.ShouldBe(180);
    }

    [Fact]
    public void A_stop_beyond_the_travel_looked_at_does_not_end_it()
    {
        StopPath up = Path("both-up", Pad("far", 400, 340));

        up.Crossings.Single().At.ShouldBe(160, 1e-9);
        up.EndsWithoutStop.ShouldBeTrue();
    }

    [Fact]
    public void A_stop_that_ride_height_passes_comes_first_with_by_how_much()
    {
        StopPath up = Path("both-up", Pad("passed", 400, 503), Pad("later", -400, 490));

        up.Crossings[0].ShouldBe(new StopCrossing("passed", 0, 3));
        up.Crossings[1].Stop.ShouldBe("later");
        up.Crossings[1].At.ShouldBe(10, 1e-9);
    }

    [Fact]
    public void An_axle_that_is_not_steered_has_no_steering_path()
    {
        StopPaths.Of("rear", Axle(2, [])).Select(p => p.Name).ShouldNotContain("steer-left");
        StopPaths.Of("rear", Axle(3, [])).Single(p => p.Name == "steer-left").IsAngle.ShouldBeTrue();
    }

    private static StopPath Path(string name, params Stop[] stops) => StopPaths.Of("rear", Axle(2, stops)).Single(p => p.Name == name);

    private static TiltingAxle Axle(int coordinates, Stop[] stops)
    {
        PoseCoordinate[] all = [TiltingAxle.Left(150), TiltingAxle.Right(150), new("rear.steer", true, -0.5, 0.5)];
        return new TiltingAxle(new PoseBox(all.Take(coordinates)), [.. stops]);
    }

    private static HeightStop Pad(string name, double y, double crushedMm) => new(name, 0, new(0, y, 500), 1, new(0, y, 0), Vector3d.UnitZ, crushedMm);
}
