using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;

namespace ClearanceCheck.Files;

/// <summary>Messages about the joints and splines of driveshafts.</summary>
internal static partial class FileMessages
{
    public static void AheadIsEnd(DiagnosticBag bag, Placed<LengthTriple> ahead) => bag.Add(Diagnostic.Error(
        "file.ahead-is-end",
        ahead.Span,
        "The point ahead is the middle of the joint itself, so it tells no direction.",
        "Measure a second point on the axis of the flange or output that the joint is bolted to, as far from the joint as you can, or leave `ahead` out."));

    public static void BentTooFar(DiagnosticBag bag, Placed<LengthTriple> ahead, double degrees, double most) => bag.Add(Diagnostic.Error(
        "file.bent-too-far",
        ahead.Span,
        $"The joint would stand at {NumberFormat.UpTo(degrees, 1)} degrees as measured; no driveshaft's joint bends beyond {NumberFormat.UpTo(most, 0)}.",
        "Measure the point on the axis of the flange or output, straight before or behind the joint, and the ends of the shaft in the same state."));

    public static void EngagedBeyondSpline(MappingReader reader, Placed<LengthReading> engaged, Placed<LengthReading> length) => reader.Context.Diagnostics.Add(Diagnostic.Error(
        "file.engaged-beyond-spline",
        engaged.Span,
        $"More of the splines is engaged ({Millimetres(engaged.Value.Length.Millimetres)}) than there is ({Millimetres(length.Value.Length.Millimetres)}).",
        "Type the shorter of the two splined lengths as `length`, and how far they reach into each other as `engaged`.",
        new RelatedSpan(length.Span, "length")));

    public static void PhaseOutOfRange(Field field, double most) => field.Fault(
        "file.phase-out-of-range",
        $"Yokes stand at most {NumberFormat.UpTo(most, 0)} degrees to each other: turned further they come back to the same plane.",
        "Type how far the fork at the second end is turned against the one at the first, 0 deg for forks in one plane.");

    public static void AfterNoShaft(DiagnosticBag bag, SourceSpan at, string id, IEnumerable<string> shafts)
    {
        string[] others = [.. shafts];
        bag.Add(Diagnostic.Error(
            "file.after-no-shaft",
            at,
            $"`{id}` is no driveshaft that this one could follow.",
            others.Length == 0 ? "Describe the piece before the centre bearing as a driveshaft of its own, or leave `after` out." : $"Name the piece before the centre bearing. Other driveshafts of the file: {Listed(others)}."));
    }

    public static void FollowedTwice(DiagnosticBag bag, SourceSpan at, string id, string other) => bag.Add(Diagnostic.Error(
        "file.followed-twice", at, $"`{id}` is already followed by `{other}`, and a shaft drives one piece behind its bearing.", "Name the piece that ends where this one begins."));

    public static void PieceMoves(DiagnosticBag bag, SourceSpan at, string id, string next, string body) => bag.Add(Diagnostic.Error(
        "file.piece-moves",
        at,
        $"`{next}` follows it, so it ends in a centre bearing; but one of its ends is on {body}.",
        "Put both ends of the piece before a centre bearing on the chassis or the engine."));

    public static void DoesNotBeginThere(DiagnosticBag bag, SourceSpan at, string id, double apartMm, double mostMm, SourceSpan end) => bag.Add(Diagnostic.Error(
        "file.does-not-begin-there",
        at,
        $"`{id}` ends {Millimetres(apartMm)} from where this shaft begins; at a centre bearing it is {Millimetres(mostMm)} at most.",
        "Name the piece that ends in the bearing before this one's first joint, or measure both ends again.",
        new RelatedSpan(end, "its second end")));

    public static void ShaftsInACircle(DiagnosticBag bag, SourceSpan at) => bag.Add(Diagnostic.Error(
        "file.shafts-in-a-circle", at, "These driveshafts follow each other in a circle.", "Leave `after` out at the piece that is bolted to the gearbox."));

    public static void AheadBehindBearing(DiagnosticBag bag, SourceSpan at, string id) => bag.Add(Diagnostic.Error(
        "file.ahead-behind-bearing", at, $"The joint at its first end is bolted to `{id}`, whose own line is the axis there.", "Leave `ahead` out at this end."));

    public static void JointAtBearing(DiagnosticBag bag, SourceSpan at, string key, string next) => bag.Add(Diagnostic.Error(
        "file.joint-at-bearing",
        at,
        $"`{next}` follows this shaft: behind the centre bearing the joint is the first one of `{next}`, and there is no other.",
        $"Leave `{key}` out here, and type it at the first end of `{next}` where it fits."));
}
