using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Attitude;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Mechanics.Tests.Tables;

namespace ClearanceCheck.Kinematics.Tests.Layouts;

/// <summary>Layouts and steering linkages by name, against the tables of an independent program.</summary>
public sealed class LayoutTableTests
{
    private const double Degree = Math.PI / 180;

    [Fact]
    public void A_three_link_axle_with_cross_over_steering_meets_its_table()
    {
        (AxleModule Module, double[] Parameters) axle = Samples.Of("three-link", "cross-over").Module();
        ReferenceTable table = ReferenceTable.Read("crossover-steering");
        foreach (double[] row in table.Rows)
        {
            // The coordinate is the turn of the knuckle that the drag link holds: here the right one.
            SolvedPose pose = axle.Module.Motion.At([table.Value(row, "heave"), table.Value(row, "heave"), table.Value(row, "knuckleR_turn") * Degree]);

            pose.IsSolved.ShouldBeTrue();
            Near(Point(axle, pose, "tie-rod-left", "knuckle-left"), table.Point(row, "tieL_"), 2e-6);
            Near(Point(axle, pose, "hub-left", "knuckle-left"), table.Point(row, "hubL_"), 2e-6);
            Near(Point(axle, pose, "hub-right", "knuckle-right"), table.Point(row, "hubR_"), 2e-6);
            Near(Point(axle, pose, "drag-link-pitman", "pitman-arm"), table.Point(row, "pitman_end_"), 2e-6);
        }
    }

    [Fact]
    public void Split_beams_meet_their_table_within_a_billionth()
    {
        (AxleModule Module, double[] Parameters) axle = Samples.Of("split-beams").Module();
        ReferenceTable table = ReferenceTable.Read("split-beam");
        foreach (double[] row in table.Rows)
        {
            double travel = table.Value(row, "travel");
            SolvedPose pose = axle.Module.Motion.At([travel, -0.5 * travel]), other = axle.Module.Motion.At([0.25 * travel, travel]);

            Near(Point(axle, pose, "hub-left", "beam-left"), table.Point(row, "hub_"), 1e-9);
            Vector3d mirrored = Point(axle, other, "hub-right", "beam-right");
            Near(new(mirrored.X, -mirrored.Y, mirrored.Z), table.Point(row, "hub_"), 1e-9);
            Near(pose[axle.Module.Bodies.IndexOf("front/beam-left")].Apply(new(8, 702, -95)), table.Point(row, "kp_lower_"), 1e-9);
            Near(pose[axle.Module.Bodies.IndexOf("front/beam-left")].Apply(new(-12, 665, 118)), table.Point(row, "kp_upper_"), 1e-9);
        }
    }

    [Fact]
    public void Double_wishbones_with_a_rack_meet_their_table_on_both_sides()
    {
        (AxleModule Module, double[] Parameters) axle = Samples.Of("double-wishbones", "rack").Module();
        ReferenceTable table = ReferenceTable.Read("double-wishbone");
        foreach (double[] row in table.Rows)
        {
            double travel = table.Value(row, "travel"), rack = table.Value(row, "rack");
            SolvedPose pose = axle.Module.Motion.At([travel, 10, rack]), mirrored = axle.Module.Motion.At([-20, travel, -rack]);

            Near(Point(axle, pose, "hub-left", "knuckle-left"), table.Point(row, "hub_"), 1e-6);
            Near(Point(axle, pose, "upper-ball-left", "upper-arm-left"), table.Point(row, "upper_ball_"), 1e-6);
            Vector3d right = Point(axle, mirrored, "hub-right", "knuckle-right");
            Near(new(right.X, -right.Y, right.Z), table.Point(row, "hub_"), 1e-6);
        }
    }

    [Fact]
    public void Caster_and_kingpin_inclination_of_wishbones_are_those_of_the_table()
    {
        (AxleModule module, double[] parameters) = Samples.Of("double-wishbones", "rack").Module();
        ReferenceTable table = ReferenceTable.Read("double-wishbone");
        foreach (double[] row in table.Rows)
        {
            SolvedPose pose = module.Motion.At([table.Value(row, "travel"), 0, table.Value(row, "rack")]);

            (double caster, double inclination) = WheelAttitude.Kingpin(module, true, pose, parameters)!.Value;

            (caster / Degree).ShouldBe(table.Value(row, "caster"), 1e-7);
            (inclination / Degree).ShouldBe(table.Value(row, "kingpin_inclination"), 1e-7);
        }
    }

    [Fact]
    public void The_steered_wheels_of_the_table_stand_as_it_says()
    {
        (AxleModule module, double[] parameters) = Samples.Of("three-link", "cross-over").Module();
        ReferenceTable table = ReferenceTable.Read("crossover-steering");
        // The table's wheels start with a toe and camber of their own; a kingpin and hub alone start straight: compare the turn about the vertical roughly.
        foreach (double[] row in table.Rows)
        {
            double heave = table.Value(row, "heave");
            SolvedPose pose = module.Motion.At([heave, heave, table.Value(row, "knuckleR_turn") * Degree]);

            WheelAttitude left = WheelAttitude.Of(module, true, pose, heave, parameters), right = WheelAttitude.Of(module, false, pose, heave, parameters);

            (left.SteerRad / Degree).ShouldBe(table.Value(row, "steerL_left_positive"), 0.12);
            (right.SteerRad / Degree).ShouldBe(table.Value(row, "steerR_left_positive"), 0.12);
        }
    }

    private static Vector3d Point((AxleModule Module, double[] Parameters) axle, SolvedPose pose, string point, string body) =>
        pose[axle.Module.Bodies.IndexOf($"front/{body}")].Apply(axle.Module.Axle.Points[point].At(axle.Parameters));

    private static void Near(Vector3d actual, Vector3d expected, double tolerance)
    {
        actual.X.ShouldBe(expected.X, tolerance);
        actual.Y.ShouldBe(expected.Y, tolerance);
        actual.Z.ShouldBe(expected.Z, tolerance);
    }
}
