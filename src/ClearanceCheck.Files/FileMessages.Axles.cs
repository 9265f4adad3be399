using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Axles;
using ClearanceCheck.Files.Mirroring;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Messages about layouts, steering and joints of an axle.</summary>
internal static partial class FileMessages
{
    public static void AngleOutOfRange(Field field, Placed<Angle> angle, string what, double leastDegrees, double mostDegrees) => field.Fault(
        "file.angle-out-of-range",
        $"`{VisibleText.Of(angle.Span.Text)}` is out of range for {what}.",
        $"It lies between {NumberFormat.UpTo(leastDegrees, 1)} deg and {NumberFormat.UpTo(mostDegrees, 1)} deg; look at the digits.");

    public static void RangeTwice(MappingReader steering, string key) => steering.Fault(
        "file.range-twice", $"`{key}` is how far it goes both ways, and one way is typed beside it.", $"Keep `{key}`, or write both `{key}-left` and `{key}-right`.");

    public static void OtherRange(Field field, string typed, SteeringRange range) => field.Fault(
        "file.other-range", $"`{typed}` is not how this steering is set.", $"Write `{range.Key}`: {range.Meaning}; `{range.Key}-left` and `{range.Key}-right` where they differ.");

    public static void NoLinkage(MappingReader steering, AxleLayout layout) => steering.Fault(
        "file.no-linkage",
        $"No steering linkage goes with `layout: {layout.Id}`.",
        layout is FreeLayout ? "Spell out its joints, and write `steering: { turns: ..., lock: 31 deg }` with the hinge or slide that is moved." : "Leave `steering` out.");

    public static void FreeBar(Field bar) => bar.Fault(
        "file.free-bar", "A free layout spells out its anti-roll bar like any other body.", "Give each arm of the bar a hinge on what holds it and a rod to what its link goes to, among `joints`.");

    public static void TooFewPositions(MappingReader points, string axle, int positions) => points.Fault(
        "file.too-few-positions",
        $"The {axle} axle was measured at {positions} wheel position{(positions == 1 ? "" : "s")}: how it goes from there is not known.",
        "Measure both hubs and the mark in three states at least, such as hanging, at ride height and with the wheels up.");

    public static void NotSteered(Field turns, FreeJoint joint) => turns.Fault(
        "file.not-steered", $"{joint.Name} is a {Word(joint.Kind)}, and a steering turns a hinge or moves a slide.", "Name a hinge with `lock`, or a slide with `way`.");

    public static void SteersChassis(Field turns, FreeJoint joint) => turns.Fault(
        "file.steers-chassis", $"The second body of {joint.Name} is the chassis, and the steering moves a joint's second body.", $"Write `between: [ chassis, {joint.FirstBody} ]` for {joint.Name}.");

    public static void DoesNotWindUp(Field wrap, AxleLayout layout) => wrap.Fault(
        "file.does-not-wind-up", $"This is {layout.Meaning}: nothing of it winds up under drive or braking.", "Leave `axle-wrap` out; it goes with leaf springs.");

    public static void WrapOutOfRange(Field wrap) => wrap.Fault(
        "file.wrap-out-of-range",
        $"An axle winds up by some degrees each way, {NumberFormat.UpTo(AxleWrapReader.MostDegrees, 0)} at most.",
        "Write `axle-wrap: [-3 deg, 5 deg]`, nose up under drive negative and nose down under braking positive; `axle-wrap: none` leaves it out.");

    public static void NoLeafSprings(Field leaves, AxleLayout layout) => leaves.Fault(
        "file.no-leaf-springs", $"This is {layout.Meaning}: it has no leaf springs that `leaves` could describe.", "Leave `leaves` out; it goes with `layout: leaf-springs`.");

    public static void StackThinnerThanLeaf(Field stack, Placed<LengthReading> thickness) => stack.Fault(
        "file.stack-thinner-than-leaf",
        $"All leaves together can't be thinner than the main leaf alone, which is typed as {VisibleText.Of(thickness.Span.Text)}.",
        "Measure the whole pack beside the U-bolts for `stack`, and one leaf, the one with the eyes, for `thickness`; with a single leaf both are the same.");

    public static void StiffnessOutOfRange(Field field, SourceSpan typed, string least, string most) => field.Fault(
        "file.stiffness-out-of-range", $"`{VisibleText.Of(typed.Text)}` is out of range for a stiffness.", $"It lies between {least} and {most}; look at the sign, the digits and the unit.");

    public static void HoldsNothing(Field stiffness) => stiffness.Fault(
        "file.holds-nothing", "A bushing without any stiffness holds nothing.", "Type a stiffness above zero in at least one direction, or leave the bushing out.");

    public static void NotMirrored(DiagnosticBag bag, Mirror mirror, ScalarNode typed, string left, string right) => bag.Add(Diagnostic.Error(
        "file.not-mirrored",
        typed.Span,
        $"`{typed.Text}` belongs to the steering, which is never mirrored, though `side: {mirror.Side}` stands here.",
        $"Measure both sides and write `{left}` and `{right}`."));

    public static void ShortLine(DiagnosticBag bag, SourceSpan typed, string first, string second, double apartMm, double leastMm) => bag.Add(Diagnostic.Error(
        "file.short-line",
        typed,
        $"{first} and {second} are {NumberFormat.UpTo(apartMm, 1)} mm apart: too near to each other to say how the line through them runs.",
        $"Measure both again; they have to be {NumberFormat.UpTo(leastMm, 0)} mm apart at least, the farther the better."));

    public static void UpsideDown(DiagnosticBag bag, SourceSpan typed, string lower, string upper) => bag.Add(Diagnostic.Error(
        "file.upside-down", typed, $"{upper} is typed lower than {lower}: z is positive upwards.", "Swap the two points, or change the sign of z."));

    private static string Word(FreeJointKind kind) => kind.ToString().ToLowerInvariant();
}
