using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Tests.Layouts;

/// <summary>What is read of steering, figures, wind-up, soft joints and stops, and what is listed where nobody typed it.</summary>
public sealed class AxleReadingTests
{
    private const double Degree = Math.PI / 180;

    [Fact]
    public void A_lock_may_be_the_same_both_ways_or_differ()
    {
        LayoutExample.Of("three-link").Axle.Steering.ShouldBe(new Steering("cross-over", 36 * Degree, 36 * Degree, 44 * Degree));
        LayoutExample.Of("four-link").Axle.Steering.ShouldBe(new Steering("parallel", 30 * Degree, 31 * Degree, 45 * Degree));
        LayoutExample.Of("double-wishbones").Axle.Steering.ShouldBe(new Steering("rack", 60, 60, null));
        LayoutExample.Of("double-wishbones-parallel").Axle.Steering.ShouldBe(new Steering("parallel", 20 * Degree, 20 * Degree, 40 * Degree));
        LayoutExample.Of("free-three-link").Axle.Steering.ShouldBe(new Steering("free", 30 * Degree, 30 * Degree, null) { Joint = "sector-shaft" });
        LayoutExample.Of("free-wishbones").Axle.Steering.ShouldBe(new Steering("free", 60, 60, null) { Joint = "rack" });
        LayoutExample.Of("double-wishbones-toe-links").Axle.Steering.ShouldBeNull();
    }

    [Fact]
    public void Straight_ahead_in_the_measured_state_is_listed()
    {
        Assumed("three-link", "axles/front/steering").ShouldBe(["The wheels are taken as straight ahead in the state ride, in which the axle was measured."]);
        Assumed("leaf-springs", "axles/rear/steering").ShouldBe(["The wheels are taken as straight ahead in the state hanging, in which the axle was measured."]);
        Assumed("free-wishbones", "axles/front/steering/turns").ShouldBe(["What is called left of the steering is front/rack moving towards the point `axis` of rack."]);
        Assumed("free-beams", "axles/front/steering").ShouldBeEmpty();
    }

    [Fact]
    public void A_steered_wheel_rides_on_its_knuckle_and_travels_with_its_axle()
    {
        foreach (string name in (string[])["three-link", "free-three-link", "split-beams", "double-wishbones"])
            (LayoutExample.Of(name).Axle.Left.Body, LayoutExample.Of(name).Axle.Right.Body).ShouldBe(("front/knuckle-left", "front/knuckle-right"), name);
        LayoutExample.Of("free-four-links").Axle.Left.Body.ShouldBe("front/axle");
        LayoutExample.Of("free-three-link").Axle.FreeTravelBodies.ShouldBe(["front/axle", "front/axle"]);
        LayoutExample.Of("free-beams").Axle.FreeTravelBodies.ShouldBeEmpty();
    }

    [Fact]
    public void Two_hubs_of_one_axle_give_the_wheels_axes_also_when_knuckles_carry_them()
    {
        LayoutExample solid = LayoutExample.Of("three-link"), apart = LayoutExample.Of("double-wishbones");

        Seat(solid, "front-left-tire").OtherHub.ShouldBe(solid.Axle.Right.Hub);
        Seat(solid, "front-right-tire").OtherHub.ShouldBe(solid.Axle.Left.Hub);
        Seat(apart, "front-left-tire").OtherHub.ShouldBeNull();
        Assumed("three-link", "axles/front/wheel/axis").Single().ShouldStartWith("Each wheel's axis is taken to go through both hubs with the wheels straight ahead");
        Assumed("double-wishbones", "axles/front/wheel/axis").Single().ShouldStartWith("Each wheel's axis is taken as square");
    }

    [Fact]
    public void Rods_of_the_steering_and_links_that_give_are_bodies_of_their_own_between_their_ends()
    {
        LayoutExample steered = LayoutExample.Of("three-link"), soft = LayoutExample.Of("free-four-links");
        SolvedPose left = steered.Solve(20, -30, 0.4), bump = soft.Solve(60, -40);

        steered.Motion.CarriersOf(steered.Vehicle.Parts.Single(p => p.Id == "drag-link")).ShouldBe(["drag-link/first"]);
        Near(steered.At(left, "drag-link/first", new Vector3d(165, 392, 118)), steered.At(left, "pitman-arm", new Vector3d(165, 392, 118)));
        Near(steered.At(left, "drag-link/first", new Vector3d(150, -640, 62)), steered.At(left, "knuckle-right", new Vector3d(150, -640, 62)));
        Near(soft.At(bump, "front-link-1/first", new Vector3d(930, 445, -35)), new Vector3d(930, 445, -35));
        (soft.At(bump, "front-link-1/first", new Vector3d(25, 520, -92)) - soft.At(bump, "axle", new Vector3d(25, 520, -92))).Length.ShouldBeInRange(1e-3, 5);
    }

    [Fact]
    public void Only_suspension_points_are_mirrored()
    {
        Axle axle = LayoutExample.Of("radius-arms").Axle;

        axle.Points.Where(p => p.Value.IsMirrored).Select(p => p.Key).ShouldBe(["bar-arm-right", "bar-link-right", "bar-pivot-right", "hub-right", "radius-arm-right-axle-front", "radius-arm-right-axle-rear", "radius-arm-right-frame"]);
        LayoutExample.Of("split-beams").Axle.Points["beam-pivot-of-right"].At(LayoutExample.Of("split-beams").Vehicle.Parameters.Nominal).ShouldBe(new Vector3d(25, 215, -85));
    }

    [Fact]
    public void A_figure_is_read_with_its_half_width_or_taken_as_usual_and_listed()
    {
        Vehicle typed = LayoutExample.Of("leaf-springs").Vehicle;
        Vehicle left = LayoutExample.Read("leaf-springs", ("    clamp-length: 110 mm\n", ""), ("within: 3 mm\n", "")).Vehicle.ShouldNotBeNull();
        Vehicle bare = LayoutExample.Read("leaf-springs", ("within: 3 mm\n", "")).Vehicle.ShouldNotBeNull();

        Of(typed, "axles/rear/clamp-length").ShouldBe(new Parameter("axles/rear/clamp-length", 110, 3, false));
        Of(bare, "axles/rear/clamp-length").ShouldBe(new Parameter("axles/rear/clamp-length", 110, Defaults.FigureMm, true));
        Of(left, "axles/rear/clamp-length").ShouldBe(new Parameter("axles/rear/clamp-length", 120, Defaults.AssumedFigureMm, true));
        left.Assumptions.Single(a => a.Path == "axles/rear/clamp-length").Text.ShouldBe(
            "Not typed: how long the leaf is held flat between the U-bolts, outside to outside; taken as 120 mm, 25 mm each way (common practice, no source).");
    }

    [Fact]
    public void Axle_wrap_is_read_taken_as_usual_or_switched_off()
    {
        const string Typed = "    axle-wrap: [-2 deg, 4 deg]\n";
        Vehicle usual = LayoutExample.Read("leaf-springs", (Typed, "")).Vehicle.ShouldNotBeNull();
        Vehicle off = LayoutExample.Read("leaf-springs", (Typed, "    axle-wrap: none\n")).Vehicle.ShouldNotBeNull();

        LayoutExample.Of("leaf-springs").Axle.Wrap.ShouldBe(new WrapRange(-2 * Degree, 4 * Degree));
        usual.Axles[0].Wrap.ShouldBe(new WrapRange(-3 * Degree, 5 * Degree));
        usual.Assumptions.Single(a => a.Path == "axles/rear/axle-wrap").Text.ShouldBe(
            "Axle wrap not typed: taken as 3 degrees nose up under drive and 5 degrees nose down under braking (common practice, no source).");
        off.Axles[0].Wrap.ShouldBeNull();
        off.Assumptions.Single(a => a.Path == "axles/rear/axle-wrap").Text.ShouldBe("The file says `axle-wrap: none`: the axle is not wound up here under drive or braking.");
        LayoutExample.Of("three-link").Axle.Wrap.ShouldBeNull();
    }

    [Fact]
    public void Soft_joints_have_their_stiffness_in_newtons_and_millimetres()
    {
        FreeJoint bushing = LayoutExample.Of("free-rigid-arms").Axle.FreeJoints.Single(j => j.Name == "arm-left");
        FreeJoint inDegrees = LayoutExample.Read("free-rigid-arms", ("[4600 Nm/rad, 2300 Nm/rad, 4600 Nm/rad]", "[80 Nm/deg, 40 Nm/deg, 80 Nm/deg]")).Vehicle.ShouldNotBeNull().Axles[0].FreeJoints.Single(j => j.Name == "arm-left");

        bushing.Stiffness.ShouldBe(new Vector3d(7000, 1500, 7000));
        bushing.TurningStiffness.ShouldBe(new Vector3d(4.6e6, 2.3e6, 4.6e6));
        bushing.RidesOnHousing.ShouldBeFalse();
        inDegrees.TurningStiffness.Y.ShouldBe(40_000 * 180 / Math.PI, 1e-6);
        LayoutExample.Of("free-four-links").Axle.FreeJoints.Single(j => j.Name == "link-1").Stiffness.X.ShouldBe(9000);
    }

    [Fact]
    public void What_a_bushing_leaves_out_is_listed()
    {
        Vehicle vehicle = LayoutExample.Read("free-arms", (", stiffness-axes: vehicle", "")).Vehicle.ShouldNotBeNull();

        vehicle.Axles[0].FreeJoints.Where(j => j.Kind == FreeJointKind.Bushing).ShouldAllBe(j => j.RidesOnHousing);
        vehicle.Assumptions.Count(a => a.Path.EndsWith("/stiffness-axes", StringComparison.Ordinal)).ShouldBe(6);
        vehicle.Assumptions.Where(a => a.Path.EndsWith("/turning-stiffness", StringComparison.Ordinal)).Select(a => a.Path).ShouldBe(
        [
            "axles/front/joints/left-axle-front/turning-stiffness", "axles/front/joints/left-axle-rear/turning-stiffness",
            "axles/front/joints/right-axle-front/turning-stiffness", "axles/front/joints/right-axle-rear/turning-stiffness",
        ]);
    }

    [Fact]
    public void Every_stop_of_a_steered_axle_is_named_and_as_far_off_as_measured()
    {
        LayoutExample example = LayoutExample.Of("three-link");
        SolvedPose ride = example.Solve(0, 0, 0);

        example.Module.Motion.Stops.Select(s => s.Name).ShouldBe(
        [
            "coil-left solid", "coil-right solid", "limit-strap-left taut", "limit-strap-right taut", "steering-stop-left touching", "bump-pad-left crushed", "bump-pad-right crushed",
            "end of the front steering box",
        ]);
        Reserve(example, ride, "coil-left solid").ShouldBe(Math.Sqrt(25 + 100 + (300 * 300)) - 125, 1e-9);
        Reserve(example, ride, "limit-strap-left taut").ShouldBe((420 * 1.05) - Math.Sqrt((80 * 80) + (20 * 20) + (310 * 310)), 1e-9);
        Reserve(example, ride, "steering-stop-left touching").ShouldBe(Math.Sqrt((48 * 48) + (30 * 30) + 4) + 1, 1e-9);
        Reserve(example, ride, "bump-pad-left crushed").ShouldBe(190 - 60, 1e-9);
    }

    [Fact]
    public void A_steering_stop_closes_when_its_bolt_swings_towards_the_pad_and_opens_the_other_way()
    {
        LayoutExample example = LayoutExample.Of("three-link");
        double[] turns = [.. new[] { -0.3, 0, 0.3, 0.62 }.Select(turn => Reserve(example, example.Solve(0, 0, turn), "steering-stop-left touching"))];

        // The bolt is behind the kingpin, the pad inboard of it: it comes there when the wheel turns to the left, and is there before full lock.
        turns[0].ShouldBeGreaterThan(turns[1]);
        turns[2].ShouldBeLessThan(turns[1]);
        turns[2].ShouldBeGreaterThan(0);
        turns[3].ShouldBeLessThan(0);
    }

    [Fact]
    public void Sizes_of_straps_and_springs_have_half_widths_of_their_own_and_what_is_taken_for_granted_is_listed()
    {
        Vehicle vehicle = LayoutExample.Of("three-link").Vehicle;

        Of(vehicle, "parts/limit-strap-left/length").HalfWidthMm.ShouldBe(Defaults.StrapLengthMm);
        Of(vehicle, "parts/limit-strap-left/stretch").ShouldBe(new Parameter("parts/limit-strap-left/stretch", 21, 10.5, true));
        Of(vehicle, "parts/coil-left/solid-height").ShouldBe(new Parameter("parts/coil-left/solid-height", 125, Defaults.StopLengthMm, true));
        Assumed("three-link", "parts/limit-strap-left/stretch").ShouldBe(["It is taken to stretch by 5 % of its length when taut, 21 mm, 10.5 mm each way (common practice, no source)."]);
        Assumed("three-link", "parts/steering-stop-left").ShouldBe(["It acts along the line between bolt and pad and ends the steering 1 mm beyond contact (common practice, no source)."]);
        Assumed("three-link", "parts/coil-left/free-length").ShouldContain("Whether it stays on its seats is told by its free length less the straight line between their middles: what it bows or tilts is left out.");
        Of(vehicle, "parts/bump-pad-left/crush").ValueMm.ShouldBe(0);
    }

    [Theory]
    [MemberData(nameof(LayoutExampleTests.Examples), MemberType = typeof(LayoutExampleTests))]
    public void Every_number_of_the_model_was_typed_or_is_listed(string name)
    {
        Vehicle vehicle = LayoutExample.Of(name).Vehicle;
        HashSet<int> typed = [.. vehicle.Readings.SelectMany(r => r.IsPoint ? new[] { r.Parameter, r.Parameter + 1, r.Parameter + 2 } : [r.Parameter])];
        HashSet<string> listed = [.. vehicle.Assumptions.Select(a => a.Path)];

        foreach ((Parameter parameter, int index) in vehicle.Parameters.Parameters.Select((p, i) => (p, i)))
            if (!typed.Contains(index)) listed.Any(path => parameter.Path == path || IsImage(parameter.Path, path)).ShouldBeTrue(parameter.Path);
    }

    // A mirror image is listed once, for the whole part or axle.
    private static bool IsImage(string parameter, string path) =>
        path.EndsWith("/mirror", StringComparison.Ordinal) ? parameter.StartsWith(path[..^"mirror".Length], StringComparison.Ordinal) : parameter.StartsWith(path + "/", StringComparison.Ordinal);

    private static void Near(Vector3d actual, Vector3d expected) => (actual - expected).Length.ShouldBeLessThan(1e-7);

    private static double Reserve(LayoutExample example, SolvedPose pose, string name)
    {
        Stop stop = example.Module.Motion.Stops.Single(s => s.Name == name);
        return stop.Reserve(pose.Relative(stop.FirstBody, stop.SecondBody));
    }

    private static WheelSeat Seat(LayoutExample example, string part) => ((PartForm.Tire)example.Vehicle.Parts.Single(p => p.Id == part).Form).Seat;

    private static Parameter Of(Vehicle vehicle, string path) => vehicle.Parameters.Parameters.Single(p => p.Path == path);

    private static string[] Assumed(string name, string path) => [.. LayoutExample.Of(name).Vehicle.Assumptions.Where(a => a.Path == path).Select(a => a.Text)];
}
