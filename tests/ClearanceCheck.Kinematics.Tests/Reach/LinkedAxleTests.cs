using ClearanceCheck.Kinematics.Reach;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Tests.Reach;

/// <summary>The search on an axle that hangs on links.</summary>
public sealed class LinkedAxleTests
{
    [Fact]
    public void The_hubs_of_a_linked_axle_lie_on_the_line_through_the_stops_to_the_second_order_of_the_tilt()
    {
        ExtremePose pose = ExtremePoses.Find(Module(), "articulated-left-up").ShouldNotBeNull();

        // The pads lie on the line through the hubs, so their heights are exactly in proportion, whatever the links do:
        // left pad 400 mm out of 795: 80 = l (795 + 400) / 1590 + r (795 - 400) / 1590.
        ((pose.Pose[0] * 1195 / 1590) + (pose.Pose[1] * 395 / 1590)).ShouldBe(80, 1e-6);
        // The right shock's lower end, 450 mm out, hangs 606 mm below its seat, less what the links carry it aside.
        double height = (pose.Pose[0] * 345 / 1590) + (pose.Pose[1] * 1245 / 1590);
        height.ShouldBe(-106, 3);
        pose.Holds.Select(h => h.Name).ShouldBe(["right-shock at full length", "left-pad crushed"], ignoreOrder: true);
        pose.Holds.ShouldAllBe(h => Math.Abs(h.ReserveMm) < 1e-6);
    }

    [Fact]
    public void Where_one_stop_alone_holds_both_wheels_no_neighbour_that_meets_it_goes_further()
    {
        AxleModule module = Module(onlyStrap: true);
        ExtremePose pose = ExtremePoses.Find(module, "full-droop").ShouldNotBeNull();

        double found = -pose.Pose[0] - pose.Pose[1];
        for (double along = -60; along <= 60; along += 1)
        {
            // Along the stop: the right wheel is brought back onto it by bisection.
            double left = pose.Pose[0] + along, low = -120, high = 0;
            for (int k = 0; k < 60; k++)
            {
                double middle = (low + high) / 2;
                SolvedPose at = module.Motion.At([left, middle]);
                if (module.Motion.Stops.All(s => s.Reserve(at.Relative(s.FirstBody, s.SecondBody)) >= 0)) high = middle;
                else low = middle;
            }

            (-left - high).ShouldBeLessThan(found + 1e-6);
        }
    }

    [Fact]
    public void Every_name_is_found_alone_as_it_is_among_all()
    {
        AxleModule module = Module();

        ExtremePoses.Of(module).Select(p => p.Name).ShouldBe(ExtremePoses.NamesOf(module));
        foreach (ExtremePose pose in ExtremePoses.Of(module)) ExtremePoses.Find(module, pose.Name)!.Pose.ShouldBe(pose.Pose);
        ExtremePoses.Find(module, "full-dorop").ShouldBeNull();
    }

    [Fact]
    public void The_end_of_the_travel_has_one_name_everywhere()
    {
        AxleModule module = Module(onlyStrap: true);

        ExtremePoses.Find(module, "left-bump")!.Holds.Single().Name.ShouldBe(module.EndOfTravel(0, high: true));
    }

    private static AxleModule Module(bool onlyStrap = false)
    {
        var vehicle = new ThreeLinkVehicle { Limit = 260 };
        if (onlyStrap) Shock("middle", 20);
        else
        {
            foreach ((string side, int sign) in new[] { ("left", 1), ("right", -1) })
            {
                Shock(side + "-shock", 450 * sign);
                vehicle.Parts.Add(Part(side + "-pad", "bump-stop", new PartForm.BumpStop(
                    vehicle.On(Vehicle.Chassis, new(0, 400 * sign, 500)), vehicle.On("rear/axle", new(0, 400 * sign, 0)), vehicle.Length(460), vehicle.Length(40))));
            }
        }

        Vehicle built = vehicle.Build("three-link");
        return VehicleMotion.Build(built, built.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull().Modules.Single();

        void Shock(string id, double y) => vehicle.Parts.Add(Part(id, "shock", new PartForm.Shock(
            vehicle.On(Vehicle.Chassis, new(0, y, 500)), vehicle.On("rear/axle", new(0, y, 0)), vehicle.Length(200), vehicle.Length(600), null)));
    }

    private static Part Part(string id, string kind, PartForm form) =>
        new() { Id = id, Name = id, Kind = PartKinds.Find(kind)!, Body = Vehicle.Chassis, Form = form, Touches = [] };
}
