using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Gaps;

/// <summary>Signed gap of two capsules: closed form, also for parallel, touching, crossing and zero-length ones.</summary>
/// <remarks>
/// The gap is the distance of the two segments less both radii. It is the largest separation along any direction n on both sides
/// of zero: max over n of min n.(a - b) over the segments is their distance while they are apart, and zero (with n square to both)
/// when they cross. Error below 1e-12 mm for parts of a vehicle within a metre of each other, wherever the origin is: differences
/// are taken before products.
/// </remarks>
public static class CapsuleCapsule
{
    // Axes nearer to each other than this share of their lengths: the difference of two points no longer says well enough in
    // which direction they lie apart, since a slant of it counts over the whole length. Squared.
    private const double NearShareSquared = 1e-8;

    public static PieceGap Measure(in Capsule first, in Capsule second)
    {
        Vector3d r = first.From - second.From, u = first.To - first.From, v = second.To - second.From;
        (double s, double t) = SegmentDistance.Nearest(r, u, v);
        Vector3d apart = r + (u * s) - (v * t);
        double distance = apart.Length;
        bool far = distance * distance > NearShareSquared * (u.LengthSquared + v.LengthSquared);
        Vector3d n = far ? apart.NormalizedOr(Vector3d.UnitZ) : SharpDirection(r, u, v, apart);
        Vector3d onFirstAxis = first.From + (u * s), onSecondAxis = second.From + (v * t);
        return new PieceGap(
            distance - first.Radius - second.Radius, n, onFirstAxis - (n * first.Radius), onSecondAxis + (n * second.Radius));
    }

    /// <summary>The direction along which axes that touch, cross or all but touch are separated most.</summary>
    /// <remarks>
    /// The best direction is square to each axis that is met between its ends, and leads out of the other at an end. Each such
    /// direction is built from the axes' own directions, which are exact where the points' difference is rounding; every one gives
    /// a lower bound, the largest is taken.
    /// </remarks>
    private static Vector3d SharpDirection(Vector3d r, Vector3d u, Vector3d v, Vector3d apart)
    {
        Vector3d along = u.NormalizedOr(Vector3d.Zero), other = v.NormalizedOr(Vector3d.Zero);
        Vector3d cross = Vector3d.Cross(along, other);
        ReadOnlySpan<Vector3d> candidates =
        [
            apart, cross, Across(apart, along), Across(apart, other), Across(other, along), Across(along, other), along, other,
            along.AnyPerpendicular(), other.AnyPerpendicular(),
        ];
        Vector3d best = Vector3d.UnitZ;
        double most = double.NegativeInfinity;
        foreach (Vector3d candidate in candidates)
        {
            Vector3d n = candidate.NormalizedOr(Vector3d.Zero);
            if (n == Vector3d.Zero) continue;
            // n.(a - b) over both axes: from its value for the two first ends, lower along the first and higher along the second.
            double start = Vector3d.Dot(n, r), first = Vector3d.Dot(n, u), second = Vector3d.Dot(n, v);
            double forward = start + Math.Min(0, first) - Math.Max(0, second);
            double backward = -start - Math.Max(0, first) + Math.Min(0, second);
            if (forward > most) (most, best) = (forward, n);
            if (backward > most) (most, best) = (backward, -n);
        }

        return best;
    }

    private static Vector3d Across(Vector3d v, Vector3d unit) => v - (unit * Vector3d.Dot(v, unit));
}
