using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>Reads tube and rod of a shock.</summary>
internal static class ShockSleeves
{
    // A shock with a short stroke still has a rod.
    private const double LeastRodMm = 10;

    private static readonly Dictionary<string, bool> AtUpper = new(StringComparer.Ordinal) { ["upper"] = true, ["lower"] = false };

    public static bool AreTyped(MappingReader reader) => reader.Has("tube") | reader.Has("rod") | reader.Has("tube-length") | reader.Has("tube-at");

    public static TypedSleeves? Read(PartSource part, Placed<LengthReading>? closed)
    {
        Placed<LengthReading>? tube = part.Reader.Required("tube", "the outside diameter of its tube; a shape needs both tube and rod").Length(Sizes.Diameter);
        Placed<LengthReading>? rod = part.Reader.Required("rod", "the outside diameter of its rod; a shape needs both tube and rod").Length(Sizes.Diameter);
        Field lengthField = part.Reader.Optional("tube-length"), atField = part.Reader.Optional("tube-at");
        Placed<LengthReading>? length = lengthField.Length(Sizes.TubeLength);
        Placed<bool>? at = atField.Choice(AtUpper);
        bool sound = true;
        if (tube is not null && rod is not null && rod.Value.Length >= tube.Value.Length)
        {
            FileMessages.RodNotThinner(part.Reader.Optional("rod"));
            sound = false;
        }

        if (length is not null && closed is not null && length.Value.Length > closed.Value.Length)
        {
            FileMessages.TubeLongerThanClosed(lengthField, closed);
            sound = false;
        }

        if (!sound || tube is null || rod is null || (lengthField.IsPresent && length is null) || (atField.IsPresent && at is null)) return null;
        return new TypedSleeves(tube, rod, length, at?.Value);
    }

    public static Sleeves Place(PartSource part, TypedSleeves typed, Placed<LengthReading> closed, Placed<LengthReading> open, Within length)
    {
        double half = Math.Max(length.HalfWidthMm, closed.Value.HalfStepMm), openHalf = Math.Max(length.HalfWidthMm, open.Value.HalfStepMm);
        double tubeMm = (typed.Length ?? closed).Value.Length.Millimetres;
        Within tape = part.Tape();
        double tubeHalf = typed.Length is { } t ? Math.Max(tape.HalfWidthMm, t.Value.HalfStepMm) : half;
        double rodMm = Math.Max(LeastRodMm, open.Value.Length.Millimetres - tubeMm);
        if (typed.AtUpper is null) part.Draft.Assume(part.Path("tube-at"), "Which end carries the tube not typed: taken as the lower one.");
        MeasuredLength tubeLength = typed.Length is null
            ? AssumedLength(part, tubeMm, half, length.IsAssumed)
            : part.Draft.Length(part.Path("tube-length"), typed.Length, tape);
        part.Draft.Assume(
            part.Path("rod-length"),
            $"The rod is taken as {NumberFormat.UpTo(rodMm, 1)} mm long from its joint, {NumberFormat.UpTo(tubeHalf + openHalf, 1)} mm each way: the open length less the tube, {NumberFormat.UpTo(LeastRodMm, 0)} mm at least.");
        return new Sleeves(
            typed.AtUpper ?? false,
            part.Size("tube", typed.Tube),
            tubeLength,
            part.Size("rod", typed.Rod),
            part.Draft.Computed(part.Path("rod-length"), rodMm, tubeHalf + openHalf, true));
    }

    private static MeasuredLength AssumedLength(PartSource part, double closedMm, double half, bool halfIsAssumed)
    {
        part.Draft.Assume(
            part.Path("tube-length"),
            $"Length of the tube not typed: taken as the closed length, {NumberFormat.UpTo(closedMm, 1)} mm from its joint; a real tube is shorter, so this is on the safe side.");
        return part.Draft.Computed(part.Path("tube-length"), closedMm, half, halfIsAssumed);
    }
}
