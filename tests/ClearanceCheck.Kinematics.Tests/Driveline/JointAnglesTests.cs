using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Driveline;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Tests.Driveline;

/// <summary>Shafts to an axle that is moved by its links.</summary>
public sealed class JointAnglesTests
{
    private const double Ride = 640;
    private static readonly Vector3d Gearbox = new(-820, 25, 90), Bearing = new(-450, 15, 70), Joint = new(-430, 14, 68), Pinion = new(-160, 5, 20);
    private static readonly Vector3d OutputAxis = new(100, 0, -2), PinionAxis = new(90, 1, -9);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(-95, -95)]
    [InlineData(70, -60)]
    public void Both_joints_stand_at_the_angles_between_what_each_body_carries_and_the_line_between_them(double left, double right)
    {
        (AxleModule module, Vehicle vehicle) = OnePiece();
        SolvedPose pose = module.Motion.At([left, right]);

        ShaftPose at = JointAngles.Of(module, vehicle, vehicle.Parts[0], pose, vehicle.Parameters.Nominal);

        Vector3d line = pose[1].Apply(Pinion) - Gearbox;
        at.LengthMm.ShouldBe(line.Length, 1e-9);
        at.SlipMm.ShouldNotBeNull().ShouldBe(line.Length - (Pinion - Gearbox).Length, 1e-9);
        at.First.AngleRad.ShouldNotBeNull().ShouldBe(ByCosine(OutputAxis, line), 1e-7);
        at.Second!.Value.AngleRad.ShouldNotBeNull().ShouldBe(ByCosine(pose[1].ApplyToDirection(PinionAxis), line), 1e-7);
        Vector3d[] axes = [Unit(OutputAxis), Unit(line), Unit(pose[1].ApplyToDirection(PinionAxis))];
        double swing = CrossesByVectors.Swing(axes, [0.2]), equivalent = at.EquivalentRad.ShouldNotBeNull();
        (equivalent * equivalent / 2).ShouldBe(swing, 0.02 * swing);
    }

    [Fact]
    public void A_joint_whose_flange_nobody_measured_has_no_angle_and_the_other_keeps_its_own()
    {
        (AxleModule module, Vehicle vehicle) = OnePiece(measureOutput: false);

        ShaftPose at = JointAngles.Of(module, vehicle, vehicle.Parts[0], module.Motion.At([30, -10]), vehicle.Parameters.Nominal);

        at.First.AngleRad.ShouldBeNull();
        at.Second!.Value.AngleRad.ShouldNotBeNull();
        at.EquivalentRad.ShouldBeNull();
    }

    [Fact]
    public void What_is_engaged_in_the_state_of_the_shafts_points_is_what_was_measured_there()
    {
        // The axle's end was seen hanging, where it lay elsewhere than in the state of the layout.
        SolvedPose hanging = Module(new ThreeLinkVehicle().Build("three-link")).Motion.At([-95, -90]);
        Vector3d seen = hanging[1].Apply(Pinion);
        (AxleModule module, Vehicle vehicle) = OnePiece(seen, (-95, -90));
        ReadOnlyMemory<double> placed = VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull().Parameters;

        ShaftPose there = JointAngles.Of(module, vehicle, vehicle.Parts[0], module.Motion.At([-95, -90]), placed.Span);
        ShaftPose ride = JointAngles.Of(module, vehicle, vehicle.Parts[0], module.Motion.At([0, 0]), placed.Span);

        there.LengthMm.ShouldBe((seen - Gearbox).Length, 1e-8);
        there.SlipMm.ShouldNotBeNull().ShouldBe(0, 1e-8);
        there.Splines!.Value.EngagedMm.ShouldBe(62, 1e-8);
        ride.SlipMm.ShouldNotBeNull().ShouldBe((Pinion - Gearbox).Length - (seen - Gearbox).Length, 1e-8);
        Math.Abs(ride.SlipMm!.Value).ShouldBeGreaterThan(1);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(80, 75)]
    public void Behind_a_centre_bearing_the_first_joint_is_bolted_to_the_line_of_the_piece_before(double left, double right)
    {
        (AxleModule module, Vehicle vehicle) = TwoPieces();
        SolvedPose pose = module.Motion.At([left, right]);
        Part front = vehicle.Parts[0], rear = vehicle.Parts[1];

        ShaftPose first = JointAngles.Of(module, vehicle, front, pose, vehicle.Parameters.Nominal), second = JointAngles.Of(module, vehicle, rear, pose, vehicle.Parameters.Nominal);

        Vector3d line = pose[1].Apply(Pinion) - Joint;
        first.First.AngleRad.ShouldNotBeNull().ShouldBe(ByCosine(OutputAxis, Bearing - Gearbox), 1e-7);
        first.Second.ShouldBeNull();
        first.SlipMm.ShouldBe(0);
        second.First.AngleRad.ShouldNotBeNull().ShouldBe(ByCosine(Bearing - Gearbox, line), 1e-7);
        Vector3d[] axes = [Unit(OutputAxis), Unit(Bearing - Gearbox), Unit(line), Unit(pose[1].ApplyToDirection(PinionAxis))];
        double swing = CrossesByVectors.Swing(axes, [0.1, 0.2]), equivalent = second.EquivalentRad.ShouldNotBeNull();
        (equivalent * equivalent / 2).ShouldBe(swing, 0.02 * swing);
        ShaftLine.PartsTo(vehicle, rear).Select(p => p.Id).ShouldBe(["front-piece", "shaft"]);
    }

    [Fact]
    public void Pieces_that_name_each_other_in_a_circle_come_to_an_end()
    {
        (_, Vehicle vehicle) = TwoPieces();
        vehicle = vehicle with { Parts = [vehicle.Parts[0] with { Form = (PartForm.Shaft)vehicle.Parts[0].Form with { After = "shaft" } }, vehicle.Parts[1]] };

        ShaftLine.PartsTo(vehicle, vehicle.Parts[1]).Length.ShouldBe(2);
    }

    private static (AxleModule Module, Vehicle Vehicle) OnePiece(Vector3d? seen = null, (double Left, double Right) state = default, bool measureOutput = true)
    {
        var source = new ThreeLinkVehicle { HubToFenderRide = Ride };
        PartForm.Shaft shaft = Shaft(source, Gearbox, "rear/axle", seen ?? Pinion, 0.2) with
        {
            FirstEnd = new ShaftEnd(ShaftJointKind.Single, measureOutput ? source.On("chassis", Gearbox + OutputAxis).At : null),
            SecondEnd = new ShaftEnd(ShaftJointKind.Single, source.On("rear/axle", Pinion + PinionAxis).At),
            Splines = new Splines(source.Length(90), source.Length(62)),
        };
        source.Parts.Add(Part("shaft", shaft));
        var at = new AxleState("seen", source.Length(Ride - state.Left), source.Length(Ride - state.Right));
        Vehicle vehicle = source.Build("three-link");
        if (seen is not null)
        {
            vehicle = vehicle with
            {
                Axles = [vehicle.Axles[0] with { MeasuredIn = "ride", OtherStates = ImmutableSortedDictionary<string, AxleState>.Empty.Add("seen", at) }],
                StatedPoints = [new StatedPoint(shaft.Second.At, "rear/axle", "seen")],
            };
        }

        return (Module(vehicle), vehicle);
    }

    private static (AxleModule Module, Vehicle Vehicle) TwoPieces()
    {
        var source = new ThreeLinkVehicle();
        PartForm.Shaft front = Shaft(source, Gearbox, "exhaust", Bearing, 0.1) with { FirstEnd = new ShaftEnd(ShaftJointKind.Single, source.On("chassis", Gearbox + OutputAxis).At) };
        PartForm.Shaft rear = Shaft(source, Joint, "rear/axle", Pinion, 0.2) with
        {
            After = "front-piece",
            SecondEnd = new ShaftEnd(ShaftJointKind.Single, source.On("rear/axle", Pinion + PinionAxis).At),
        };
        source.Parts.AddRange([Part("front-piece", front), Part("shaft", rear)]);
        Vehicle vehicle = source.Build("three-link");
        return (Module(vehicle), vehicle);
    }

    private static PartForm.Shaft Shaft(ThreeLinkVehicle source, Vector3d from, string body, Vector3d to, double phaseRad) => new(
        source.On(Vehicle.Chassis, from),
        source.On(body, to),
        new Sleeves(true, source.Length(70), source.Length(200), source.Length(50), source.Length(200)))
    {
        PhaseRad = phaseRad,
    };

    private static Part Part(string id, PartForm form) => new() { Id = id, Name = id, Kind = PartKinds.Find("driveshaft")!, Body = Vehicle.Chassis, Form = form, Touches = [] };

    private static AxleModule Module(Vehicle vehicle) => VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull().Modules.Single();

    private static Vector3d Unit(Vector3d v) => v / v.Length;

    private static double ByCosine(Vector3d a, Vector3d b) => Math.Acos(Vector3d.Dot(a, b) / (a.Length * b.Length));
}
