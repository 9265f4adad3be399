using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Units;

namespace ClearanceCheck.Files;

/// <summary>Messages about parts between two places.</summary>
internal static partial class FileMessages
{
    public static void SamePlaceTwice(MappingReader reader, string what) => reader.Fault(
        "file.same-place-twice", $"Both ends of {what} are typed as the same point.", "Measure both ends.");

    public static void TwoAxles(PartSource part, string what, string first, string second) => part.Reader.Fault(
        "file.two-axles",
        $"The ends of {what} are on {first} and {second}, bodies of two axles; one axle is moved at a time.",
        "Divide it where it is held by the chassis, and describe both pieces.");

    public static void EndsDoNotMove(PartSource part, string what, string first, string second) => part.Reader.Fault(
        "file.ends-do-not-move",
        first == second
            ? $"Both ends of {what} are on {first}, so it would end no travel."
            : $"The ends of {what} are on {first} and {second}, which do not move against each other, so it would end no travel.",
        "Name the body of the axle at the end that is on the axle.");

    public static void CrushedToNothing(Field field) => field.Fault(
        "file.crushed-to-nothing", "The stop can't be crushed by its whole height.", "Type what it gives under load: about half of its height for rubber.");

    public static void ClosedNotShorter(MappingReader reader, Placed<LengthReading> closed, Placed<LengthReading> open) => reader.Fault(
        "file.closed-not-shorter",
        "The closed length is not shorter than the open one.",
        "Measure mount to mount, once fully closed and once fully open.",
        new RelatedSpan(closed.Span, "closed"),
        new RelatedSpan(open.Span, "open"));

    public static void RodNotThinner(Field rod) => rod.Fault(
        "file.rod-not-thinner", "The rod is not thinner than the tube it slides in.", "Type both as outside diameters, the tube's in `tube`.");

    public static void TubeLongerThanClosed(Field length, Placed<LengthReading> closed) => length.Fault(
        "file.tube-longer-than-closed",
        "The tube is longer than the shock fully closed.",
        "Measure the tube from the middle of its mount to its open end, or leave `tube-length` out.",
        new RelatedSpan(closed.Span, "closed"));

    public static void LongerThanShaft(DiagnosticBag bag, Placed<LengthReading> length, string what, double lengthMm, double apartMm) => bag.Add(Diagnostic.Error(
        "file.longer-than-shaft",
        length.Span,
        $"The {what} is {Millimetres(lengthMm)} long, and the joints of the shaft are {Millimetres(apartMm)} apart as measured: it would reach past the other joint.",
        "Measure from the middle of its own joint to its other end."));

    public static void SlidesApart(PartSource part, double togetherMm, double apartMm) => part.Reader.Fault(
        "file.slides-apart",
        $"Tube and slip are {Millimetres(togetherMm)} long together, and the joints are {Millimetres(apartMm)} apart as measured: they would not reach into each other.",
        "Measure the slip to its inner end, as far as it reaches into the tube.");

    public static void TurnsOutOfRange(Field field, double fewest, double most) => field.Fault(
        "file.turns-out-of-range",
        $"A spring has {NumberFormat.UpTo(fewest, 0)} to {NumberFormat.UpTo(most, 0)} turns.",
        "Count how often the wire winds around from seat to seat, with halves and quarters.");

    public static void WireTooThick(Field field) => field.Fault(
        "file.wire-too-thick", "The wire is as thick as half the spring's diameter, so the spring has no inside.", "Measure the wire, not the coil; `outside-diameter` is over the wire.");

    public static void CoilBound(PartSource part, double solidMm, double apartMm) => part.Reader.Fault(
        "file.coil-bound",
        $"Its turns would lie on each other as measured: turns times wire is {Millimetres(solidMm)}, and the seats are {Millimetres(apartMm)} apart.",
        "Count the turns and measure the wire and both seats again.");

    public static void NothingToSteer(PartSource part, string axle) => part.Reader.Fault(
        "file.nothing-to-steer", $"The axle {axle} is not steered, so a steering stop on it would end nothing.", "Write `steering` below the axle, or leave the stop out.");

    public static void SolidAsMeasured(Field field, double apartMm) => field.Fault(
        "file.solid-as-measured",
        $"The spring would be solid as measured: its seats are {Millimetres(apartMm)} apart.",
        "Type its length with all turns on each other; measure both seats again.");

    public static void FreeNotLonger(Field field) => field.Fault(
        "file.free-not-longer", "The spring is not longer free of load than with all turns on each other.", "Type its length off the vehicle in `free-length`, and turns on turns in `solid-height`.");

    private static string Millimetres(double mm) => NumberFormat.UpTo(mm, 1) + " mm";
}
