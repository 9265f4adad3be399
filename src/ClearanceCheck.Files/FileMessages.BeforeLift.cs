using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;

namespace ClearanceCheck.Files;

/// <summary>Messages about toe, and about readings that were taken before the lift.</summary>
internal static partial class FileMessages
{
    public static void ToeOutOfRange(MappingReader toe, double degrees, double most) => toe.Fault(
        "file.toe-out-of-range",
        $"The wheels would toe {(degrees < 0 ? "out" : "in")} by {NumberFormat.UpTo(Math.Abs(degrees), 1)} degrees together; none stand at more than {NumberFormat.UpTo(most, 0)}.",
        "Read both from the same place of each wheel at the hubs' height, and look at the digits: `toe: { front: 1512 mm, rear: 1514.5 mm, over: 740 mm }`.");

    public static void NotTiedBeforeLift(DiagnosticBag bag, Placed<string> corner) => bag.Add(Diagnostic.Error(
        "file.not-tied-before-lift",
        corner.Span,
        $"`{VisibleText.Of(corner.Value)}` has no height at ride height before the lift, so this tells no travel.",
        $"Add the height as the vehicle stood: `hub-to-fender: {{ {VisibleText.Of(corner.Value)}: 560 mm }}` under `before-lift`."));

    public static void NotBeyondRideBeforeLift(DiagnosticBag bag, SourceSpan typed, bool isHanging) => bag.Add(Diagnostic.Error(
        "file.not-beyond-ride-before-lift",
        typed,
        isHanging ? "A wheel that hangs is farther from its fender than at ride height." : "A wheel on its bump stop is nearer to its fender than at ride height.",
        "Measure from the middle of the hub to the fender's edge above it, all before the lift; look at the digits."));

    public static void AxisIsEnd(DiagnosticBag bag, Placed<LengthTriple> axis) => bag.Add(Diagnostic.Error(
        "file.axis-is-end",
        axis.Span,
        "The point on the stud's axis is the middle of the joint itself, so it tells no direction.",
        "Measure a second point straight ahead of the stud or bolt, as far from the joint as you can, or leave it out."));

    public static void RodLeansTooFar(DiagnosticBag bag, Placed<LengthTriple> axis, double degrees, double most) => bag.Add(Diagnostic.Error(
        "file.rod-leans-too-far",
        axis.Span,
        $"The rod would lean by {NumberFormat.UpTo(degrees, 1)} degrees from square to its stud as measured; no joint of a rod gives more than {NumberFormat.UpTo(most, 0)}.",
        "A stud or bolt crosses its rod: measure a point straight ahead of it, and both ends of the rod in the same state."));
}
