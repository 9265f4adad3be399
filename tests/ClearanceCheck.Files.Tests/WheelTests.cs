using ClearanceCheck.Geometry;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Tests;

/// <summary>The tires and wheels that an axle makes: their figures, each term of them listed, their seats.</summary>
public sealed class WheelTests
{
    private const string Circumference = "      tire-circumference: 2622 mm\n";
    private static readonly Vehicle Vehicle = EveryForm.Read().Vehicle.ShouldNotBeNull();

    [Fact]
    public void An_axle_with_a_wheel_makes_two_tires_and_two_wheels_that_touch_each_other()
    {
        Part tire = Part(Vehicle, "rear-left-tire"), wheel = Part(Vehicle, "rear-right-wheel");

        (tire.Name, tire.Kind.Id, tire.Body).ShouldBe(("Rear left tire", "tire", "rear/axle"));
        (wheel.Name, wheel.Kind.Id, wheel.Body).ShouldBe(("Rear right wheel", "wheel", "rear/axle"));
        tire.Touches.ShouldBe(["rear-left-wheel"]);
        wheel.Touches.ShouldBe(["rear-right-tire"]);
        Vehicle.Parts.Count(p => p.Kind.IsIn("wheel")).ShouldBe(4);
    }

    [Fact]
    public void A_measured_circumference_gives_the_radius_and_growth_runout_and_chains_are_added_to_it()
    {
        var tire = (PartForm.Tire)Part(Vehicle, "rear-left-tire").Form;

        // 2622 / (2 pi) = 417.30; 1 % of it, 1.6 mm of runout and 12 mm of chains more.
        double measured = 2622 / (2 * Math.PI);
        Value(tire.RadiusMm).ShouldBe((1.01 * measured) + (1.6) + 12, 1e-9);
        Of("axles/rear/wheel/tire-radius").HalfWidthMm.ShouldBe(1.01 * Defaults.TapeMm / (2 * Math.PI), 1e-9);
        tire.RimRadiusMm.ShouldBe(203.2);
        Value(tire.Offset).ShouldBe(-10);
        AllAssumed("axles/rear/wheel/tire-radius").ShouldBe(
        [
            "Swept radius 435.1 mm: 417.3 mm as new, and what is listed with it.",
            "Give or take not typed: 0.48 mm each way (a tape reading around the tire; common practice, no source).",
        ]);
        Assumed("axles/rear/wheel/tire-radius/growth").ShouldBe("4.2 mm for growth in use: 1 % of the radius (common practice, no source).");
        Assumed("axles/rear/wheel/tire-radius/runout").ShouldBe("1.6 mm for runout of tire and rim: half of 1/8 in (49 CFR 570.10(b)).");
        Assumed("axles/rear/wheel/chains").ShouldStartWith("Chains add 12 mm all around, typed as 12 mm");
        Vehicle.Assumptions.ShouldNotContain(a => a.Path == "axles/rear/wheel/tire-radius/tolerance");
        Vehicle.Readings.Single(r => r.Path == "axles/rear/wheel/tire-radius").Typed.ShouldBe("2622 mm around");
    }

    [Fact]
    public void The_width_grows_with_the_rim_and_takes_what_a_new_tire_may_be_wider()
    {
        var tire = (PartForm.Tire)Part(Vehicle, "rear-left-tire").Form;

        // UN R30: 285 mm on its measuring rim of 0.7 x 285 = 199.5 mm, and 0.4 mm more for each mm of the rim of 203.2 mm.
        double design = 285 + (0.4 * (203.2 - 199.5));
        Value(tire.WidthMm).ShouldBe((1.04 * design) + (0.02 * design) + (2 * 1.6) + (2 * 12), 1e-9);
        Assumed("axles/rear/wheel/tire-width/tolerance").ShouldEndWith("mm for a new tire wider than its size by 4 % of its section width (UN R30, from memory).");
        Assumed("axles/rear/wheel/tire-width/growth").ShouldContain("2 % of the width");
        Assumed("axles/rear/wheel/tire-width/runout").ShouldStartWith("3.2 mm");
    }

    [Fact]
    public void Without_a_circumference_the_size_gives_the_radius_with_its_tolerance()
    {
        Vehicle vehicle = EveryForm.Read((Circumference, ""), ("      rim-width: 8 in\n", ""), ("      chains: 12 mm\n", "")).Vehicle.ShouldNotBeNull();
        var tire = (PartForm.Tire)Part(vehicle, "rear-right-tire").Form;

        // 285/75R16: half of 833.9 mm, 1.04 of the section height.
        tire.RadiusMm.At(vehicle.Parameters.Nominal).ShouldBe((203.2 + (1.04 * 213.75)) + (0.01 * 416.95) + (1.6), 1e-9);
        vehicle.Assumptions.Single(a => a.Path == "axles/rear/wheel/tire-radius/tolerance").Text.ShouldStartWith("8.6 mm");
        vehicle.Assumptions.ShouldContain(a => a.Path == "axles/rear/wheel/rim-width" && a.Text.Contains("285/75R16", StringComparison.Ordinal));
        vehicle.Assumptions.ShouldNotContain(a => a.Path == "axles/rear/wheel/chains");
    }

    [Fact]
    public void A_tire_without_a_readable_size_is_read_from_what_was_measured()
    {
        Vehicle vehicle = EveryForm.Read(("tire: 285/75R16", "tire-width: 290 mm\n      rim-diameter: 17 in"), ("      chains: 12 mm\n", "")).Vehicle.ShouldNotBeNull();
        var tire = (PartForm.Tire)Part(vehicle, "rear-left-tire").Form;

        tire.WidthMm.At(vehicle.Parameters.Nominal).ShouldBe((1.02 * 290) + (2 * 1.6), 1e-9);
        vehicle.Parameters.Parameters[tire.WidthMm.Index].HalfWidthMm.ShouldBe(1.02 * Defaults.TapeMm, 1e-9);
        tire.RimRadiusMm.ShouldBe(8.5 * 25.4, 1e-9);
    }

    [Fact]
    public void A_wheel_has_its_inner_faces_and_both_walls()
    {
        var wheel = (PartForm.Wheel)Part(Vehicle, "rear-left-wheel").Form;

        wheel.Barrel.Select(c => (Value(c.Radius), Value(c.Along))).ShouldBe([(192, -92), (192, 30), (180, 112)]);
        wheel.Disc.Select(c => (Value(c.Radius), Value(c.Along))).ShouldBe([(57, 0), (150, 38), (180, 60)]);
        (Value(wheel.BarrelWall), Value(wheel.DiscWall)).ShouldBe((7, 9));
        Of("axles/rear/wheel/barrel/3/along").HalfWidthMm.ShouldBe(Defaults.SurfaceMm);
        Assumed("axles/rear/wheel").ShouldStartWith("Tire and wheel are taken as alike on both sides");
    }

    [Fact]
    public void Walls_and_a_disc_that_nobody_measured_are_listed()
    {
        Vehicle vehicle = EveryForm.Read(
            ("      barrel-wall: 7 mm\n", ""), ("      disc: [[57, 0], [150, 38], [180, 60]]\n      disc-wall: 9 mm\n", "")).Vehicle.ShouldNotBeNull();
        var wheel = (PartForm.Wheel)Part(vehicle, "rear-left-wheel").Form;

        wheel.Disc.ShouldBeEmpty();
        wheel.BarrelWall.At(vehicle.Parameters.Nominal).ShouldBe(Defaults.BarrelWallMm);
        vehicle.Parameters.Parameters[wheel.BarrelWall.Index].HalfWidthMm.ShouldBe(Defaults.WallWithinMm);
        vehicle.Assumptions.ShouldContain(a => a.Path == "axles/rear/wheel/barrel-wall" && a.Text.StartsWith("Thickness not typed: taken as 6 mm", StringComparison.Ordinal));
        vehicle.Assumptions.ShouldContain(a => a.Path == "axles/rear/wheel/disc");
    }

    [Fact]
    public void Without_a_barrel_there_are_tires_and_no_wheels()
    {
        Vehicle vehicle = EveryForm.Read(
            ("      barrel: [[192, -92], [192, 30], [180, 112]]\n      barrel-wall: 7 mm\n      disc: [[57, 0], [150, 38], [180, 60]]\n      disc-wall: 9 mm\n", "")).Vehicle.ShouldNotBeNull();

        vehicle.Parts.Where(p => p.Kind.IsIn("wheel")).Select(p => p.Id).ShouldBe(["rear-left-tire", "rear-right-tire"]);
        Part(vehicle, "rear-left-tire").Touches.ShouldBeEmpty();
    }

    [Fact]
    public void Two_hubs_on_one_body_make_the_axis()
    {
        WheelSeat left = ((PartForm.Tire)Part(Vehicle, "rear-left-tire").Form).Seat, right = ((PartForm.Wheel)Part(Vehicle, "rear-right-wheel").Form).Seat;

        (left.IsLeft, right.IsLeft).ShouldBe((true, false));
        left.Hub.At(Vehicle.Parameters.Nominal).ShouldBe(new Vector3d(-612, 738, -402));
        left.OtherHub.ShouldBe(right.Hub);
        right.OtherHub.ShouldBe(left.Hub);
        Vehicle.Assumptions.ShouldNotContain(a => a.Path == "axles/rear/wheel/axis");
    }

    [Fact]
    public void Hubs_on_two_bodies_have_axes_square_to_the_centre_plane_and_that_is_listed()
    {
        Vehicle vehicle = FreeAxle.Read("wheel: { tire: 285/75R16, offset: 0 mm }", split: true).Vehicle.ShouldNotBeNull();
        Part tire = Part(vehicle, "rear-right-tire");

        tire.Body.ShouldBe("rear/right");
        ((PartForm.Tire)tire.Form).Seat.OtherHub.ShouldBeNull();
        vehicle.Assumptions.ShouldContain(a => a.Path == "axles/rear/wheel/axis" && a.Text.Contains("square to the vehicle's centre plane", StringComparison.Ordinal));
    }

    private static Part Part(Vehicle vehicle, string id) => vehicle.Parts.Single(p => p.Id == id);

    private static double Value(MeasuredLength length) => length.At(Vehicle.Parameters.Nominal);

    private static Parameter Of(string path) => Vehicle.Parameters.Parameters.Single(p => p.Path == path);

    private static IEnumerable<string> AllAssumed(string path) => Vehicle.Assumptions.Where(a => a.Path == path).Select(a => a.Text);

    private static string Assumed(string path) => Vehicle.Assumptions.Single(a => a.Path == path).Text;
}
