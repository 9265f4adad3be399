namespace ClearanceCheck.Files.Tests;

/// <summary>Every message about states, mirrors and readings beside the model, whole.</summary>
public sealed class StateFaultTests
{
    private const string Hanging = "  hanging: { on: frame-lift, hub-to-fender: { rear-left: 742 mm, rear-right: 744 mm } }\n";
    private const string Flexed = Hanging + "  flexed: { on: level-floor, hub-to-fender: { rear-left: 560 mm, rear-right: 720 mm } }\n";
    private const string HalfFlexed = Hanging + "  flexed: { on: level-floor, hub-to-fender: { rear-right: 720 mm } }\n";
    private const string Points = "      hanging:                                # x";
    private const string ShockEnd = "lower: { body: rear/axle, at: [-660, 470, -455] }";
    private const string AxleTube = "    kind: axle-tube\n    name: Rear axle tube\n    body: rear/axle\n    outside-diameter: 3 in\n    path:\n      - [-612, 660, -402]\n      - [-612, -660, -404]\n";
    private const string LeftShock = "  rear-shock-left:\n    kind: shock\n";
    private const string Gap = "parts:\n";

    public static TheoryData<string, string, string> States { get; } = new()
    {
        { "state-unknown-support", "hanging: { on: frame-lift,", "hanging: { on: frame-left," },
        { "state-unknown-bar", "hanging: { on: frame-lift,", "hanging: { on: frame-lift, anti-roll-bar: conected," },
        { "state-no-corner", "ride: { on: level-floor, hub-to-fender: {", "ride: { on: level-floor, hub-to-fender: { rear: 640 mm," },
        { "state-height-out-of-range", "rear-left: 742 mm", "rear-left: 7.42 mm" },
        { "state-hangs-above-ride", "rear-left: 742 mm", "rear-left: 624 mm" },
        { "state-of-part-unknown", "    name: Left rear shock\n", "    name: Left rear shock\n    in: hangin\n" },
        { "state-of-end-unknown", ShockEnd, "lower: { body: rear/axle, at: [-660, 470, -455], in: ridden }" },
        { "compared-point-unknown", Points, "      ride: { hub-lfet: [0, 0, 0] }\n" + Points },
        { "compared-point-wrong-side", Points, "      ride: { hub-left: [-612, -738, -300] }\n" + Points },
        { "axle-measured-in-nowhere", "    layout: three-link\n", "    layout: three-link\n    measured-in: ride\n" },
        { "box-turned-with-its-axle", AxleTube, "    kind: axle-housing\n    body: rear/axle\n    in: ride\n    corners: [[-700, 100, -400], [-500, -100, -200]]\n" },
        { "rail-pitch-without-unit", Gap, "rail-pitch: 0.4\n" + Gap },
        { "rail-pitch-out-of-range", Gap, "rail-pitch: 40 deg\n" + Gap },
        { "before-lift-out-of-range", Gap, "before-lift: { hub-to-fender: { rear-left: 560 mm, rear-right: 5600 mm } }\n" + Gap },
        { "before-lift-without-heights", Gap, "before-lift: {}\n" + Gap },
        { "gap-of-one", Gap, "gaps: { g: { between: [ tailpipe, tailpipe ], is: 8 mm, how: tape } }\n" + Gap },
        { "gap-unknown-part", Gap, "gaps: { g: { between: [ tailpipe, rear-shock-lfet ], is: 8 mm, how: tape } }\n" + Gap },
        { "gap-to-part-with-half-a-shape", Gap, "gaps: { g: { between: [ tailpipe, spare ], is: 8 mm, how: tape } }\n" + Gap + "  spare: { kind: axle-tube, body: rear/axle, outside-diameter: 76 mm }\n" },
        { "gap-to-part-with-misspelt-shape", Gap, "gaps: { g: { between: [ tailpipe, spare ], is: 8 mm, how: tape } }\n" + Gap + "  spare: { kind: frame-rail, body: chassis, cornrs: [[0, 0, 0], [1, 1, 1]] }\n" },
        { "no-shape-and-no-gap", Gap, Gap + "  spare: { kind: axle-tube, body: rear/axle }\n" },
        { "gap-to-hose-without-ends", Gap, "gaps: { g: { between: [ tailpipe, spare ], is: 8 mm, how: tape } }\n" + Gap + "  spare: { kind: brake-hose, outside-diameter: 10 mm, free-length: 300 mm }\n" },
        { "gap-unknown-tool", Gap, "gaps: { g: { between: [ tailpipe, rear/axle ], is: 8 mm, how: eye } }\n" + Gap },
        { "accepted-without-reason", Gap, "accepted: { line-behind-shield: { rule: line-near-exhaust, parts: [ axle-brake-line, tailpipe ], floor: 30 mm, by: R. Amsel, until: 2031-10-01 } }\n" + Gap },
        { "accepted-without-name", Gap, "accepted: { line-behind-shield: { rule: line-near-exhaust, parts: [ axle-brake-line, tailpipe ], floor: 30 mm, until: 2031-10-01, reason: Checked hot } }\n" + Gap },
        { "accepted-without-day", Gap, "accepted: { line-behind-shield: { rule: line-near-exhaust, parts: [ axle-brake-line, tailpipe ], floor: 30 mm, by: R. Amsel, reason: Checked hot } }\n" + Gap },
        { "accepted-bad-day", Gap, "accepted: { line-behind-shield: { rule: line-near-exhaust, parts: [ axle-brake-line, tailpipe ], floor: 30 mm, by: R. Amsel, until: 10/1/31, reason: Checked hot } }\n" + Gap },
        { "accepted-without-floor-unit", Gap, "accepted: { line-behind-shield: { rule: line-near-exhaust, parts: [ axle-brake-line, tailpipe ], floor: thirty, by: R. Amsel, until: 2031-10-01, reason: Checked hot } }\n" + Gap },
        { "accepted-no-such-part", Gap, "accepted: { line-behind-shield: { rule: line-near-exhaust, parts: [ axle-brake-line, tailpip ], floor: 30 mm, by: R. Amsel, until: 2031-10-01, reason: Checked hot } }\n" + Gap },
        { "accepted-without-rule", Gap, "accepted: { line-behind-shield: { parts: [ axle-brake-line, tailpipe ], floor: 30 mm, by: R. Amsel, until: 2031-10-01, reason: Checked hot } }\n" + Gap },
        { "accepted-unknown-key", Gap, "accepted: { line-behind-shield: { rule: line-near-exhaust, parts: [ axle-brake-line, tailpipe ], flor: 30 mm, by: R. Amsel, until: 2031-10-01, reason: Checked hot } }\n" + Gap },
        { "accepted-twice", Gap, "accepted: { line-behind-shield: { rule: line-near-exhaust, parts: [ axle-brake-line, tailpipe ], floor: 30 mm, by: R. Amsel, until: 2031-10-01, reason: Checked hot }, twice: { rule: line-near-exhaust, parts: [ tailpipe, axle-brake-line ], floor: 30 mm, by: R. Amsel, until: 2031-10-01, reason: Again } }\n" + Gap },
        { "check-without-by", Gap, "checks: { line-near-exhaust--axle-brake-line--tailpipe: { is: 12 mm } }\n" + Gap },
        { "check-with-empty-by", Gap, "checks: { line-near-exhaust--axle-brake-line--tailpipe: { is: 12 mm, by: '' } }\n" + Gap },
        { "check-without-is", Gap, "checks: { line-near-exhaust--axle-brake-line--tailpipe: { by: R. A. } }\n" + Gap },
        { "check-out-of-range", Gap, "checks: { line-near-exhaust--axle-brake-line--tailpipe: { is: 12 m, by: R. A. } }\n" + Gap },
        { "check-below-zero", Gap, "checks: { line-near-exhaust--axle-brake-line--tailpipe: { is: -3 mm, by: R. A. } }\n" + Gap },
        { "check-unknown-unit", Gap, "checks: { line-near-exhaust--axle-brake-line--tailpipe: { is: 12 mn, by: R. A. } }\n" + Gap },
        { "check-within-out-of-range", Gap, "checks: { line-near-exhaust--axle-brake-line--tailpipe: { is: 12 mm, within: 2 m, by: R. A. } }\n" + Gap },
        { "check-unknown-key", Gap, "checks: { line-near-exhaust--axle-brake-line--tailpipe: { is: 12 mm, by: R. A., how: tape } }\n" + Gap },
        { "check-of-a-part", Gap, "checks: { tailpipe: { is: 12 mm, by: R. A. } }\n" + Gap },
    };

    public static TheoryData<string, string, string> Mirrors { get; } = new()
    {
        { "mirror-unknown-side", LeftShock, LeftShock + "    side: port\n" },
        { "mirror-without-side", LeftShock, LeftShock + "    mirror-within: 4 mm\n" },
        { "mirror-within-out-of-range", LeftShock, "  rear-damper:\n    kind: shock\n    side: left\n    mirror-within: 4 m\n" },
        { "never-mirrored-line", "    kind: brake-line\n    name: \"Brake line along the frame to the hose bracket\"\n", "    kind: brake-line\n    side: left\n" },
        { "never-mirrored-hose", "    kind: brake-hose\n", "    kind: brake-hose\n    side: left\n    mirror-within: 4 mm\n" },
        { "never-mirrored-exhaust", "    kind: exhaust-pipe\n", "    kind: exhaust-pipe\n    side: right\n" },
        { "side-typed-twice", "  rear-shock-right:\n    kind: shock\n", "  rear-shock:\n    kind: shock\n    side: left\n" },
        { "mirror-key-with-side", "    layout: three-link\n", "    layout: three-link\n    side: left\n" },
    };

    [Theory]
    [MemberData(nameof(States))]
    [MemberData(nameof(Mirrors))]
    public void A_fault_gets_its_one_message(string name, string old, string fresh)
    {
        InspectionReading reading = FaultyFile.Read((old, fresh));

        reading.Vehicle.ShouldBeNull();
        Golden.Matches(name, reading.Messages());
    }

    [Fact]
    public void A_state_of_a_point_that_is_not_tied_to_ride_height_is_said_once_for_each_corner()
    {
        InspectionReading reading = FaultyFile.Read(
            (Hanging, HalfFlexed), ("    name: Left rear shock\n", "    name: Left rear shock\n    in: flexed\n"), ("    name: Rear axle tube\n", "    name: Rear axle tube\n    in: flexed\n"));

        reading.Vehicle.ShouldBeNull();
        Golden.Matches("part-not-tied-to-ride", reading.Messages());
    }

    [Fact]
    public void A_mirror_of_an_axle_that_stood_askew_is_refused()
    {
        InspectionReading reading = FaultyFile.Read(
            (Hanging, Flexed), ("        hub-left", "        hub"), ("        hub-right: [-612, -738, -404]\n", ""), ("lower-link-left-", "lower-link-"),
            ("        lower-link-right-frame: [288, -430, -233]\n        lower-link-right-axle: [-590, -506, -454]\n", ""),
            ("      hanging:  ", "      flexed:  "), ("    layout: three-link\n", "    layout: three-link\n    side: left\n"));

        reading.Vehicle.ShouldBeNull();
        Golden.Matches("mirror-of-tilted", reading.Messages());
    }

    [Fact]
    public void Points_in_two_states_that_are_not_the_files_ask_which_one_is_meant()
    {
        InspectionReading reading = FaultyFile.Read(
            (Hanging, Flexed), ("      hanging:                                # x", "      ride: { hub-left: [0, 0, 0] }\n      flexed:                                # x"));

        reading.Vehicle.ShouldBeNull();
        Golden.Matches("which-state", reading.Messages());
    }

    [Fact]
    public void Points_of_one_layout_in_two_states_get_one_message()
    {
        InspectionReading reading = FaultyFile.Read(
            (Points, "      ride: { hub-left: [-604, 738, -290], track-bar-axle: [-668, -445, -218] }\n" + Points),
            ("        hub-left: [-612, 738, -402]\n", ""), ("        track-bar-axle: [-668, -445, -320]\n", ""));

        reading.Vehicle.ShouldBeNull();
        Golden.Matches("mixed-states", reading.Messages());
    }

    [Fact]
    public void A_point_compared_in_a_state_that_is_not_tied_to_ride_height_is_said()
    {
        InspectionReading reading = FaultyFile.Read((Hanging, HalfFlexed), (Points, "      flexed: { hub-left: [-604, 738, -290] }\n" + Points));

        reading.Vehicle.ShouldBeNull();
        Golden.Matches("compared-not-tied-to-ride", reading.Messages());
    }

    [Fact]
    public void A_gap_on_an_axle_in_a_state_that_is_not_tied_to_ride_height_is_said()
    {
        InspectionReading reading = FaultyFile.Read((Hanging, HalfFlexed), (Gap, "gaps: { g: { between: [ tailpipe, rear-axle-tube ], in: flexed, is: 8 mm, how: tape } }\n" + Gap));

        reading.Vehicle.ShouldBeNull();
        Golden.Matches("gap-not-tied-to-ride", reading.Messages());
    }

    [Fact]
    public void A_mirror_image_on_a_body_that_is_not_there_is_refused()
    {
        InspectionReading reading = FaultyFile.Read(
            (FreeLayout.ThreeLink, FreeLayout.Text("within: 3 mm").Replace("bodies: [ axle ]", "bodies: [ axle, arm-left ]", StringComparison.Ordinal)),
            (LeftShock, "  rear-damper:\n    kind: shock\n    side: left\n"), (ShockEnd, "lower: { body: rear/arm-left, at: [-660, 470, -455] }"));

        reading.Vehicle.ShouldBeNull();
        Golden.Matches("no-such-image", reading.Messages());
    }

    [Fact]
    public void A_mirror_image_with_the_id_of_a_part_that_the_axle_makes_is_refused()
    {
        InspectionReading reading = FaultyFile.Read(
            ("    layout: three-link\n", "    layout: three-link\n    links: { lower-link-right: 51 mm }\n"),
            (LeftShock, "  rear-lower-link:\n    kind: link\n    side: left\n    outside-diameter: 51 mm\n    first: { body: chassis, at: [1, 2, 3] }\n    second: { body: rear/axle, at: [100, 2, 3] }\n" + LeftShock));

        reading.Vehicle.ShouldBeNull();
        Golden.Matches("image-made-by-axle", reading.Messages());
    }

    [Fact]
    public void A_free_layout_is_not_mirrored()
    {
        InspectionReading reading = FaultyFile.Read((FreeLayout.ThreeLink, FreeLayout.Text("side: left")));

        reading.Vehicle.ShouldBeNull();
        Golden.Matches("free-is-not-mirrored", reading.Messages());
    }

    [Fact]
    public void A_gap_to_a_mirrored_part_says_which_side()
    {
        InspectionReading reading = FaultyFile.Read(
            (LeftShock, "  rear-damper:\n    kind: shock\n    side: left\n"), (Gap, "gaps: { g: { between: [ tailpipe, rear-damper ], is: 8 mm, how: tape } }\n" + Gap));

        reading.Vehicle.ShouldBeNull();
        Golden.Matches("gap-of-mirrored", reading.Messages());
    }
}
