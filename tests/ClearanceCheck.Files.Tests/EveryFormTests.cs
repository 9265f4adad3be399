using System.Collections.Immutable;
using ClearanceCheck.Files.Tests.Layouts;
using ClearanceCheck.Geometry;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Tests;

/// <summary>Each form of a part, read whole: values, half-widths and what is listed as taken for granted.</summary>
public sealed class EveryFormTests
{
    private const string FrontPiece =
        """
          front-piece:
            kind: driveshaft
            first: { body: engine, at: [1000, 30, -90] }
            second: { body: chassis, at: [330, 30, -115] }
            tube: { diameter: 76 mm, length: 600 mm, at: first }
            slip: { diameter: 58 mm, length: 300 mm }

        """;

    private static readonly InspectionReading Reading = EveryForm.Read();
    private static readonly Vehicle Vehicle = Reading.Vehicle.ShouldNotBeNull(Reading.Messages());

    [Fact]
    public void The_file_with_every_form_is_read_without_a_word()
    {
        Reading.Messages().ShouldBe("");
        Reading.FilesBeside.ShouldBe(["scans/gearbox.stl"]);
    }

    [Fact]
    public void It_holds_every_form_that_a_part_of_a_file_can_have()
    {
        string[] forms = [.. typeof(PartForm).GetNestedTypes().Select(t => t.Name).Order(StringComparer.Ordinal)];

        // The stops that only a steered axle has, straps and leaf springs stand in examples of their own.
        string[] others = ["three-link", "leaf-spring-packs"];
        Vehicle.Parts.Concat(others.SelectMany(o => LayoutExample.Of(o).Vehicle.Parts)).Select(p => p.Form.GetType().Name).Distinct().Order(StringComparer.Ordinal).ShouldBe(forms);
    }

    [Fact]
    public void A_plate_has_its_outline_and_thickness()
    {
        var plate = Form<PartForm.Plate>("heat-shield");

        plate.Outline.Length.ShouldBe(4);
        At(plate.Outline[2]).ShouldBe(new Vector3d(-500, 420, -52));
        Of("parts/heat-shield/outline/3.z").HalfWidthMm.ShouldBe(Defaults.SurfaceMm);
        Value(plate.Thickness).ShouldBe(1.5);
        Half(plate.Thickness).ShouldBe(Defaults.SizeMm);
        Assumed("parts/heat-shield").ShouldBe(["The points of its outline are taken to lie in the middle of its thickness, and the plate is taken as flat between them."]);
        Assumed("parts/heat-shield/thickness").Single().ShouldStartWith("Give or take not typed: 0.25 mm");
    }

    [Fact]
    public void A_box_has_two_corners_and_the_half_width_typed_with_it()
    {
        var box = Form<PartForm.Box>("fuel-tank");

        (At(box.Corner), At(box.Opposite)).ShouldBe((new Vector3d(-1400, 300, -300), new Vector3d(-900, -300, -20)));
        Half(box.Corner.X).ShouldBe(8);
        Of("parts/fuel-tank/corners/2.y").WithinIsAssumed.ShouldBeFalse();
        Assumed("parts/fuel-tank").Single().ShouldStartWith("Taken as a full box");
    }

    [Fact]
    public void A_turned_part_has_its_axis_profile_and_wall()
    {
        var housing = Form<PartForm.Turned>("rear-housing");

        (At(housing.From), At(housing.To)).ShouldBe((new Vector3d(-612, 40, -402), new Vector3d(-612, 160, -402)));
        housing.Profile.Select(c => (Value(c.Radius), Value(c.Along))).ShouldBe([(60, -100), (140, -40), (150, 60), (60, 130)]);
        Half(housing.From.Y).ShouldBe(Defaults.JointCentreMm);
        Of("parts/rear-housing/profile/2/radius").HalfWidthMm.ShouldBe(Defaults.SurfaceMm);
        Value(housing.Wall.ShouldNotBeNull()).ShouldBe(9);
        Form<PartForm.Turned>("rear-rotor-left").Wall.ShouldBeNull();
        Assumed("parts/rear-housing").Single().ShouldStartWith("Taken as hollow");
        Assumed("parts/rear-rotor-left").Single().ShouldStartWith("Taken as full");
    }

    [Fact]
    public void A_scan_lies_where_its_axes_unit_and_place_say_and_may_be_off_by_its_half_width()
    {
        var scanned = Form<PartForm.Scanned>("gearbox");
        Vector3d[] anchors = [.. scanned.Scan.Solid.Anchors.ToArray()];

        // Forward is the file's -y, so its 40 cm lie along x; the 20 cm along its x point left.
        anchors.Max(a => a.X).ShouldBe(500 + 200, 1e-9);
        anchors.Min(a => a.Y).ShouldBe(20 - 100, 1e-9);
        anchors.Max(a => a.Z).ShouldBe(-100 + 150, 1e-9);
        scanned.Scan.File.ShouldBe("scans/gearbox.stl");
        At(scanned.Shift).ShouldBe(Vector3d.Zero);
        Half(scanned.Shift.Z).ShouldBe(Defaults.ScanMm);
        Assumed("parts/gearbox/scan").Single().ShouldBe(
            "Its file's zero is placed at [500, 20, -100]; the scan as a whole may lie 5 mm each way beside that (scan; common practice, no source).");
        Assumed("parts/gearbox").Single().ShouldContain("without an inside");
    }

    [Fact]
    public void A_half_width_typed_with_a_scan_is_taken_and_one_for_its_lengths_is_assumed_when_none_is_typed()
    {
        Vehicle vehicle = EveryForm.Read((", within: 10 mm }", " }"), ("      unit: cm\n", "      unit: cm\n      within: 2 mm\n")).Vehicle.ShouldNotBeNull();

        vehicle.Parameters.Parameters.Single(p => p.Path == "parts/gearbox/scan.x").ShouldBe(new Parameter("parts/gearbox/scan.x", 0, 2, false));
        vehicle.Assumptions.Single(a => a.Path == "parts/gearbox/scan/size/x").Text.ShouldBe(
            "How near the scan must be to this length not typed: 8 mm (scan and tape together; common practice, no source).");
    }

    [Fact]
    public void The_files_half_width_widens_a_scans_place_and_never_narrows_it()
    {
        double Half(string within) => EveryForm.Read(("unit: mm\n", $"unit: mm\nwithin: {within}\n")).Vehicle.ShouldNotBeNull()
            .Parameters.Parameters.Single(p => p.Path == "parts/gearbox/scan.x").HalfWidthMm;

        Half("7 mm").ShouldBe(7);
        Half("1 mm").ShouldBe(Defaults.ScanMm);
    }

    [Fact]
    public void A_link_lies_between_its_two_ends()
    {
        var rod = Form<PartForm.Link>("steering-rod");

        (rod.First.Body, rod.Second.Body).ShouldBe(("chassis", "rear/axle"));
        At(rod.Second.At).ShouldBe(new Vector3d(-400, 500, -300));
        Half(rod.First.At.X).ShouldBe(Defaults.JointCentreMm);
        Value(rod.OutsideDiameter).ShouldBe(32);
        Part("steering-rod").Body.ShouldBe("chassis");
        Assumed("parts/steering-rod").ShouldBe(["Taken as a straight tube between its ends; a bent one is not covered."]);
    }

    [Fact]
    public void A_driveshaft_has_a_tube_and_a_slip()
    {
        Sleeves sleeves = Form<PartForm.Shaft>("rear-driveshaft").Sleeves;

        sleeves.TubeAtFirst.ShouldBeFalse();
        Values(sleeves).ShouldBe((76, 650, 58, 260));
        Half(sleeves.TubeLength).ShouldBe(Defaults.TapeMm);
        Half(sleeves.RodDiameter).ShouldBe(Defaults.SizeMm);
        Assumed("parts/rear-driveshaft").Single().ShouldContain("two straight tubes");
    }

    [Fact]
    public void A_driveshaft_of_which_only_the_ends_are_typed_has_single_joints_in_phase_and_says_so()
    {
        var shaft = Form<PartForm.Shaft>("rear-driveshaft");

        (shaft.FirstEnd, shaft.SecondEnd).ShouldBe((new ShaftEnd(ShaftJointKind.Single, null), new ShaftEnd(ShaftJointKind.Single, null)));
        (shaft.Splines, shaft.PhaseRad, shaft.After).ShouldBe((null, 0, null));
        Assumed("parts/rear-driveshaft/joints").ShouldBe(["Kind of the joints at its ends not typed: taken as single cardan joints."]);
        Assumed("parts/rear-driveshaft/phase").Single().ShouldContain("in phase");
    }

    [Fact]
    public void Everything_that_is_typed_of_a_driveline_is_in_the_model()
    {
        Vehicle vehicle = EveryForm.Read(
            ("at: [300, 30, -120] }", "at: [300, 30, -120] }\n    after: front-piece\n    joints: { first: double-cardan, second: constant-velocity }\n    phase: -12.5 deg\n    splines: { length: 90 mm, engaged: 2-7/16 in }"),
            ("second: { body: rear/axle, at: [-480, 60, -340] }", "second: { body: rear/axle, at: [-480, 60, -340], ahead: [-380, 61, -330] }"),
            ("  rear-shock-left:\n", FrontPiece + "  rear-shock-left:\n")).Vehicle.ShouldNotBeNull();
        var shaft = (PartForm.Shaft)vehicle.Parts.Single(p => p.Id == "rear-driveshaft").Form;
        double Now(MeasuredLength length) => length.At(vehicle.Parameters.Nominal);
        string[] Said(string path) => [.. vehicle.Assumptions.Where(a => a.Path == path).Select(a => a.Text)];

        (shaft.FirstEnd, shaft.SecondEnd.Joint).ShouldBe((new ShaftEnd(ShaftJointKind.DoubleCardan, null), ShaftJointKind.ConstantVelocity));
        shaft.SecondEnd.Ahead.ShouldNotBeNull().At(vehicle.Parameters.Nominal).ShouldBe(new Vector3d(-380, 61, -330));
        vehicle.Parameters.Parameters[shaft.SecondEnd.Ahead.Value.X.Index].ShouldBe(new Parameter("parts/rear-driveshaft/second/ahead.x", -380, Defaults.JointCentreMm, true));
        Now(shaft.Splines.ShouldNotBeNull().Length).ShouldBe(90);
        Now(shaft.Splines.Engaged).ShouldBe(61.9125, 1e-9);
        shaft.PhaseRad.ShouldBe(-12.5 * Math.PI / 180, 1e-15);
        shaft.After.ShouldBe("front-piece");
        // Two points 101 mm apart, 4 mm each: atan(8 / 100.5) is 4.6 degrees.
        Said("parts/rear-driveshaft/second/ahead").ShouldContain(t => t.EndsWith("off by about 4.6 degrees.", StringComparison.Ordinal));
        Said("parts/rear-driveshaft/joints").ShouldBeEmpty();
        Said("parts/rear-driveshaft/phase").ShouldBeEmpty();
        // The joint at its bearing is the first one of the piece behind.
        Said("parts/front-piece/joints").ShouldBe(["Kind of the joint at its first end not typed: taken as a single cardan joint."]);
        Said("parts/front-piece/phase").ShouldBeEmpty();
    }

    [Fact]
    public void The_tube_of_a_shock_is_taken_as_long_as_the_shock_closed_and_at_its_lower_end()
    {
        Sleeves sleeves = Form<PartForm.Shock>("rear-shock-left").Sleeves.ShouldNotBeNull();

        sleeves.TubeAtFirst.ShouldBeFalse();
        Values(sleeves).ShouldBe((60, 330, 18, 190));
        Half(sleeves.TubeLength).ShouldBe(Defaults.StopLengthMm);
        Half(sleeves.RodLength).ShouldBe(2 * Defaults.StopLengthMm);
        Assumed("parts/rear-shock-left/tube-length").Single().ShouldContain("on the safe side");
        Assumed("parts/rear-shock-left/tube-at").ShouldBe(["Which end carries the tube not typed: taken as the lower one."]);
        Assumed("parts/rear-shock-left/rod-length").Single().ShouldStartWith("The rod is taken as 190 mm long from its joint, 4 mm each way");
    }

    [Fact]
    public void A_tube_that_was_measured_is_taken_as_it_was()
    {
        Sleeves sleeves = Form<PartForm.Shock>("rear-shock-right").Sleeves.ShouldNotBeNull();

        sleeves.TubeAtFirst.ShouldBeTrue();
        Values(sleeves).ShouldBe((60, 300, 18, 220));
        Half(sleeves.TubeLength).ShouldBe(Defaults.TapeMm);
        Half(sleeves.RodLength).ShouldBe(Defaults.TapeMm + Defaults.StopLengthMm);
        Assumed("parts/rear-shock-right/tube-at").ShouldBeEmpty();
    }

    [Fact]
    public void A_rod_is_ten_millimetres_long_at_least()
    {
        Vehicle vehicle = EveryForm.Read(("open: 520 mm\n    tube: 60 mm\n    rod: 18 mm\n    upper", "open: 334 mm\n    tube: 60 mm\n    rod: 18 mm\n    upper")).Vehicle.ShouldNotBeNull();

        vehicle.Parameters.Parameters.Single(p => p.Path == "parts/rear-shock-left/rod-length").ValueMm.ShouldBe(10);
    }

    [Fact]
    public void A_shock_without_tube_and_rod_has_no_shape()
    {
        Vehicle vehicle = EveryForm.Read(("    tube: 60 mm\n    rod: 18 mm\n    upper", "    upper")).Vehicle.ShouldNotBeNull();

        ((PartForm.Shock)vehicle.Parts.Single(p => p.Id == "rear-shock-left").Form).Sleeves.ShouldBeNull();
    }

    [Fact]
    public void A_coil_spring_has_seats_diameter_wire_and_turns()
    {
        var coil = Form<PartForm.Coil>("rear-coil-left");

        At(coil.Lower.At).ShouldBe(new Vector3d(-560, 480, -380));
        Half(coil.Upper.At.Z).ShouldBe(Defaults.CoilSeatMm);
        (Value(coil.OutsideDiameter), Value(coil.Wire), coil.Turns).ShouldBe((140, 16, 7.5));
        Part("rear-coil-left").Body.ShouldBe("rear/axle");
        Assumed("parts/rear-coil-left").Single().ShouldContain("evenly wound");
    }

    [Fact]
    public void Rods_of_the_layout_with_a_diameter_are_links_between_its_own_points()
    {
        Axle axle = Vehicle.Axles[0];
        var bar = Form<PartForm.Link>("rear-track-bar");

        bar.First.ShouldBe(new Place("chassis", axle.Points["track-bar-frame"]));
        bar.Second.ShouldBe(new Place("rear/axle", axle.Points["track-bar-axle"]));
        Value(bar.OutsideDiameter).ShouldBe(38);
        (Part("rear-track-bar").Name, Part("rear-track-bar").Kind.Id).ShouldBe(("Rear track bar", "link"));
        Assumed("parts/rear-track-bar").ShouldBe(["Taken as a straight tube between its ends; a bent one is not covered."]);
        Vehicle.Parts.ShouldNotContain(p => p.Id == "rear-upper-link");
    }

    [Fact]
    public void Rods_of_a_free_layout_are_links_between_their_own_points()
    {
        Vehicle vehicle = FreeAxle.Read("links: { lower: 44 mm }").Vehicle.ShouldNotBeNull();
        var link = (PartForm.Link)vehicle.Parts.Single(p => p.Id == "rear-lower").Form;

        link.First.At.At(vehicle.Parameters.Nominal).ShouldBe(new Vector3d(300, 400, -200));
        link.Second.Body.ShouldBe("rear/axle");
        link.Second.At.At(vehicle.Parameters.Nominal).ShouldBe(new Vector3d(-500, 400, -250));
    }

    [Fact]
    public void Every_number_of_the_model_is_a_reading_that_was_typed_or_an_assumption_that_is_listed()
    {
        HashSet<int> typed = [.. Vehicle.Readings.SelectMany(r => r.IsPoint ? new[] { r.Parameter, r.Parameter + 1, r.Parameter + 2 } : [r.Parameter])];

        foreach ((Parameter parameter, int index) in Vehicle.Parameters.Parameters.Select((p, i) => (p, i)))
            if (!typed.Contains(index)) Vehicle.Assumptions.ShouldContain(a => a.Path == parameter.Reading, parameter.Path);
    }

    [Fact]
    public void Every_reading_names_the_parameter_that_it_gives()
    {
        foreach (TypedReading reading in Vehicle.Readings)
            Vehicle.Parameters.Parameters[reading.Parameter].Reading.ShouldBe(reading.Path);
    }

    [Fact]
    public void Every_part_uses_numbers_of_its_own()
    {
        foreach (Part part in Vehicle.Parts)
            ParameterUse.Of(part).ShouldAllBe(i => i >= 0 && i < Vehicle.Parameters.Count, part.Id);
    }

    private static Part Part(string id) => Vehicle.Parts.Single(p => p.Id == id);

    private static T Form<T>(string id) => Part(id).Form.ShouldBeOfType<T>();

    private static Vector3d At(MeasuredPoint point) => point.At(Vehicle.Parameters.Nominal);

    private static double Value(MeasuredLength length) => length.At(Vehicle.Parameters.Nominal);

    private static double Half(MeasuredLength length) => Vehicle.Parameters.Parameters[length.Index].HalfWidthMm;

    private static Parameter Of(string path) => Vehicle.Parameters.Parameters.Single(p => p.Path == path);

    private static (double TubeDiameter, double TubeLength, double RodDiameter, double RodLength) Values(Sleeves s) =>
        (Value(s.TubeDiameter), Value(s.TubeLength), Value(s.RodDiameter), Value(s.RodLength));

    private static ImmutableArray<string> Assumed(string path) => [.. Vehicle.Assumptions.Where(a => a.Path == path).Select(a => a.Text)];
}
