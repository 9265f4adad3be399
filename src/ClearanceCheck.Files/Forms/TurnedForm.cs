using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>Something round about an axis: two points of the axis, a profile and, for what is hollow, a wall.</summary>
internal static class TurnedForm
{
    /// <summary>Points nearer to each other than this don't give a direction, mm. Common practice, no source.</summary>
    public const double LeastAxisMm = 20;

    public static PartForm? Read(PartSource part)
    {
        Field axisField = part.Reader.Required("axis", "two points on its axis; places along it count from the first towards the second");
        IReadOnlyList<Placed<LengthTriple>>? axis = axisField.List(f => f.Triple(), 2)?.Value;
        Field profileField = part.Reader.Required("profile", "its outline as radius and place along the axis, corner by corner");
        IReadOnlyList<TypedCorner>? profile = ProfileReader.Read(profileField, part.Draft);
        Field wallField = part.Reader.Optional("wall");
        Placed<LengthReading>? wall = wallField.Length(Sizes.Wall);
        bool sound = AxisIsLong(axisField, axis) & HasBody(profileField, profile) & WallFits(wallField, wall, profile);
        if (!sound || axis is null || profile is null || (wallField.IsPresent && wall is null)) return null;
        ImmutableArray<MeasuredPoint> points = part.Points("axis", axis, part.Joint());
        ImmutableArray<ProfileCorner> corners = ProfileReader.Place(part.Path("profile"), profile, part.Surface("a surface of a housing"), part.Draft);
        part.Assume(wall is null
            ? "Taken as full from its profile to its axis."
            : "Taken as hollow: its profile is the outer face and the wall lies inside it.");
        return new PartForm.Turned(points[0], points[1], corners, wall is null ? null : part.Size("wall", wall));
    }

    private static bool AxisIsLong(Field field, IReadOnlyList<Placed<LengthTriple>>? axis)
    {
        if (axis is null) return true;
        double apart = (axis[1].Value.Millimetres() - axis[0].Value.Millimetres()).Length;
        if (apart >= LeastAxisMm) return true;
        FileMessages.ShortAxis(field, apart, LeastAxisMm);
        return false;
    }

    private static bool HasBody(Field field, IReadOnlyList<TypedCorner>? profile)
    {
        if (profile is null || profile.Any(c => c.RadiusMm > 0)) return true;
        FileMessages.ProfileOnAxis(field);
        return false;
    }

    private static bool WallFits(Field field, Placed<LengthReading>? wall, IReadOnlyList<TypedCorner>? profile)
    {
        if (wall is null || profile is null || profile.All(c => c.RadiusMm == 0)) return true;
        if (wall.Value.Length.Millimetres < profile.Max(c => c.RadiusMm)) return true;
        FileMessages.WallFillsAll(field);
        return false;
    }
}
