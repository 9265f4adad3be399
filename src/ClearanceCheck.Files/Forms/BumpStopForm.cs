using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>A bump stop: where it sits, where it meets the axle, how high it is and what it gives.</summary>
internal static class BumpStopForm
{
    private static readonly LengthRange Crush = Sizes.Range(0, 500, "what a stop gives when crushed");

    private static readonly Dictionary<string, double> CrushShares = new(StringComparer.Ordinal)
    {
        ["rubber"] = Defaults.RubberCrush,
        ["foam"] = Defaults.FoamCrush,
        ["metal"] = 0,
    };

    public static PartForm? Read(PartSource part)
    {
        Within surface = part.Surface("a plate's surface");
        Place? frame = Ends.Read(part, "frame", "where it is seated on the frame", surface);
        Place? axle = Ends.Read(part, "axle", "the middle of the pad it meets on the axle", surface);
        Placed<LengthReading>? height = part.Reader.Required("height", "its free height from the seat").Length(Sizes.StopLength);
        Field material = part.Reader.Optional("material"), typedCrush = part.Reader.Optional("crush");
        Placed<double>? share = material.Choice(CrushShares);
        Placed<LengthReading>? crush = typedCrush.Length(Crush);
        if (frame is null || axle is null || height is null || (material.IsPresent && share is null) || (typedCrush.IsPresent && crush is null)) return null;
        if (!Ends.Move(part, frame, axle, "the bump stop")) return null;
        if (crush is not null && crush.Value.Length >= height.Value.Length) FileMessages.CrushedToNothing(typedCrush);
        Within length = Within.For(part.Within, null, Defaults.StopLengthMm, "a stop's height");
        part.Assume("It acts straight up and down and stops the axle when its typed or assumed crush is used up.");
        MeasuredLength free = part.Draft.Length(part.Path("height"), height, length);
        MeasuredLength given = crush is null
            ? AssumedCrush(part, height.Value.Length.Millimetres, share?.Value)
            : part.Draft.Length(part.Path("crush"), crush, Within.For(part.Within, null, Defaults.CrushMm, "a stop's crush"));
        return new PartForm.BumpStop(frame, axle, free, given);
    }

    private static MeasuredLength AssumedCrush(PartSource part, double heightMm, double? share)
    {
        double crush = heightMm * (share ?? 0), half = Math.Min(Defaults.CrushMm, crush);
        string what = share is null ? "No material typed: taken as metal, which gives nothing" : $"Crush not typed: taken to give {NumberFormat.UpTo(crush, 1)} mm";
        part.Draft.Assume(part.Path("crush"), $"{what}, {NumberFormat.UpTo(half, 1)} mm each way (common practice, no source).");
        return part.Draft.Computed(part.Path("crush"), crush, half, true);
    }
}
