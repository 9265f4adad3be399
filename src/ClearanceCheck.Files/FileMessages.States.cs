using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Files.Mirroring;
using ClearanceCheck.Files.States;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Messages about states, mirrors and readings beside the model.</summary>
internal static partial class FileMessages
{
    public static void NotTiedToRide(DiagnosticBag bag, SourceSpan place, string corner, string state, bool rideIsMissing) => bag.Add(Diagnostic.Error(
        "file.not-tied-to-ride",
        place,
        $"What was measured in the state {state} has no place on the axle: how far that is from ride height at {corner} is not known.",
        $"Write `hub-to-fender: {{ {corner}: ... }}` in the state {(rideIsMissing ? MeasuringStates.Ride : state)}."));

    public static void HangsAboveRide(DiagnosticBag bag, string state, string corner, Placed<LengthReading> hanging, Placed<LengthReading> ride) => bag.Add(Diagnostic.Error(
        "file.hangs-above-ride",
        hanging.Span,
        $"In the state {state} the vehicle hangs on its frame, and at {corner} the hub is nearer to the fender than at ride height: the wheel would hang above where it stands.",
        "Exchange the two readings, or read both again: a hanging wheel is farther from its fender.",
        new RelatedSpan(ride.Span, "at ride height")));

    public static void NoCorner(DiagnosticBag bag, Placed<string> corner) => bag.Add(Diagnostic.Error(
        "file.no-corner", corner.Span, $"`{corner.Value}` names no corner.", "Write the axle's name and the side: `rear-left`."));

    public static void WhichState(MappingReader states, string axle, IEnumerable<string> typed) => states.Fault(
        "file.which-state",
        $"Points of the axle {axle} are typed in {string.Join(" and ", typed)}, and none of them is the file's `measured-in`: which one is the model made of?",
        "Write `measured-in` below the axle; points of the other states are then compared with the model.");

    public static void MixedStates(DiagnosticBag bag, string axle, string state, IReadOnlyList<(string Key, string State, ScalarNode At)> elsewhere) => bag.Add(Diagnostic.Error(
        "file.mixed-states",
        elsewhere[0].At.Span,
        $"All points of the layout of {axle} have to be measured in one state: {Listed(elsewhere.Select(e => e.Key))} {(elsewhere.Count == 1 ? "is" : "are")} typed in {Listed(elsewhere.Select(e => e.State).Distinct())} only, the others in {state}.",
        $"Measure {(elsewhere.Count == 1 ? "it" : "them")} in {state} too, or all of the axle in one other state; a point typed in two states is compared."));

    public static void TurnedWithItsAxle(PartSource part, string what, Axle axle)
    {
        string message = $"Measured in the state {part.MeasuredIn}, but the axle {axle.Name} in {axle.MeasuredIn}: {what}, so it can't be turned with the axle.";
        string help = $"Measure it in {axle.MeasuredIn}, or describe it by points: `path`, `outline` or `axis`.";
        if (part.State is { } state) part.Draft.Diagnostics.Add(Diagnostic.Error("file.turned-with-its-axle", state.Span, message, help));
        else part.Reader.Fault("file.turned-with-its-axle", message, help);
    }

    public static void MirrorWithoutSide(Field within) => within.Fault(
        "file.mirror-without-side", "`mirror-within` says how near a mirror image is, but nothing is mirrored here.", "Write `side: left` or `side: right` for the side that was measured, or leave it out.");

    public static void NeverMirrored(Field side, PartKind kind) => side.Fault(
        "file.never-mirrored", $"This is {kind.Meaning}, and such a thing is never mirrored: left and right differ on real vehicles.", $"Measure the other side and describe it as a part of its own. Mirrored may be: {Listed(PartKinds.All.Where(k => k.IsMirrorable).Select(k => k.Id))}.");

    public static void SideInName(DiagnosticBag bag, Mirror mirror, IReadOnlyList<ScalarNode> keys) => bag.Add(Diagnostic.Error(
        "file.side-in-name",
        keys[0].Span,
        $"With `side: {mirror.Side}` the points of that side are typed without its word, and here {(keys.Count == 1 ? "is" : "are")} {Listed(keys.Select(k => k.Text))}.",
        $"Write {Listed(keys.Select(k => $"`{Mirror.Bare(k.Text)}`"))}; for two sides that were both measured leave `side` out."));

    public static void FreeIsNotMirrored(Field side) => side.Fault(
        "file.free-is-not-mirrored", "A free layout spells out both sides, so nothing of it is mirrored.", "Leave `side` and `mirror-within` out.");

    public static void SideTypedTwice(DiagnosticBag bag, SourceSpan span, string id, string side) => bag.Add(Diagnostic.Error(
        "file.side-typed-twice", span, $"With `side: {side}` this part is `{id}-{side}`, and a part of that id is typed as well.", $"Leave one of them out, or give the part that is typed as well another id; only the other side may be typed too."));

    public static void MirrorOfTilted(Mirror mirror, string axle, string state, double tiltMm, double offMm) => mirror.Place.Fault(
        "file.mirror-of-tilted",
        $"In the state {state} one wheel of {axle} stood {Millimetres(tiltMm)} lower than the other against ride height: a mirror image would be {Millimetres(offMm)} off, more than its {Millimetres(mirror.HalfWidthMm)}.",
        "Measure in a state in which the axle stands level, or measure both sides.");

    public static void NoSuchImage(Field side, string body, string image) => side.Fault(
        "file.no-such-image", $"The mirror image of {body} would be {image}, and there is no such body.", "Measure both sides, or describe the other body.");

    public static void GapOfOne(Field between, string id) => between.Fault(
        "file.gap-of-one", $"A gap lies between two things, and both are {id}.", "Name the two parts it was read between.");

    public static void GapOfMirrored(Field part, string id) => part.Fault(
        "file.gap-of-mirrored", $"`{id}` stands for a part on each side.", $"Write `{id}-left` or `{id}-right`, whichever side it was read on.");

    public static void PitchOutOfRange(Field field, double mostDegrees) => field.Fault(
        "file.pitch-out-of-range", $"Rails don't lean more than {NumberFormat.UpTo(mostDegrees, 0)} degrees while a vehicle is measured.", "Write the angle of the frame rails against level, nose down positive: `rail-pitch: 0.4 deg`.");

    private static string Listed(IEnumerable<string> words) => words.ToArray() switch
    {
        [var one] => one,
        [.. var most, var last] => $"{string.Join(", ", most)} and {last}",
        _ => "",
    };
}
