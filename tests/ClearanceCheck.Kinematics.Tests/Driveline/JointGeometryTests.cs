using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Driveline;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Tests.Driveline;

public sealed class JointGeometryTests
{
    private const double Degree = Math.PI / 180;

    [Fact]
    public void The_true_angle_of_3_degrees_in_side_view_and_4_in_top_view_is_4_994()
    {
        // tan^2 b = tan^2 side + tan^2 top (kinematics handbooks; from memory).
        double angle = JointGeometry.Between(Vector3d.UnitX, new Vector3d(1, Math.Tan(4 * Degree), Math.Tan(3 * Degree)));

        (angle / Degree).ShouldBe(4.994, 5e-4);
    }

    [Theory]
    [InlineData(-11)]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(17)]
    public void An_axle_that_pitches_about_its_joint_bends_that_joint_by_as_much_and_not_the_other(double degrees)
    {
        ShaftPiece piece = Piece();
        RigidMotion pitched = About(piece.To, degrees * Degree);

        // The shaft falls by 10 degrees to the rear and the pinion's axis points along it as measured; nose up opens the joint.
        piece.SecondJoint.ShouldNotBeNull().AngleRad(pitched.Inverse).ShouldBe(Math.Abs(degrees) * Degree, 1e-12);
        piece.FirstJoint.ShouldNotBeNull().AngleRad(pitched).ShouldBe(10 * Degree, 1e-12);
    }

    [Theory]
    [InlineData(-180)]
    [InlineData(0)]
    [InlineData(95.5)]
    public void A_pure_heave_changes_the_length_by_pythagoras_and_both_angles_by_the_slope(double heave)
    {
        ShaftPiece piece = Piece();
        ShaftPose at = new ShaftLine([piece], false, (piece.To - piece.From).Length, (90, 62)).At(Pose(new RigidMotion(Rotation.Identity, new(0, 0, heave))));

        double drop = (800 * Math.Tan(10 * Degree)) - heave, slope = Math.Atan2(drop, 800), measured = 800 / Math.Cos(10 * Degree);
        at.LengthMm.ShouldBe(Math.Sqrt((800 * 800) + (drop * drop)), 1e-9);
        at.SlipMm.ShouldNotBeNull().ShouldBe(at.LengthMm - measured, 1e-9);
        at.First.AngleRad.ShouldNotBeNull().ShouldBe(Math.Abs(slope), 1e-12);
        at.Second!.Value.AngleRad.ShouldNotBeNull().ShouldBe(Math.Abs(slope - (10 * Degree)), 1e-12);
        at.Splines!.Value.LeftOutMm.ShouldBe(62 - at.SlipMm!.Value, 1e-9);
    }

    [Fact]
    public void A_point_behind_the_flange_tells_the_same_angle_as_one_before_it()
    {
        ShaftPose ahead = Line(Piece(behind: false)).At(Pose(About(Vector3d.Zero, 0.1))), behind = Line(Piece(behind: true)).At(Pose(About(Vector3d.Zero, 0.1)));

        behind.First.ShouldBe(ahead.First);
        behind.Second.ShouldBe(ahead.Second);
        behind.EquivalentRad.ShouldBe(ahead.EquivalentRad);
    }

    [Fact]
    public void A_double_cardan_joint_bends_each_cross_by_half_and_a_shaft_behind_a_bearing_has_no_second_joint()
    {
        new JointBend(ShaftJointKind.DoubleCardan, 0.3).PerCrossRad.ShouldBe(0.15);
        new JointBend(ShaftJointKind.Single, 0.3).PerCrossRad.ShouldBe(0.3);
        new JointBend(ShaftJointKind.DoubleCardan, null).PerCrossRad.ShouldBeNull();
        ShaftPose followed = (Line(Piece()) with { IsFollowed = true }).At(Pose(RigidMotion.Identity));
        followed.Second.ShouldBeNull();
        followed.EquivalentRad.ShouldBeNull();
        followed.First.AngleRad.ShouldNotBeNull().ShouldBe(10 * Degree, 1e-12);
    }

    [Theory]
    [InlineData(0, 62, 62, 28)]
    [InlineData(20, 42, 42, 48)]
    [InlineData(-28, 90, 90, 0)]
    [InlineData(-40, 90, 102, -12)]
    [InlineData(62, 0, 0, 90)]
    [InlineData(70, 0, -8, 98)]
    public void Splines_engage_by_what_was_engaged_less_what_the_shaft_grew_and_never_by_more_than_there_is(double slip, double engaged, double leftOut, double leftIn) =>
        SplineEngagement.Of(90, 62, slip).ShouldBe(new SplineEngagement(engaged, leftOut, leftIn));

    private static ShaftLine Line(ShaftPiece piece) => new([piece], false, 0, null);

    // From an output that points straight to the rear to an axle 800 mm behind it whose pinion points along the shaft, which falls by 10 degrees.
    private static ShaftPiece Piece(bool behind = false)
    {
        Vector3d from = new(500, 30, -100), to = from + new Vector3d(-800, 0, -800 * Math.Tan(10 * Degree));
        var builder = new ParameterVectorBuilder();
        int sign = behind ? -1 : 1;
        var shaft = new PartForm.Shaft(Place(Vehicle.Chassis, from), Place("rear/axle", to), new Sleeves(true, Length(), Length(), Length(), Length()))
        {
            FirstEnd = new ShaftEnd(ShaftJointKind.Single, Point(from + new Vector3d(-70 * sign, 0, 0))),
            SecondEnd = new ShaftEnd(ShaftJointKind.Single, Point(to + ((to - from) * (0.1 * sign)))),
        };
        var module = new AxleModule(null!, [Vehicle.Chassis, "rear/axle"], null!);
        return ShaftPiece.Of(module, shaft, builder.Build().Nominal);

        Place Place(string body, Vector3d at) => new(body, Point(at));
        MeasuredPoint Point(Vector3d at) => builder.Point("at", at, 1, false);
        MeasuredLength Length() => builder.Length("length", 100, 1, false);
    }

    private static Mechanics.Poses.SolvedPose Pose(RigidMotion axle) => new(Mechanics.Poses.PoseAnswerKind.Solved, new[] { RigidMotion.Identity, axle });

    private static RigidMotion About(Vector3d centre, double angleRad)
    {
        var turn = Rotation.About(Vector3d.UnitY, angleRad);
        return new RigidMotion(turn, centre - turn.Apply(centre));
    }
}
