using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Proves for settings of a range that no place of the bodies meets the equations.</summary>
/// <remarks>
/// Two heights of one body fix the height of every point of it up to the body's turn about the line through the two: with the foot of
/// the point at share m of the way, its height is z1 + m (z2 - z1) plus or minus its distance from the line times the cosine of the
/// line's slope. When the two heights are farther apart than the points, or a rod to the chassis is shorter than the height it would
/// have to span, the settings are out of reach. In interval arithmetic, so rounding can't make a proof.
/// </remarks>
internal static class ReachProof
{
    public static bool Excludes(Linkage linkage, ReadOnlySpan<Interval> settings)
    {
        foreach (Joint.Travel first in linkage.Joints.OfType<Joint.Travel>())
            foreach (Joint.Travel second in linkage.Joints.OfType<Joint.Travel>())
                if (first.Body == second.Body && first.Coordinate < second.Coordinate && Excludes(linkage, first, second, settings)) return true;
        return false;
    }

    private static bool Excludes(Linkage linkage, Joint.Travel first, Joint.Travel second, ReadOnlySpan<Interval> settings)
    {
        Interval z1 = Height(first, settings), rise = Height(second, settings) - z1;
        Vector3<Interval> line = Vector3<Interval>.From(second.Point) - Vector3<Interval>.From(first.Point);
        Interval spanSquared = line.LengthSquared;
        Interval level = spanSquared - Interval.Square(rise);
        if (level.High < 0) return true;
        foreach (Joint.Rod rod in linkage.Joints.OfType<Joint.Rod>())
        {
            (Vector3d onBody, Vector3d onChassis)? ends =
                rod.FirstBody == 0 && rod.SecondBody == first.Body ? (rod.SecondPoint, rod.FirstPoint)
                : rod.SecondBody == 0 && rod.FirstBody == first.Body ? (rod.FirstPoint, rod.SecondPoint) : null;
            if (ends is not var (body, chassis)) continue;
            Vector3<Interval> offset = Vector3<Interval>.From(body) - Vector3<Interval>.From(first.Point);
            Interval share = Vector3<Interval>.Dot(offset, line) / spanSquared;
            Interval asideSquared = offset.LengthSquared - (Interval.Square(share) * spanSquared);
            Interval swing = asideSquared * level / spanSquared;
            Interval over = z1 + (share * rise) - Interval.From(chassis.Z);
            double least = over.Low > 0 ? over.Low : over.High < 0 ? -over.High : 0;
            double reach = Math.BitIncrement(Math.Sqrt(Math.Max(0, swing.High))) + Math.BitIncrement(rod.LengthMm);
            if (least > Math.BitIncrement(reach)) return true;
        }

        return false;
    }

    private static Interval Height(Joint.Travel travel, ReadOnlySpan<Interval> settings) =>
        Interval.From(travel.Point.Z) - Interval.From(travel.RideOffsetMm) + settings[travel.Coordinate];
}
