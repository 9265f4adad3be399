using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>A driveshaft: a tube and a slip that slide in each other between two joints.</summary>
internal static class ShaftForm
{
    private static readonly Dictionary<string, bool> AtFirst = new(StringComparer.Ordinal) { ["first"] = true, ["second"] = false };

    public static PartForm? Read(PartSource part)
    {
        ShaftEndTyped? first = ShaftEndReader.Read(part, "first", "the middle of the joint at its first end");
        ShaftEndTyped? second = ShaftEndReader.Read(part, "second", "the middle of the joint at its second end");
        TypedTube? tube = part.Reader.Required("tube", "its tube").Mapping(r => ReadTube(r, "from its joint to its open end", takesEnd: true));
        TypedTube? slip = part.Reader.Required("slip", "what slides in the tube").Mapping(r => ReadTube(r, "from its joint to its inner end", takesEnd: false));
        ShaftDriveline? driveline = ShaftDriveline.Read(part);
        if (first is null || second is null || tube is null || slip is null || driveline is null) return null;
        if (!Ends.AreSound(part, first.Place, second.Place, "the driveshaft") || !LengthsFit(part, tube, slip, Ends.ApartMm(part, first.Place, second.Place))) return null;
        if (!(ShaftEndReader.IsSound(part, first, second) & ShaftEndReader.IsSound(part, second, first))) return null;
        Within tape = part.Tape();
        part.Assume("Taken as two straight tubes that slide in each other; nothing thicker, such as a joint or a boot, is part of it.");
        var sleeves = new Sleeves(
            tube.AtFirst,
            part.Size("tube/diameter", tube.Diameter),
            part.Draft.Length(part.Path("tube/length"), tube.Length, tape),
            part.Size("slip/diameter", slip.Diameter),
            part.Draft.Length(part.Path("slip/length"), slip.Length, tape));
        return driveline.On(part, new PartForm.Shaft(first.Place, second.Place, sleeves), first.Ahead, second.Ahead);
    }

    private static TypedTube? ReadTube(MappingReader reader, string length, bool takesEnd)
    {
        Placed<LengthReading>? diameter = reader.Required("diameter", "its outside diameter").Length(Sizes.Diameter);
        Placed<LengthReading>? typed = reader.Required("length", $"its length {length}").Length(Sizes.TubeLength);
        Placed<bool>? atFirst = takesEnd ? reader.Required("at", "the end whose joint carries it: first or second").Choice(AtFirst) : null;
        return diameter is null || typed is null || (takesEnd && atFirst is null) ? null : new TypedTube(atFirst?.Value ?? false, diameter, typed);
    }

    private static bool LengthsFit(PartSource part, TypedTube tube, TypedTube slip, double apartMm)
    {
        double tubeMm = tube.Length.Value.Length.Millimetres, slipMm = slip.Length.Value.Length.Millimetres;
        if (tubeMm >= apartMm) FileMessages.LongerThanShaft(part.Draft.Diagnostics, tube.Length, "tube", tubeMm, apartMm);
        else if (slipMm >= apartMm) FileMessages.LongerThanShaft(part.Draft.Diagnostics, slip.Length, "slip", slipMm, apartMm);
        else if (tubeMm + slipMm <= apartMm) FileMessages.SlidesApart(part, tubeMm + slipMm, apartMm);
        else return true;
        return false;
    }

    private sealed record TypedTube(bool AtFirst, Placed<LengthReading> Diameter, Placed<LengthReading> Length);
}
