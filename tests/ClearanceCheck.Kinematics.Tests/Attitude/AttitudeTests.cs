using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Attitude;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Tests.Attitude;

/// <summary>How wheels and axles stand, against closed forms.</summary>
public sealed class AttitudeTests
{
    private const double BarMm = 900, HalfTrack = 780, LinkMm = 800;

    [Fact]
    public void In_heave_the_axle_swings_sideways_on_the_arc_of_its_track_bar()
    {
        (AxleModule module, Vehicle vehicle) = ParallelLinks();
        SolvedPose ride = module.Motion.At([0, 0]);
        for (double z = -120; z <= 120; z += 40)
        {
            AxleAttitude axle = AxleAttitude.Of(module, module.Motion.At([z, z]), ride, vehicle.Parameters.Nominal).ShouldNotBeNull();

            (double forward, double left) = Arc(z);
            axle.ShiftMm.ShouldBe(left, 1e-7);
            axle.ForwardMm.ShouldBe(forward, 1e-7);
            axle.TiltRad.ShouldBe(0, 1e-9);
            axle.YawRad.ShouldBe(0, 1e-9);
        }
    }

    [Fact]
    public void In_roll_each_wheel_leans_by_the_difference_of_the_hubs_over_their_distance()
    {
        (AxleModule module, Vehicle vehicle) = ParallelLinks();
        foreach (double z in new[] { -90.0, 35, 110 })
        {
            SolvedPose pose = module.Motion.At([z, -z]);
            double lean = Math.Asin(2 * z / (2 * HalfTrack));

            WheelAttitude left = Wheel(true), right = Wheel(false);
            left.CamberRad.ShouldBe(-lean, 1e-11);
            right.CamberRad.ShouldBe(lean, 1e-11);
            (left.Hub - right.Hub).Length.ShouldBe(2 * HalfTrack, 1e-9);
            // Both wheels are on one axis: what is toe-in on one side is toe-out on the other, and both steer alike.
            left.ToeRad.ShouldBe(-right.ToeRad, 1e-12);
            left.SteerRad.ShouldBe(right.SteerRad, 1e-12);
            left.HubToFenderMm.ShouldBe(640 - z);
            left.CasterRad.ShouldBeNull();

            WheelAttitude Wheel(bool isLeft) => WheelAttitude.Of(module, isLeft, pose, isLeft ? z : -z, vehicle.Parameters.Nominal);
        }
    }

    [Fact]
    public void An_axle_whose_left_link_is_short_turns_to_the_right_as_it_rises_and_its_wheels_steer_with_it()
    {
        (AxleModule module, Vehicle vehicle) = ParallelLinks(leftLinkMm: 300);
        SolvedPose pose = module.Motion.At([100, 100]);

        double yaw = AxleAttitude.Of(module, pose, module.Motion.At([0, 0]), vehicle.Parameters.Nominal)!.YawRad;

        // The short link pulls the axle's left side forward: to the right. 17 mm against 6 mm, 800 mm apart.
        yaw.ShouldBe(-0.0135, 0.002);
        WheelAttitude.Of(module, true, pose, 100, vehicle.Parameters.Nominal).SteerRad.ShouldBe(yaw, 1e-12);
        WheelAttitude.Of(module, false, pose, 100, vehicle.Parameters.Nominal).SteerRad.ShouldBe(yaw, 1e-12);
    }

    [Fact]
    public void A_wheel_on_a_knuckle_steers_with_it_and_the_axle_s_own_body_says_how_the_axle_stands()
    {
        (AxleModule module, Vehicle vehicle) = ParallelLinks();
        Axle axle = module.Axle with { Left = module.Axle.Left with { Body = "rear/knuckle-left" }, Right = module.Axle.Right with { Body = "rear/knuckle-right" } };
        module = module with { Axle = axle, Bodies = ["chassis", "rear/axle", "rear/knuckle-left", "rear/knuckle-right"] };
        RigidMotion raised = new(Rotation.Identity, new(3, 5, 40));
        SolvedPose ride = Pose(RigidMotion.Identity, 0), turned = Pose(raised, 0.3);

        WheelAttitude left = WheelAttitude.Of(module, true, turned, 40, vehicle.Parameters.Nominal), right = WheelAttitude.Of(module, false, turned, 40, vehicle.Parameters.Nominal);
        AxleAttitude stands = AxleAttitude.Of(module, turned, ride, vehicle.Parameters.Nominal).ShouldNotBeNull();

        left.SteerRad.ShouldBe(0.3, 1e-14);
        right.SteerRad.ShouldBe(0.3, 1e-14);
        left.ToeRad.ShouldBe(-0.3, 1e-14);
        left.CamberRad.ShouldBe(0, 1e-14);
        // The kingpin stands at y 700: the hub goes round it by 80 mm, to the rear when it steers left.
        (left.Hub - new Vector3d(3 - (80 * Math.Sin(0.3)), 5 + 700 + (80 * Math.Cos(0.3)), 40)).Length.ShouldBeLessThan(1e-9);
        // Steering moves the hubs, not the axle.
        stands.ShiftMm.ShouldBe(5, 1e-12);
        stands.ForwardMm.ShouldBe(3, 1e-12);
        stands.YawRad.ShouldBe(0, 1e-14);

        static SolvedPose Pose(RigidMotion axle, double steerRad) => new(
            PoseAnswerKind.Solved, new[] { RigidMotion.Identity, axle, axle * About(700, steerRad), axle * About(-700, steerRad) });

        static RigidMotion About(double y, double angleRad)
        {
            var turn = Rotation.About(Vector3d.UnitZ, angleRad);
            return new RigidMotion(turn, new Vector3d(0, y, 0) - turn.Apply(new(0, y, 0)));
        }
    }

    [Fact]
    public void Wheels_that_share_no_body_have_no_axle_to_stand_any_way()
    {
        (AxleModule module, Vehicle vehicle) = ParallelLinks();
        SolvedPose ride = module.Motion.At([0, 0]);
        module = module with { Axle = module.Axle with { Left = module.Axle.Left with { Body = "rear/upright-left" } }, Bodies = ["chassis", "rear/upright-left"] };

        AxleAttitude.Of(module, ride, ride, vehicle.Parameters.Nominal).ShouldBeNull();
        Should.Throw<ArgumentException>(() => WheelAttitude.Of(module, true, new SolvedPose(PoseAnswerKind.NotSolved, default), 0, vehicle.Parameters.Nominal));
    }

    [Theory]
    [InlineData(2.0, 0.5)]
    [InlineData(-3.0, 1.5)]
    [InlineData(0.25, -12.0)]
    public void Camber_and_toe_of_an_axis_are_those_it_was_made_of(double camberDeg, double toeDeg)
    {
        double camber = camberDeg * Math.PI / 180, toe = toeDeg * Math.PI / 180;
        foreach (int side in new[] { 1, -1 })
        {
            Vector3d axis = new(Math.Sin(toe) * Math.Cos(camber), side * Math.Cos(toe) * Math.Cos(camber), -Math.Sin(camber));

            (double foundCamber, double foundToe) = WheelAttitude.CamberAndToe(axis, side > 0);

            foundCamber.ShouldBe(camber, 1e-14);
            foundToe.ShouldBe(toe, 1e-14);
        }
    }

    [Fact]
    public void A_wheel_that_is_turned_to_the_left_steers_plus_on_both_sides()
    {
        foreach (bool isLeft in new[] { true, false })
        {
            Vector3d axis = Rotation.About(Vector3d.UnitZ, 0.2).Apply(isLeft ? Vector3d.UnitY : -Vector3d.UnitY);

            double toe = WheelAttitude.CamberAndToe(axis, isLeft).ToeRad;

            (isLeft ? -toe : toe).ShouldBe(0.2, 1e-14);
        }
    }

    [Fact]
    public void An_axle_whose_top_goes_back_gains_caster_by_as_much()
    {
        // The upper links are as long as the lower ones but half as high at the frame: the axle turns as it rises.
        (AxleModule module, Vehicle vehicle) = ParallelLinks(upperFrameZ: 60);
        SolvedPose ride = module.Motion.At([0, 0]), pose = module.Motion.At([80, 80]);

        double tilt = AxleAttitude.Of(module, pose, ride, vehicle.Parameters.Nominal)!.TiltRad;

        // The same from where two points of the axle, one over the other, went: the upper one to the rear.
        Vector3d low = pose[1].Apply(new(0, 0, 0)) - ride[1].Apply(new(0, 0, 0)), high = pose[1].Apply(new(0, 0, 100)) - ride[1].Apply(new(0, 0, 100));
        tilt.ShouldBe(Math.Asin((low.X - high.X) / 100), 1e-9);
        Math.Abs(tilt).ShouldBeGreaterThan(0.002);
    }

    [Fact]
    public void A_shaft_s_line_turns_against_the_chassis_by_the_angle_of_its_slope_and_its_length_follows()
    {
        (AxleModule module, Vehicle vehicle) = ParallelLinks();
        Part shaft = vehicle.Parts.Single();
        SolvedPose ride = module.Motion.At([0, 0]), pose = module.Motion.At([100, 100]);

        SpanAttitude span = SpanAttitude.Of(module, shaft, pose, ride, vehicle.Parameters.Nominal);

        // From (700, 0, 100) to the axle's (0, 0, 0), which moves as the arc says.
        (double x, double y) = Arc(100);
        double length = Math.Sqrt(Math.Pow(700 - x, 2) + (y * y));
        span.LengthMm.ShouldBe(length, 1e-7);
        double cosine = ((700 * (700 - x)) + 0) / (Math.Sqrt((700 * 700) + (100 * 100)) * length);
        span.FirstTurnRad.ShouldBe(Math.Acos(cosine), 1e-9);
        // The axle does not turn, so its own end sees the same change.
        span.SecondTurnRad.ShouldBe(span.FirstTurnRad, 1e-9);
        SpanAttitude.Of(module, shaft, ride, ride, vehicle.Parameters.Nominal).FirstTurnRad.ShouldBe(0, 1e-12);
        SpanAttitude.IsBetween(module, vehicle, shaft).ShouldBeTrue();
    }

    // Links and bar are level at ride height, their frame ends ahead and on the left. The axle keeps its direction and every point of it
    // moves by (x, y, z): (L - x)^2 + y^2 + z^2 = L^2 and (B - y)^2 + x^2 + z^2 = B^2. Their difference says L x = B y, the rest is one square.
    private static (double Forward, double Left) Arc(double z)
    {
        double share = 1 + (BarMm * BarMm / (LinkMm * LinkMm));
        double y = (BarMm - Math.Sqrt((BarMm * BarMm) - (share * z * z))) / share;
        return (BarMm * y / LinkMm, y);
    }

    [Fact]
    public void With_links_so_long_that_they_only_guide_the_bar_alone_makes_the_arc()
    {
        (AxleModule module, Vehicle vehicle) = ParallelLinks(linkMm: 1e6);

        AxleAttitude axle = AxleAttitude.Of(module, module.Motion.At([110, 110]), module.Motion.At([0, 0]), vehicle.Parameters.Nominal)!;

        axle.ShiftMm.ShouldBe(BarMm - Math.Sqrt((BarMm * BarMm) - (110 * 110)), 1e-4);
    }

    // Three equal level links straight ahead of the axle and a level track bar.
    private static (AxleModule Module, Vehicle Vehicle) ParallelLinks(double upperFrameZ = 120, double linkMm = LinkMm, double? leftLinkMm = null)
    {
        var builder = new ParameterVectorBuilder();
        var joints = new (string Name, Vector3d Frame, Vector3d Axle)[]
        {
            ("lower-left", new(leftLinkMm ?? linkMm, 400, -60), new(0, 400, -60)),
            ("lower-right", new(linkMm, -400, -60), new(0, -400, -60)),
            ("upper", new(linkMm, 0, upperFrameZ), new(0, 0, 120)),
            ("bar", new(-20, 450, 0), new(-20, 450 - BarMm, 0)),
        };
        var vehicle = new Vehicle
        {
            Description = new VehicleDescription { Name = "test" },
            Scope = ["rear"],
            FixedBodies = [],
            Assumptions = [],
            Readings = [],
            Axles =
            [
                new Axle
                {
                    Name = "rear",
                    Layout = "free",
                    Points = ImmutableSortedDictionary<string, MeasuredPoint>.Empty,
                    FreeBodies = ["axle"],
                    FreeJoints = [.. joints.Select(j => new FreeJoint(j.Name, FreeJointKind.Rod, Vehicle.Chassis, "rear/axle", [Point(j.Frame), Point(j.Axle)], null))],
                    Left = Wheel(HalfTrack),
                    Right = Wheel(-HalfTrack),
                    DroopLimit = Length(130),
                    BumpLimit = Length(130),
                },
            ],
            Parts =
            [
                new Part
                {
                    Id = "shaft",
                    Name = "Shaft",
                    Kind = PartKinds.Find("driveshaft")!,
                    Body = Vehicle.Chassis,
                    Touches = [],
                    Form = new PartForm.Shaft(
                        new Place(Vehicle.Chassis, Point(new(700, 0, 100))), new Place("rear/axle", Point(Vector3d.Zero)), new Sleeves(true, Length(80), Length(400), Length(50), Length(400))),
                },
            ],
            Parameters = builder.Build(),
        };
        return (VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull().Modules.Single(), vehicle);

        MeasuredPoint Point(Vector3d at) => builder.Point("at", at, 2, false);
        MeasuredLength Length(double mm) => builder.Length("length", mm, 2, false);
        Wheel Wheel(double y) => new("rear/axle", Point(new(0, y, 0)), Length(640), Length(640));
    }
}
