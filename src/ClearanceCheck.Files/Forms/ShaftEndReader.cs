using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Geometry;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>Reads the ends of a driveshaft: a place, and a point ahead of it on the axis of the flange or output that its joint is bolted to.</summary>
internal static class ShaftEndReader
{
    // A joint that stands at more than this as measured is no joint: its points are wrong. Common practice, no source.
    private const double MostDegrees = 60;

    public static ShaftEndTyped? Read(PartSource part, string key, string what) => part.Reader.Required(key, what).Mapping(r =>
    {
        Field field = r.Optional("ahead");
        Placed<LengthTriple>? typed = field.Triple();
        (Place? place, Placed<string>? state) = Ends.Read(part, key, r, part.Joint());
        if (place is null || (field.IsPresent && typed is null)) return null;
        if (typed is null) return new ShaftEndTyped(place, null, null);
        MeasuredPoint ahead = part.Point($"{key}/ahead", typed, part.Joint(), place.Body, state);
        return new ShaftEndTyped(place, ahead, typed);
    });

    /// <summary>True when an end's point ahead, if it has one, can be one; said when not.</summary>
    public static bool IsSound(PartSource part, ShaftEndTyped end, ShaftEndTyped other)
    {
        if (end.Ahead is not { } ahead) return true;
        Vector3d at = part.Draft.At(end.Place.At), axis = part.Draft.At(ahead) - at, line = part.Draft.At(other.Place.At) - at;
        if (axis.Length < Ends.LeastApartMm)
        {
            FileMessages.AheadIsEnd(part.Draft.Diagnostics, end.AheadTyped!);
            return false;
        }

        // The point may lie on either side of the joint.
        double degrees = Trigonometry.Atan2(Vector3d.Cross(axis, line).Length, Math.Abs(Vector3d.Dot(axis, line))) * Trigonometry.DegreesPerRadian;
        if (degrees > MostDegrees)
        {
            FileMessages.BentTooFar(part.Draft.Diagnostics, end.AheadTyped!, degrees, MostDegrees);
            return false;
        }

        AssumeAim(part, end.Place.At, ahead, axis.Length);
        return true;
    }

    // Two points with a give or take, some way apart, tell a direction no better than this.
    private static void AssumeAim(PartSource part, MeasuredPoint at, MeasuredPoint ahead, double apartMm)
    {
        double halves = Half(at) + Half(ahead);
        part.Draft.Assume(
            part.Draft.PathOf(ahead),
            $"The direction of the flange is that of two points {NumberFormat.UpTo(apartMm, 0)} mm apart: with their give or take the joint's angle may be off by about {NumberFormat.UpTo(Trigonometry.Atan2(halves, apartMm) * Trigonometry.DegreesPerRadian, 1)} degrees.");

        double Half(MeasuredPoint point) => part.Draft.Parameters.Build().Parameters[point.X.OwnIndex].HalfWidthMm;
    }
}
