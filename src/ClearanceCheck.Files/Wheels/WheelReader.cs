using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Units;

namespace ClearanceCheck.Files.Wheels;

/// <summary>Reads <c>wheel</c> of an axle: tire, rim and inner faces, both sides alike.</summary>
internal static class WheelReader
{
    // A mounting face farther from the middle than this is a slip of the sign or the unit. Common practice, no source.
    private const double BeyondRimMm = 50;

    // A rim's flange outside its bead seat, common practice, and room for a measurement.
    private const double FlangeMm = 12.7, RoomMm = 20;

    private static readonly LengthRange Offset = Sizes.Range(-300, 300, "a wheel's offset");

    public static WheelDescription? Read(MappingReader reader, VehicleDraft draft)
    {
        double? within = Within.Read(reader);
        TireDescription? tire = TireReader.Read(reader);
        Field offsetField = reader.Required("offset", "how far the rim's middle lies inboard of the mounting face; negative when it lies outboard");
        Placed<LengthReading>? offset = offsetField.Length(Offset);
        bool hasRim = reader.Has("barrel") | reader.Has("barrel-wall") | reader.Has("disc") | reader.Has("disc-wall");
        RimFaces? rim = hasRim ? ReadFaces(reader, draft) : null;
        if (tire is null || offset is null || (hasRim && rim is null)) return null;
        bool sound = OffsetFits(offsetField, offset, tire) && (rim is null || FacesFit(reader, rim, tire, offset));
        return sound ? new WheelDescription(tire, offset, rim, within) : null;
    }

    private static RimFaces? ReadFaces(MappingReader reader, VehicleDraft draft)
    {
        Field barrelField = reader.Required("barrel", "the barrel's inner face as radius and place outboard of the mounting face, corner by corner");
        IReadOnlyList<TypedCorner>? barrel = ProfileReader.Read(barrelField, draft);
        Field wallField = reader.Optional("barrel-wall"), discField = reader.Optional("disc");
        Placed<LengthReading>? wall = wallField.Length(Sizes.Wall);
        IReadOnlyList<TypedCorner>? disc = ProfileReader.Read(discField, draft);
        Field discWallField = discField.IsPresent ? reader.Optional("disc-wall") : default;
        Placed<LengthReading>? discWall = discField.IsPresent ? discWallField.Length(Sizes.Wall) : null;
        if (!discField.IsPresent && reader.Has("disc-wall")) reader.Required("disc", "the disc's inner face, whose wall is typed");
        bool faulty = (wallField.IsPresent && wall is null) || (discField.IsPresent && disc is null) || (discWallField.IsPresent && discWall is null);
        return barrel is null || faulty ? null : new RimFaces(barrel, wall, disc ?? [], discWall);
    }

    private static bool OffsetFits(Field field, Placed<LengthReading> offset, TireDescription tire)
    {
        if (tire.RimWidthMm is not { } width || Math.Abs(offset.Value.Length.Millimetres) <= (width / 2) + BeyondRimMm) return true;
        FileMessages.OffsetBeyondRim(field, width);
        return false;
    }

    private static bool FacesFit(MappingReader reader, RimFaces rim, TireDescription tire, Placed<LengthReading> offset)
    {
        bool sound = true;
        double bead = tire.RimDiameterMm / 2, widest = rim.Barrel.Max(c => c.RadiusMm);
        foreach (TypedCorner corner in rim.Barrel.Where(c => c.RadiusMm > bead))
        {
            FileMessages.BarrelWiderThanBead(corner.Field, bead);
            sound = false;
        }

        foreach (TypedCorner corner in rim.Disc.Where(c => c.RadiusMm > widest))
        {
            FileMessages.DiscBeyondBarrel(corner.Field, widest);
            sound = false;
        }

        if (tire.RimWidthMm is not { } width) return sound;
        double middle = -offset.Value.Length.Millimetres, half = (width / 2) + FlangeMm;
        if (rim.Barrel.All(c => Math.Abs(c.AlongMm - middle) <= half + RoomMm)) return sound;
        FileMessages.BarrelBesideRim(reader.Optional("barrel"), middle - half, middle + half);
        return false;
    }
}
