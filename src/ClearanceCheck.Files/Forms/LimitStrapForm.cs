using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>A limit strap: two ends and its length; it stretches when taut.</summary>
internal static class LimitStrapForm
{
    public static PartForm? Read(PartSource part)
    {
        Place? upper = Ends.Read(part, "upper", "the middle of the bolt that holds its upper end", part.Joint());
        Place? lower = Ends.Read(part, "lower", "the middle of the bolt that holds its lower end", part.Joint());
        Placed<LengthReading>? length = part.Reader.Required("length", "its length pulled straight by hand, bolt to bolt").Length(Sizes.StopLength);
        if (upper is null || lower is null || length is null) return null;
        if (!Ends.AreSound(part, upper, lower, "the strap") || !Ends.Move(part, upper, lower, "the strap")) return null;
        double stretch = Defaults.StrapStretch * length.Value.Length.Millimetres, half = Defaults.StrapStretchWithin * stretch;
        part.Draft.Assume(
            part.Path("stretch"),
            $"It is taken to stretch by {NumberFormat.UpTo(100 * Defaults.StrapStretch, 0)} % of its length when taut, {NumberFormat.UpTo(stretch, 1)} mm, {NumberFormat.UpTo(half, 1)} mm each way (common practice, no source).");
        return new PartForm.LimitStrap(
            upper,
            lower,
            part.Draft.Length(part.Path("length"), length, Within.For(part.Within, null, Defaults.StrapLengthMm, "a strap's length")),
            part.Draft.Computed(part.Path("stretch"), stretch, half, true));
    }
}
