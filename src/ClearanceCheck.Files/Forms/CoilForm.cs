using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>A coil spring between two seats.</summary>
internal static class CoilForm
{
    private const double FewestTurns = 1, MostTurns = 30;

    public static PartForm? Read(PartSource part)
    {
        Within seat = Within.For(part.Within, part.Draft.FileWithin, Defaults.CoilSeatMm, "the middle of a coil's seat");
        Place? lower = Ends.Read(part, "lower", "the middle of its lower seat", seat);
        Place? upper = Ends.Read(part, "upper", "the middle of its upper seat", seat);
        Placed<LengthReading>? diameter = part.Reader.Required("outside-diameter", "its diameter over the wire").Length(Sizes.Diameter);
        Field wireField = part.Reader.Required("wire", "how thick its wire is");
        Placed<LengthReading>? wire = wireField.Length(Sizes.Wire);
        Field turnsField = part.Reader.Required("turns", "how often the wire winds around between the seats, such as 5.5");
        Placed<double>? turns = turnsField.Number();
        Field solidField = part.Reader.Optional("solid-height"), freeField = part.Reader.Optional("free-length");
        Placed<LengthReading>? solidHeight = solidField.Length(Sizes.StopLength), free = freeField.Length(Sizes.StopLength);
        bool sound = TurnsAreSound(turnsField, turns) & WireFits(wireField, wire, diameter);
        if (!sound || lower is null || upper is null || diameter is null || wire is null || turns is null || !Ends.AreSound(part, lower, upper, "the spring")) return null;
        if ((solidField.IsPresent && solidHeight is null) || (freeField.IsPresent && free is null) || !StopIsSound(part, lower, upper, solidField, solidHeight, freeField, free)) return null;
        double solid = turns.Value * wire.Value.Length.Millimetres, apart = Ends.ApartMm(part, lower, upper);
        if (solid >= apart)
        {
            FileMessages.CoilBound(part, solid, apart);
            return null;
        }

        part.Assume("Taken as a cylinder of wire between its seats, evenly wound, that leans and stretches with them; a barrel or cone shape is not covered.");
        var coil = new PartForm.Coil(lower, upper, part.Size("outside-diameter", diameter), part.Size("wire", wire), turns.Value);
        return WithLengths(part, coil, solidHeight, free);
    }

    private static bool StopIsSound(
        PartSource part, Place lower, Place upper, Field solidField, Placed<LengthReading>? solid, Field freeField, Placed<LengthReading>? free)
    {
        if (solid is null) return true;
        if (!Ends.Move(part, lower, upper, "the spring")) return false;
        double solidMm = solid.Value.Length.Millimetres, apart = Ends.ApartMm(part, lower, upper);
        if (solidMm >= apart) FileMessages.SolidAsMeasured(solidField, apart);
        else if (free is not null && free.Value.Length.Millimetres <= solidMm) FileMessages.FreeNotLonger(freeField);
        else return true;
        return false;
    }

    private static PartForm.Coil WithLengths(PartSource part, PartForm.Coil coil, Placed<LengthReading>? solid, Placed<LengthReading>? free)
    {
        Within length = Within.For(part.Within, null, Defaults.StopLengthMm, "a stop's length");
        if (solid is not null) part.Draft.Assume(part.Path("solid-height"), "It ends the travel where the middles of its seats are its solid height apart.");
        if (free is not null) part.Draft.Assume(part.Path("free-length"), "Whether it stays on its seats is told by its free length less the straight line between their middles: what it bows or tilts is left out.");
        return coil with
        {
            SolidHeight = solid is null ? null : part.Draft.Length(part.Path("solid-height"), solid, length),
            FreeLength = free is null ? null : part.Draft.Length(part.Path("free-length"), free, length),
        };
    }

    private static bool TurnsAreSound(Field field, Placed<double>? turns)
    {
        if (turns is null or { Value: >= FewestTurns and <= MostTurns }) return true;
        FileMessages.TurnsOutOfRange(field, FewestTurns, MostTurns);
        return false;
    }

    private static bool WireFits(Field field, Placed<LengthReading>? wire, Placed<LengthReading>? diameter)
    {
        if (wire is null || diameter is null || wire.Value.Length.Millimetres < diameter.Value.Length.Millimetres / 2) return true;
        FileMessages.WireTooThick(field);
        return false;
    }
}
