namespace ClearanceCheck.Files.Tests.Layouts;

/// <summary>Every message about layouts, steering, soft joints and the stops of a steered axle, whole.</summary>
public sealed class AxleFaultTests
{
    private const string Wheels = "    wheels:\n";
    private const string FirstBushing = "at: [ [-955, 395, -25] ], stiffness: [7000 N/mm, 1500 N/mm, 7000 N/mm], turning-stiffness: [4600 Nm/rad, 2300 Nm/rad, 4600 Nm/rad], stiffness-axes: vehicle";
    private const string FirstSpring = "at: [ [930, 445, -35], [25, 520, -92] ], stiffness: 9000 N/mm";

    public static TheoryData<string, string, string, string> Steering { get; } = new()
    {
        { "steering-point-missing", "three-link", "        kingpin-left-upper: [-12, 652, 102]\n", "" },
        { "steering-point-wrong-side", "three-link", "tie-rod-left: [-172, 618, -22]", "tie-rod-left: [-172, -618, -22]" },
        { "hub-of-split-beam-wrong-side", "split-beams", "hub: [0, 805, 0]", "hub: [0, -805, 0]" },
        { "beam-pivot-with-side", "split-beams", "        beam-pivot:", "        beam-pivot-of-left:" },
        { "steering-point-mirrored", "radius-arms", "        kingpin-left-lower: [6, 690, -98]\n", "        kingpin-lower: [6, 690, -98]\n" },
        { "steering-point-of-one-side", "radius-arms", "        kingpin-right-upper: [-12, -652, 102]\n", "" },
        { "steering-unknown-kind", "three-link", "kind: cross-over", "kind: crossover" },
        { "steering-other-layout", "double-wishbones", "kind: rack", "kind: cross-over" },
        { "steering-on-free", "free-beams", Wheels, "    steering: { kind: cross-over, lock: 31 deg }\n" + Wheels },
        { "steering-not-a-map", "three-link", "steering: { kind: cross-over, lock: 36 deg, box-end: 44 deg }", "steering: cross-over" },
        { "kingpin-without-length", "three-link", "kingpin-left-upper: [-12, 652, 102]", "kingpin-left-upper: [6, 690, -98]" },
        { "kingpin-upside-down", "three-link", "kingpin-left-upper: [-12, 652, 102]", "kingpin-left-upper: [-12, 652, -302]" },
        { "pitman-shaft-upside-down", "three-link", "pitman-axis: [318, 400, 305]", "pitman-axis: [302, 390, 105]" },
        { "pitman-shaft-too-short", "three-link", "pitman-axis: [318, 400, 305]", "pitman-axis: [310, 395, 215]" },
        { "arm-pivots-in-one-place", "double-wishbones", "lower-arm-rear: [-215, 372, -124]", "lower-arm-rear: [190, 355, -118]" },
        { "beam-line-too-short", "split-beams", "beam-pivot: [25, -215, -85]", "beam-pivot: [-890, 385, -35]" },
        { "lock-out-of-range", "three-link", "lock: 36 deg", "lock: 360 deg" },
        { "lock-without-unit", "three-link", "lock: 36 deg", "lock: 36" },
        { "lock-missing", "three-link", "lock: 36 deg, ", "" },
        { "lock-twice", "three-link", "lock: 36 deg", "lock: 36 deg, lock-left: 30 deg" },
        { "lock-of-one-side", "three-link", "lock: 36 deg", "lock-left: 30 deg" },
        { "lock-for-rack", "double-wishbones", "rack: 60 mm", "lock: 31 deg" },
        { "lock-for-pitman", "double-wishbones-parallel", "pitman: 20 deg", "lock: 31 deg" },
        { "rack-out-of-range", "double-wishbones", "rack: 60 mm", "rack: 600 mm" },
        { "box-end-out-of-range", "three-link", "box-end: 44 deg", "box-end: 440 deg" },
        { "box-end-without-box", "leaf-springs", "lock: 20 deg", "lock: 20 deg, box-end: 44 deg" },
        { "turns-a-rod", "free-three-link", "turns: sector-shaft", "turns: tie-rod" },
        { "turns-nothing", "free-three-link", "turns: sector-shaft", "turns: sector-shatf" },
        { "turns-the-chassis", "free-three-link", "between: [ chassis, front/pitman-arm ]", "between: [ front/pitman-arm, chassis ]" },
        { "way-for-hinge", "free-three-link", "lock: 30 deg", "way: 30 mm" },
    };

    public static TheoryData<string, string, string, string> Figures { get; } = new()
    {
        { "bar-unknown-state", "radius-arms", "is: connected", "is: conected" },
        { "bar-without-state", "radius-arms", "is: connected, ", "" },
        { "bar-point-missing", "radius-arms", "        bar-arm: [-20, 430, 105]\n", "" },
        { "bar-held-by-nothing", "radius-arms", "on: frame }", "on: engine }" },
        { "bar-of-wishbones-on-axle", "double-wishbones", "    points:\n", "    anti-roll-bar: { is: absent, on: axle }\n    points:\n" },
        { "bar-on-free", "free-beams", Wheels, "    anti-roll-bar: { is: connected }\n" + Wheels },
        { "bar-points-of-none", "radius-arms", "is: connected", "is: absent" },
        { "position-without-mark", "positions", ", marker: [-60, 246, 229] }", " }" },
        { "positions-too-few", "positions", "      low: { hub-left: [-20, 815, -120], hub-right: [-15, -775, -120], marker: [-78, 270, 50] }\n      high: { hub-left: [2, 791, 60], hub-right: [1, -799, 60], marker: [-60, 246, 229] }\n      left-up: { hub-left: [4, 803, 120], hub-right: [-8, -769, -120], marker: [-59, 239, 206] }\n", "" },
        { "leaves-on-links", "three-link", "    points:\n", "    leaves: { width: 63 mm, thickness: 8 mm, stack: 42 mm }\n    points:\n" },
        { "leaves-without-stack", "leaf-spring-packs", ", stack: 42 mm", "" },
        { "leaves-without-width", "leaf-spring-packs", "width: 63 mm, ", "" },
        { "leaves-without-thickness", "leaf-spring-packs", "thickness: 8 mm, ", "" },
        { "leaves-not-a-map", "leaf-spring-packs", "leaves: { width: 63 mm, thickness: 8 mm, stack: 42 mm }", "leaves: 63 mm" },
        { "leaves-too-wide", "leaf-spring-packs", "width: 63 mm", "width: 630 mm" },
        { "leaves-misspelt", "leaf-spring-packs", "stack: 42 mm", "stakc: 42 mm, stack: 42 mm" },
        { "stack-thinner-than-leaf", "leaf-spring-packs", "stack: 42 mm", "stack: 4.2 mm" },
        { "leaf-spring-typed", "leaf-spring-packs", "    kind: axle-tube\n", "    kind: leaf-spring\n" },
        { "leaf-spring-made-by-axle", "leaf-spring-packs", "  hanger:\n", "  rear-left-leaf-spring:\n" },
        { "wrap-on-links", "three-link", "    points:\n", "    axle-wrap: [-3 deg, 5 deg]\n    points:\n" },
        { "wrap-the-wrong-way", "leaf-springs", "axle-wrap: [-2 deg, 4 deg]", "axle-wrap: [4 deg, -2 deg]" },
        { "wrap-too-far", "leaf-springs", "axle-wrap: [-2 deg, 4 deg]", "axle-wrap: [-2 deg, 40 deg]" },
        { "wrap-one-number", "leaf-springs", "axle-wrap: [-2 deg, 4 deg]", "axle-wrap: [4 deg]" },
        { "wrap-unknown-word", "leaf-springs", "axle-wrap: [-2 deg, 4 deg]", "axle-wrap: off" },
        { "wrap-without-unit", "leaf-springs", "axle-wrap: [-2 deg, 4 deg]", "axle-wrap: [-2, 4 deg]" },
        { "figure-out-of-range", "leaf-springs", "clamp-length: 110 mm", "clamp-length: 1100 mm" },
        { "figure-missing", "beam-axle-simple", "    arm-length: 900 mm\n", "" },
    };

    public static TheoryData<string, string, string, string> Joints { get; } = new()
    {
        { "stiffness-without-unit", "free-four-links", FirstSpring, FirstSpring.Replace(" N/mm", "", StringComparison.Ordinal) },
        { "stiffness-negative", "free-four-links", FirstSpring, FirstSpring.Replace("9000", "-9000", StringComparison.Ordinal) },
        { "stiffness-missing", "free-four-links", FirstSpring, FirstSpring.Replace(", stiffness: 9000 N/mm", "", StringComparison.Ordinal) },
        { "spring-with-one-point", "free-four-links", FirstSpring, FirstSpring.Replace(", [25, 520, -92]", "", StringComparison.Ordinal) },
        { "bushing-with-two-points", "free-rigid-arms", FirstBushing, FirstBushing.Replace("[ [-955, 395, -25] ]", "[ [-955, 395, -25], [0, 395, -25] ]", StringComparison.Ordinal) },
        { "bushing-of-two-numbers", "free-rigid-arms", FirstBushing, FirstBushing.Replace("[7000 N/mm, 1500 N/mm, 7000 N/mm]", "[7000 N/mm, 1500 N/mm]", StringComparison.Ordinal) },
        { "bushing-that-holds-nothing", "free-rigid-arms", FirstBushing, "at: [ [-955, 395, -25] ], stiffness: [0 N/mm, 0 N/mm, 0 N/mm], stiffness-axes: vehicle" },
        { "turning-stiffness-other-unit", "free-rigid-arms", FirstBushing, FirstBushing.Replace("2300 Nm/rad", "2300 N/mm", StringComparison.Ordinal) },
        { "turning-stiffness-negative", "free-rigid-arms", FirstBushing, FirstBushing.Replace("2300 Nm/rad", "-40 Nm/deg", StringComparison.Ordinal) },
        { "stiffness-axes-unknown", "free-rigid-arms", FirstBushing, FirstBushing.Replace("axes: vehicle", "axes: chassis", StringComparison.Ordinal) },
        { "stiffness-of-a-rod", "free-rigid-arms", "at: [ [95, 455, 165], [60, -430, 72] ]", "at: [ [95, 455, 165], [60, -430, 72] ], stiffness: 9000 N/mm" },
        { "hinge-too-short", "free-three-link", "axis: [318, 400, 305]", "axis: [310, 395, 215]" },
        { "slide-without-axis", "free-wishbones", ", axis: [-148, 392, -62]", "" },
        { "joint-unknown-kind", "free-wishbones", "kind: slide", "kind: slider" },
        { "travel-on-unknown-body", "free-three-link", "hub: [0, 795, 0], travel-on: front/axle", "hub: [0, 795, 0], travel-on: front/axel" },
    };

    public static TheoryData<string, string, string, string> Stops { get; } = new()
    {
        { "steering-stop-on-one-body", "three-link", "pad: { body: front/axle,", "pad: { body: front/knuckle-left," },
        { "steering-stop-same-place", "three-link", "at: [-62, 610, -42]", "at: [-110, 640, -40]" },
        { "steering-stop-mirrored", "three-link", "    kind: steering-stop\n", "    kind: steering-stop\n    side: left\n" },
        { "steering-stop-not-steered", "double-wishbones-toe-links", "parts:\n", "parts:\n  stop: { kind: steering-stop, bolt: { body: front/knuckle-left, at: [0, 700, 0] }, pad: { body: front/lower-arm-left, at: [0, 690, 0] } }\n" },
        { "strap-on-the-chassis", "three-link", "lower: { body: front/axle, at: [-40, 420, 20] }", "lower: { body: chassis, at: [-40, 420, 20] }" },
        { "strap-without-length", "three-link", "    length: 420 mm\n", "" },
        { "coil-solid-as-measured", "three-link", "solid-height: 125 mm", "solid-height: 325 mm" },
        { "coil-free-not-longer", "three-link", "free-length: 460 mm", "free-length: 120 mm" },
        { "coil-that-ends-nothing", "three-link", "lower: { body: front/axle, at: [0, 480, 60] }", "lower: { body: chassis, at: [0, 480, 60] }" },
    };

    [Theory]
    [MemberData(nameof(Steering))]
    [MemberData(nameof(Figures))]
    [MemberData(nameof(Joints))]
    [MemberData(nameof(Stops))]
    public void A_fault_gets_its_one_message(string name, string example, string old, string fresh)
    {
        InspectionReading reading = LayoutExample.Read(example, (old, fresh));

        reading.Vehicle.ShouldBeNull();
        Golden.Matches(name, reading.Messages());
    }
}
