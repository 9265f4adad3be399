namespace ClearanceCheck.Files.Tests;

/// <summary>Every message about the form of a part, whole, and that a faulty file never becomes a vehicle.</summary>
public sealed class FormFaultTests
{
    private const string Outline = "outline: [[-300, 300, -50], [-500, 300, -50], [-500, 420, -52], [-300, 420, -50]]";
    private const string Corners = "corners: [[-1400, 300, -300], [-900, -300, -20]]";
    private const string Profile = "profile: [[60, -100], [140, -40], [150, 60], [60, 130]]";
    private static readonly string ManyCorners = $"outline: [{string.Join(", ", Enumerable.Range(0, 101).Select(i => FormattableString.Invariant($"[{i * 5}, {i * i}, 0]")))}]";
    private const string FirstOfShaft = "first: { body: engine, at: [300, 30, -120] }";
    private const string Slip = "slip: { diameter: 58 mm, length: 260 mm }\n";
    private const string LeftSleeves = "    tube: 60 mm\n    rod: 18 mm\n    upper";

    public static TheoryData<string, string, string> Shapes { get; } = new()
    {
        { "no-form", Corners, "name: Tank" },
        { "no-form-misspelt", Corners, "cornres: [[-1400, 300, -300], [-900, -300, -20]]" },
        { "two-forms", "body: engine\n", "body: engine\n    corners: [[0, 0, 0], [1, 1, 1]]\n" },
        { "other-form", Outline, "corners: [[0, 0, 0], [1, 1, 1]]" },
        { "from-axle", "kind: brake-rotor", "kind: tire" },
        { "two-point-plate", Outline, "outline: [[-300, 300, -50], [-500, 300, -50]]" },
        { "corner-twice", Outline, "outline: [[-300, 300, -50], [-500, 300, -50], [-500, 300, -50], [-300, 420, -50]]" },
        { "closed-outline", Outline, "outline: [[-300, 300, -50], [-500, 300, -50], [-500, 420, -52], [-300, 300, -50]]" },
        { "outline-without-area", Outline, "outline: [[-300, 300, -50], [-500, 300, -50], [-400, 300, -50]]" },
        { "outline-crosses", Outline, "outline: [[-300, 300, -50], [-500, 300, -50], [-300, 400, -50], [-500, 420, -50]]" },
        { "outline-crosses-lopsided", Outline, "outline: [[-300, 300, -50], [-500, 300, -50], [-340, 420, -50], [-360, 200, -50]]" },
        { "outline-crosses-one-edge", Outline, "outline: [[190, 10, 0], [290, 330, 0], [90, 350, 0], [230, 170, 0], [170, 340, 0]]" },
        { "outline-runs-back", Outline, "outline: [[0, 0, 0], [400, 0, 0], [400, 100, 0], [400, 50, 0], [0, 200, 0]]" },
        { "too-many-corners", Outline, ManyCorners },
        { "outline-not-flat", Outline, "outline: [[-300, 300, -50], [-500, 300, -50], [-500, 420, -180], [-300, 420, -50]]" },
        { "outline-almost-crosses", Outline, "outline: [[-300, 300, -50], [-500, 300, -50], [-500, 420, -50], [-400, 300.5, -50]]" },
        { "box-without-thickness", Corners, "corners: [[-1400, 300, -300], [-900, -300, -300]]" },
        { "box-without-thickness-may-be-plate", "kind: fuel-tank\n    body: chassis\n    within: 8 mm\n    " + Corners, "kind: bodywork\n    body: chassis\n    corners: [[-1400, 300, -300], [-900, 300, -300]]" },
        { "box-three-corners", Corners, "corners: [[-1400, 300, -300], [-900, -300, -20], [0, 0, 0]]" },
        { "short-axis", "axis: [[-612, 40, -402], [-612, 160, -402]]", "axis: [[-612, 40, -402], [-612, 52.5, -402]]" },
        { "one-corner-profile", Profile, "profile: [[60, -100]]" },
        { "profile-corner-twice", Profile, "profile: [[60, -100], [60, -100], [70, 20]]" },
        { "profile-on-axis", Profile, "profile: [[0, -100], [0, 20]]" },
        { "profile-negative-radius", Profile, "profile: [[-60, -100], [60, 20]]" },
        { "profile-triple", Profile, "profile: [[60, -100, 0], [60, 20]]" },
        { "wall-fills-all", Profile + "\n    wall: 9 mm", "profile: [[60, -100], [80, 60]]\n    wall: 80 mm" },
        { "no-profile", "    " + Profile + "\n", "" },
        { "no-mesh-file", "scans/gearbox.stl", "scans/gearbox.ply" },
        { "scan-without-size", "size: { x: 400 mm, z: 300 mm, within: 10 mm }", "size: { within: 10 mm }" },
        { "scan-without-unit", "      unit: cm\n", "" },
        { "scan-unknown-axis", "up: +z", "up: z" },
        { "scan-other-size", "size: { x: 400 mm, z: 300 mm, within: 10 mm }", "size: { x: 40 mm, within: 4 mm }" },
    };

    public static TheoryData<string, string, string> TwoEnds { get; } = new()
    {
        { "link-same-place", "second: { body: rear/axle, at: [-400, 500, -300] }", "second: { body: rear/axle, at: [800, 400, -100] }" },
        { "longer-than-shaft-tube", "length: 650 mm", "length: 950 mm" },
        { "longer-than-shaft-slip", "length: 260 mm", "length: 950 mm" },
        { "slides-apart", "length: 260 mm", "length: 110 mm" },
        { "shaft-tube-without-end", ", at: second }", " }" },
        { "shock-rod-missing", LeftSleeves, "    tube: 60 mm\n    upper" },
        { "shock-tube-missing", LeftSleeves, "    rod: 18 mm\n    tube-length: 300 mm\n    upper" },
        { "rod-not-thinner", LeftSleeves, "    tube: 60 mm\n    rod: 60 mm\n    upper" },
        { "tube-longer-than-closed", "tube-length: 300 mm", "tube-length: 331 mm" },
        { "shock-ends-do-not-move", "lower: { body: rear/axle, at: [-660, 470, -455] }", "lower: { body: exhaust, at: [-660, 470, -455] }" },
        { "bump-stop-ends-do-not-move", "frame: { body: chassis, at: [-600, 455, -118] }", "frame: { body: rear/axle, at: [-600, 455, -118] }" },
        { "turns-out-of-range", "turns: 7.5", "turns: 0.5" },
        { "turns-with-unit", "turns: 7.5", "turns: 7.5 mm" },
        { "wire-too-thick", "outside-diameter: 140 mm", "outside-diameter: 32 mm" },
        { "coil-bound", "turns: 7.5", "turns: 20.25" },
    };

    public static TheoryData<string, string, string> Drivelines { get; } = new()
    {
        { "ahead-is-end", FirstOfShaft, FirstOfShaft.Replace("-120]", "-120], ahead: [300, 30, -120]", StringComparison.Ordinal) },
        { "ahead-bent-too-far", FirstOfShaft, FirstOfShaft.Replace("-120]", "-120], ahead: [310, 130, -120]", StringComparison.Ordinal) },
        { "ahead-in-no-state", FirstOfShaft, FirstOfShaft.Replace("-120]", "-120], ahead: [200, 30, -130], in: hangnig", StringComparison.Ordinal) },
        { "ahead-two-numbers", FirstOfShaft, FirstOfShaft.Replace("-120]", "-120], ahead: [200, 30]", StringComparison.Ordinal) },
        { "joint-unknown", Slip, Slip + "    joints: { first: double, second: single }\n" },
        { "joint-of-nothing", Slip, Slip + "    joints: { frist: single }\n" },
        { "engaged-beyond-spline", Slip, Slip + "    splines: { length: 62 mm, engaged: 90 mm }\n" },
        { "spline-without-engaged", Slip, Slip + "    splines: { length: 62 mm }\n" },
        { "phase-without-unit", Slip, Slip + "    phase: 0\n" },
        { "phase-out-of-range", Slip, Slip + "    phase: 180 deg\n" },
        { "after-no-such-part", Slip, Slip + "    after: front-driveshaft\n" },
        { "after-no-shaft", Slip, Slip + "    after: steering-rod\n" },
        { "after-itself", Slip, Slip + "    after: rear-driveshaft\n" },
        { "after-does-not-begin-there", Slip, Slip + "    after: front-piece\n" + Piece("front-piece", "[1000, 30, -90]", "[360, 30, -110]") },
        { "after-followed-twice", Slip, Slip + "    after: front-piece\n" + Piece("front-piece", "[1000, 30, -90]", "[330, 30, -115]") + Piece("third-piece", "[320, 30, -115]", "[-300, 30, -115]", "after: front-piece") },
        { "after-piece-moves", Slip, Slip + "    after: front-piece\n" + Piece("front-piece", "[1000, 30, -90]", "[330, 30, -115]").Replace("body: chassis", "body: rear/axle", StringComparison.Ordinal) },
        { "after-in-a-circle", Slip, Slip + Piece("one", "[1000, 30, -90]", "[330, 30, -115]", "after: two") + Piece("two", "[330, 30, -115]", "[1000, 30, -90]", "after: one") },
        { "ahead-behind-bearing", FirstOfShaft, FirstOfShaft.Replace("-120]", "-120], ahead: [200, 30, -130]", StringComparison.Ordinal) + "\n    after: front-piece" },
        { "joint-at-bearing", Slip, Slip + "    after: front-piece\n" + Piece("front-piece", "[1000, 30, -90]", "[330, 30, -115]", "joints: { second: single }") },
        { "ahead-at-bearing", Slip, Slip + "    after: front-piece\n" + Piece("front-piece", "[1000, 30, -90]", "[330, 30, -115], ahead: [230, 30, -115]") },
    };

    [Theory]
    [MemberData(nameof(Shapes))]
    [MemberData(nameof(TwoEnds))]
    public void A_fault_gets_its_one_message(string name, string old, string fresh)
    {
        InspectionReading reading = EveryForm.Read((old, fresh));

        reading.Vehicle.ShouldBeNull();
        reading.Diagnostics.Ordered.Count.ShouldBe(1, reading.Messages());
        Golden.Matches(name, reading.Messages());
    }

    [Fact]
    public void Ends_on_two_axles_are_refused()
    {
        InspectionReading reading = EveryForm.Read(
            ("axles:\n", SecondAxle()), ("first: { body: chassis, at: [800, 400, -100] }", "first: { body: front/axle, at: [800, 400, -100] }"),
            ("rear-right: 641 mm }", "rear-right: 641 mm, front-left: 600 mm, front-right: 600 mm }"));

        reading.Vehicle.ShouldBeNull();
        Golden.Matches("two-axles", reading.Messages());
    }

    [Fact]
    public void A_part_of_a_faulty_axle_can_be_named_without_a_second_message()
    {
        InspectionReading reading = EveryForm.Read(("layout: three-link", "layout: three-lnik"), ("touches: [ rear-left-tire ]", "touches: [ rear-left-tire, rear-track-bar ]"));

        reading.Diagnostics.Ordered.Count.ShouldBe(1, reading.Messages());
    }

    [Theory]
    [MemberData(nameof(Drivelines))]
    public void A_fault_of_a_driveline_gets_its_one_message(string name, string old, string fresh)
    {
        (string, string)[] changes = name == "ahead-behind-bearing" ? [(old, fresh), (Slip, Slip + Piece("front-piece", "[1000, 30, -90]", "[330, 30, -115]"))] : [(old, fresh)];
        InspectionReading reading = EveryForm.Read(changes);

        reading.Vehicle.ShouldBeNull();
        reading.Diagnostics.Ordered.Count.ShouldBe(1, reading.Messages());
        Golden.Matches(name, reading.Messages());
    }

    [Fact]
    public void A_shaft_behind_a_faulty_piece_adds_no_second_message()
    {
        InspectionReading reading = EveryForm.Read((Slip, Slip + "    after: front-piece\n" + Piece("front-piece", "[1000, 30, -90]", "[330, 30]")));

        reading.Diagnostics.Ordered.Count.ShouldBe(1, reading.Messages());
    }

    // A driveshaft with both ends on the chassis.
    private static string Piece(string id, string from, string to, string? key = null) =>
        $$"""
          {{id}}:
            kind: driveshaft
            first: { body: chassis, at: {{from}} }
            second: { body: chassis, at: {{to}} }
            tube: { diameter: 76 mm, length: 600 mm, at: first }
            slip: { diameter: 58 mm, length: 300 mm }

        """ + (key is null ? "" : $"    {key}\n");

    private static string SecondAxle() =>
        """
            axles:
              front:
                layout: free
                travel: { droop: 150 mm, bump: 100 mm }
                bodies: [ axle ]
                joints: { pin: { kind: ball, between: [ chassis, front/axle ], at: [ [2300, 0, -200] ] } }
                wheels: { left: { body: front/axle, hub: [2000, 738, -402] }, right: { body: front/axle, hub: [2000, -738, -404] } }

            """;
}
