using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Kinematics.Placing;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Mechanics.Tests.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Tests;

public sealed class AxleModuleTests
{
    [Theory]
    [InlineData("three-link")]
    [InlineData("free")]
    public void The_reference_table_is_met_by_the_layout_and_by_the_same_joints_spelled_out(string layout)
    {
        AxleModule module = Module(new ThreeLinkVehicle().Build(layout));

        foreach (double[] row in ThreeLinkAxleTable.Rows)
        {
            SolvedPose pose = module.Motion.At(row.AsSpan(0, 2));

            Near(pose[1].Apply(ThreeLinkVehicle.HubLeft), new(row[2], row[3], row[4]), 1e-6);
            Near(pose[1].Apply(ThreeLinkVehicle.HubRight), new(row[5], row[6], row[7]), 1e-6);
        }
    }

    [Fact]
    public void The_pose_of_the_measured_state_leaves_every_point_where_it_was_measured()
    {
        AxleModule module = Module(new ThreeLinkVehicle { HubToFenderMeasured = 705, HubToFenderRide = 640 }.Build("three-link"));

        SolvedPose pose = module.Motion.At([-65, -65]);

        foreach (Vector3d point in new[] { ThreeLinkVehicle.HubLeft, ThreeLinkVehicle.HubRight, new Vector3d(-20, 505, -88), new Vector3d(55, -445, 83) })
            Near(pose[1].Apply(point), point, 1e-9);
    }

    [Fact]
    public void A_mirrored_axle_moves_as_the_mirror_image()
    {
        AxleModule module = Module(new ThreeLinkVehicle().Build("three-link"));
        AxleModule mirrored = Module(new ThreeLinkVehicle { MirrorSign = -1 }.Build("three-link"));

        // The left wheel of the mirrored axle has its hub on the right.
        SolvedPose pose = module.Motion.At([80, -60]), image = mirrored.Motion.At([80, -60]);

        Vector3d hub = pose[1].Apply(ThreeLinkVehicle.HubLeft);
        Near(image[1].Apply(ThreeLinkVehicle.HubRight), new(hub.X, -hub.Y, hub.Z), 1e-9);
    }

    [Fact]
    public void A_missing_rod_is_named_by_the_body_it_leaves_loose()
    {
        (_, string? axle, MotionFault? fault) = VehicleMotion.Build(new ThreeLinkVehicle().Build("free", rods: 3), Nominal(3));

        axle.ShouldBe("rear");
        LinkageFault links = fault.ShouldBeOfType<MotionFault.Links>().Fault;
        links.Kind.ShouldBe(LinkageFaultKind.Loose);
        links.Names.ShouldBe(["rear/axle"]);
    }

    [Fact]
    public void A_shock_ends_the_travel_at_both_its_lengths_with_what_its_bushings_give()
    {
        var vehicle = new ThreeLinkVehicle();
        vehicle.Parts.Add(Part("shock", "shock", new PartForm.Shock(
            vehicle.On(Vehicle.Chassis, new(0, 400, 450)), vehicle.On("rear/axle", new(0, 400, -50)), vehicle.Length(420), vehicle.Length(560), null)));

        AxleModule module = Module(vehicle.Build("three-link"));

        // 500 mm long at ride height, 3 mm of bushing at each end: 566 - 500 = 66 mm to droop, 500 - 414 = 86 mm to bump.
        SolvedPose ride = module.Motion.At([0, 0]);
        module.Motion.Stops.Select(s => (s.Name, s.Reserve(ride.Relative(s.FirstBody, s.SecondBody)))).ShouldBe([("shock at full length", 66.0), ("shock bottomed", 86.0)]);
    }

    [Fact]
    public void A_bump_stop_ends_the_travel_at_its_crushed_height_straight_below_its_seat()
    {
        var vehicle = new ThreeLinkVehicle();
        vehicle.Parts.Add(Part("stop", "bump-stop", new PartForm.BumpStop(
            vehicle.On(Vehicle.Chassis, new(0, 400, 150)), vehicle.On("rear/axle", new(5, 410, 40)), vehicle.Length(75), vehicle.Length(30))));

        AxleModule module = Module(vehicle.Build("three-link"));

        // 110 mm from seat to pad at ride height, 45 mm crushed: 65 mm of travel at the stop.
        SolvedPose ride = module.Motion.At([0, 0]);
        Stop stop = module.Motion.Stops.Single();
        stop.Reserve(ride.Relative(stop.FirstBody, stop.SecondBody)).ShouldBe(65, 1e-9);
        SolvedPose bump = module.Motion.At([50, 50]);
        stop.Reserve(bump.Relative(stop.FirstBody, stop.SecondBody)).ShouldBe(15, 0.2);
    }

    [Fact]
    public void Stops_between_bodies_that_do_not_move_against_each_other_are_no_stops()
    {
        var vehicle = new ThreeLinkVehicle();
        vehicle.Parts.Add(Part("shock", "shock", new PartForm.Shock(
            vehicle.On(Vehicle.Chassis, Vector3d.Zero), vehicle.On("exhaust", new(0, 0, 500)), vehicle.Length(400), vehicle.Length(600), null)));

        Module(vehicle.Build("three-link")).Motion.Stops.ShouldBeEmpty();
    }

    [Fact]
    public void Bodies_are_found_by_name()
    {
        Vehicle vehicle = new ThreeLinkVehicle().Build("three-link");
        VehicleMotion motion = VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion!;

        motion.Find("chassis").ShouldBe((null, 0));
        motion.Find("exhaust").ShouldBe((null, 0));
        motion.Find("rear/axle").ShouldBe((motion.Modules[0], 1));
        Should.Throw<ArgumentException>(() => motion.Find("rear/alxe"));
    }

    [Fact]
    public void Every_layout_says_where_its_points_are()
    {
        LayoutCatalogue.All.Select(l => l.Id).ShouldBeUnique();
        LayoutCatalogue.All.SelectMany(l => l.Points).ShouldAllBe(p => p.Where.StartsWith("the ", StringComparison.Ordinal));
    }

    private static ReadOnlyMemory<double> Nominal(int rods) => new ThreeLinkVehicle().Build("free", rods).Parameters.Nominal.ToArray();

    private static AxleModule Module(Vehicle vehicle) =>
        VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull().Modules.Single();

    private static Part Part(string id, string kind, PartForm form) =>
        new() { Id = id, Name = id, Kind = PartKinds.Find(kind)!, Body = Vehicle.Chassis, Form = form, Touches = [] };

    private static void Near(Vector3d actual, Vector3d expected, double tolerance) => (actual - expected).Length.ShouldBeLessThan(tolerance);
}
