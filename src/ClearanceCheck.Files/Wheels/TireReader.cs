using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles.Tires;

namespace ClearanceCheck.Files.Wheels;

/// <summary>Reads what is typed about an axle's tires.</summary>
internal static class TireReader
{
    // Real tires are often up to 20 mm under the diameter of their size, which is 3 percent; common practice, no source.
    private const double MostDifference = 0.08;

    // The lowest sidewalls leave the rim nine tenths of the tire. Common practice, no source.
    private const double LargestRim = 0.95;

    internal static readonly LengthRange Circumference = Sizes.Range(1000, 5000, "the way around a tire");
    private static readonly LengthRange Width = Sizes.Range(80, 600, "a tire's section width");
    private static readonly LengthRange RimDiameter = Sizes.Range(200, 700, "a rim's diameter");
    private static readonly LengthRange RimWidth = Sizes.Range(75, 500, "a rim's width");
    private static readonly LengthRange Chains = Sizes.Range(1, 60, "what chains add");

    public static TireDescription? Read(MappingReader reader)
    {
        Field sizeField = reader.Optional("tire"), circumferenceField = reader.Optional("tire-circumference");
        Placed<TireSize>? size = ReadSize(sizeField, "`tire-circumference`, `tire-width` and `rim-diameter`");
        bool known = sizeField.IsPresent || circumferenceField.IsPresent;
        if (!known) FileMessages.NoTireSize(reader);
        bool bySize = sizeField.IsPresent || !known;
        Placed<LengthReading>? circumference = circumferenceField.Length(Circumference);
        Field widthField = bySize ? reader.Optional("tire-width") : reader.Required("tire-width", "the tire's width at its widest, which no size says");
        Field rimDiameterField = bySize ? reader.Optional("rim-diameter") : reader.Required("rim-diameter", "the rim's diameter, which no size says: 17 in");
        Field rimWidthField = reader.Optional("rim-width"), chainsField = reader.Optional("chains");
        Placed<LengthReading>? width = widthField.Length(Width), rimDiameter = rimDiameterField.Length(RimDiameter);
        Placed<LengthReading>? rimWidth = rimWidthField.Length(RimWidth), chains = chainsField.Length(Chains);
        if (sizeField.IsPresent && rimDiameterField.IsPresent) FileMessages.RimDiameterTwice(rimDiameterField);
        if (size is not null && circumference is not null && !Fits(circumferenceField, circumference, size.Value)) return null;
        bool faulty = (sizeField.IsPresent && size is null) || IsFaulty(circumferenceField, circumference) || IsFaulty(widthField, width)
            || IsFaulty(rimDiameterField, rimDiameter) || IsFaulty(rimWidthField, rimWidth) || IsFaulty(chainsField, chains);
        bool whole = size is not null || (circumference is not null && width is not null && rimDiameter is not null);
        if (rimDiameter is not null && circumference is not null && !ReachesAround(rimDiameterField, rimDiameter, circumference)) return null;
        return faulty || !whole ? null : new TireDescription(size, circumference, width, rimDiameter, rimWidth, chains);
    }

    internal static Placed<TireSize>? ReadSize(Field field, string instead)
    {
        if (field.Text() is not { } typed) return null;
        if (TireSize.TryParse(typed.Value, out TireSize? size, out TireSizeFault fault)) return new Placed<TireSize>(size, typed.Node);
        FileMessages.NoSuchTireSize(field, typed.Value, fault, instead);
        return null;
    }

    internal static bool Fits(Field field, Placed<LengthReading> circumference, TireSize size)
    {
        double typed = circumference.Value.Length.Millimetres, usual = Math.PI * size.OverallDiameterMm;
        if (Math.Abs(typed - usual) <= MostDifference * usual) return true;
        FileMessages.CircumferenceDiffers(field, usual);
        return false;
    }

    private static bool ReachesAround(Field field, Placed<LengthReading> rimDiameter, Placed<LengthReading> circumference)
    {
        double radius = circumference.Value.Length.Millimetres / (2 * Math.PI);
        if (rimDiameter.Value.Length.Millimetres / 2 < LargestRim * radius) return true;
        FileMessages.RimLargerThanTire(field, radius);
        return false;
    }

    private static bool IsFaulty(Field field, Placed<LengthReading>? read) => field.IsPresent && read is null;
}
