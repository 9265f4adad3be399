using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Kinematics.Placing;
using ClearanceCheck.Kinematics.Steerings;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Tests.Layouts;

/// <summary>A whole inspection for every layout and steering linkage: it reads without a word, and it moves.</summary>
public sealed class LayoutExampleTests
{
    public static TheoryData<string> Examples { get; } = [.. LayoutExample.Names];

    [Fact]
    public void Every_layout_and_every_steering_of_the_catalogue_has_an_example()
    {
        Axle[] axles = [.. LayoutExample.Names.Select(n => LayoutExample.Read(n).Vehicle.ShouldNotBeNull(n).Axles[0])];

        LayoutCatalogue.All.Select(l => l.Id).Except(axles.Select(a => a.Layout)).ShouldBeEmpty();
        SteeringCatalogue.All.Select(s => s.Id).Except(axles.Select(a => a.Steering?.Kind)).ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void It_stands_as_it_was_measured(string name)
    {
        LayoutExample example = LayoutExample.Of(name);
        SolvedPose pose = example.Solve(StatePose.Of(example.Module, example.Axle.MeasuredIn, example.Vehicle.Parameters.Nominal));

        foreach (RidingPoint point in PosedPoints.Of(example.Vehicle))
        {
            int body = example.Motion.Find(point.Body).Number;
            Vector3d at = point.At.At(example.Vehicle.Parameters.Nominal);
            (pose[body].Apply(at) - at).Length.ShouldBeLessThan(1e-9, point.Path);
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Its_wheels_rise_by_what_is_set_and_its_rods_keep_their_length(string name)
    {
        LayoutExample example = LayoutExample.Of(name);
        PoseBox box = example.Module.Motion.Box;
        foreach (double share in (double[])[0.15, 0.5, 0.85])
            foreach (double other in (double[])[0.15, 0.5, 0.85])
            {
                double[] at = [.. box.Coordinates.Select((c, d) => c.Low + ((d % 2 == 0 ? share : other) * (c.High - c.Low)))];
                SolvedPose pose = example.Solve(at);
                SolvedPose ride = example.Solve(new double[at.Length]);

                Hub(example, pose, true).ShouldBe(Hub(example, ride, true) + at[0], 1e-8);
                Hub(example, pose, false).ShouldBe(Hub(example, ride, false) + at[1], 1e-8);
                foreach (Joint.Rod rod in example.Module.Motion.Linkage.Joints.OfType<Joint.Rod>())
                    (pose[rod.SecondBody].Apply(rod.SecondPoint) - pose[rod.FirstBody].Apply(rod.FirstPoint)).Length.ShouldBe(rod.LengthMm, 1e-8, rod.Name);
            }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Steering_turns_both_wheels_one_way(string name)
    {
        LayoutExample example = LayoutExample.Of(name);
        AxleCoordinates known = AxleCoordinates.Of(example.Module);
        if (known.Steer is not { } steer) return;
        // Positive turns to the left but where it sets a rod behind the axle (a rack, a pitman arm), or a pitman arm whose drag link pulls the wheel to the left as it turns right.
        double turn = name is "free-three-link" or "free-wishbones" || name.StartsWith("double-wishbones", StringComparison.Ordinal) ? -1 : 1;
        double[] left = new double[example.Module.Motion.Box.Dimensions], right = [.. left];
        left[steer] = 0.5 * turn * example.Module.Motion.Box.Coordinates[steer].High;
        right[steer] = 0.5 * turn * example.Module.Motion.Box.Coordinates[steer].Low;

        foreach (Wheel wheel in (Wheel[])[example.Axle.Left, example.Axle.Right])
        {
            int body = example.Module.Bodies.IndexOf(wheel.Body);
            example.Solve(left)[body].Rotation.Apply(Vector3d.UnitX).Y.ShouldBeGreaterThan(0.05, wheel.Body);
            example.Solve(right)[body].Rotation.Apply(Vector3d.UnitX).Y.ShouldBeLessThan(-0.05, wheel.Body);
        }
    }

    [Theory] // Hubs and mark as typed, to whole mm.
    [InlineData(-120, -120, -20, 815, -120, -78, 270, 50)]
    [InlineData(60, 60, 2, 791, 60, -60, 246, 229)]
    [InlineData(120, -120, 4, 803, 120, -59, 239, 206)]
    [InlineData(-120, 120, -8, 764, -120, -63, 250, 131)]
    public void An_axle_measured_at_several_positions_goes_through_them(
        double left, double right, double hubX, double hubY, double hubZ, double markX, double markY, double markZ)
    {
        LayoutExample example = LayoutExample.Of("positions");

        SolvedPose pose = example.Solve(left, right);

        // Three points typed to whole mm are no rigid triangle: half a mm each.
        (example.At(pose, "axle", example.Measured("hub-left")) - new Vector3d(hubX, hubY, hubZ)).Length.ShouldBeLessThan(1.2);
        (example.At(pose, "axle", example.Measured("marker")) - new Vector3d(markX, markY, markZ)).Length.ShouldBeLessThan(1.6);
    }

    private static double Hub(LayoutExample example, SolvedPose pose, bool left)
    {
        int body = example.Module.Bodies.IndexOf(LayoutCatalogue.Of(example.Axle).TravelBody(example.Axle, left));
        return pose[body].Apply((left ? example.Axle.Left : example.Axle.Right).Hub.At(example.Vehicle.Parameters.Nominal)).Z;
    }
}
