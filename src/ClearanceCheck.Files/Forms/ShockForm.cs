using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>A shock: two mounts, its closed and open length and, for its shape, tube and rod.</summary>
internal static class ShockForm
{
    public static PartForm? Read(PartSource part)
    {
        Place? upper = Ends.Read(part, "upper", "the middle of its upper mount", part.Joint());
        Place? lower = Ends.Read(part, "lower", "the middle of its lower mount", part.Joint());
        Placed<LengthReading>? closed = part.Reader.Required("closed", "its length fully closed, mount to mount").Length(Sizes.StopLength);
        Placed<LengthReading>? open = part.Reader.Required("open", "its length fully open, mount to mount").Length(Sizes.StopLength);
        bool sleeved = ShockSleeves.AreTyped(part.Reader);
        TypedSleeves? sleeves = sleeved ? ShockSleeves.Read(part, closed) : null;
        if (closed is not null && open is not null && closed.Value.Length >= open.Value.Length) FileMessages.ClosedNotShorter(part.Reader, closed, open);
        if (upper is null || lower is null || closed is null || open is null || (sleeved && sleeves is null)) return null;
        if (!Ends.AreSound(part, upper, lower, "the shock") || !Ends.Move(part, upper, lower, "the shock")) return null;
        Within length = Within.For(part.Within, null, Defaults.StopLengthMm, "a stop's length");
        part.Assume($"Its bushings are taken to give {NumberFormat.UpTo(Defaults.ShockBushingMm, 1)} mm at each end before it ends the travel (common practice, no source).");
        MeasuredLength shut = part.Draft.Length(part.Path("closed"), closed, length), full = part.Draft.Length(part.Path("open"), open, length);
        return new PartForm.Shock(upper, lower, shut, full, sleeves is null ? null : ShockSleeves.Place(part, sleeves, closed, open, length));
    }
}
