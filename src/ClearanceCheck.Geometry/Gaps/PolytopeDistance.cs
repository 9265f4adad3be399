namespace ClearanceCheck.Geometry.Gaps;

/// <summary>Nearest points of the hulls of two sets of corners.</summary>
/// <remarks>
/// The search of Gilbert, Johnson and Keerthi (A fast procedure for computing the distance between complex objects, 1988; from memory)
/// over differences of corners: with v the point of a simplex of differences nearest to the origin, the difference that reaches
/// farthest against v is added, and the search ends when it reaches no farther than v itself, which proves |v|. Polytopes have finitely
/// many corners, so it ends. The nearest point of a simplex is taken as the best of those of its faces that hold the newest corner: no
/// case is decided by a sign that rounding can flip.
/// </remarks>
internal static class PolytopeDistance
{
    private const int MaximumSteps = 64;

    // What rounding leaves of a difference: as a share of it, and in mm for parts of some metres.
    private const double Share = 1e-14;
    private const double RoundingMm = 1e-13;

    /// <returns>A point of each hull; the same point twice, up to rounding, where they meet.</returns>
    public static (Vector3d OnFirst, Vector3d OnSecond) Nearest(ReadOnlySpan<Vector3d> first, ReadOnlySpan<Vector3d> second)
    {
        Vector3d origin = first[0];
        var simplex = new DifferenceSimplex(stackalloc Vector3d[8], stackalloc double[8]);
        simplex.Start(Vector3d.Zero, second[0] - origin);
        Vector3d v = simplex.Nearest;
        for (int step = 0; step < MaximumSteps; step++)
        {
            double square = v.LengthSquared;
            if (!(square > RoundingMm * RoundingMm)) break;
            Vector3d a = Extreme(first, origin, -v), b = Extreme(second, origin, v);
            if (square - Vector3d.Dot(a - b, v) <= (Share * square) + (RoundingMm * Math.Sqrt(square)) || !simplex.TryAdd(a, b)) break;
            if (simplex.HoldsOrigin || !(simplex.Nearest.LengthSquared < square)) break;
            v = simplex.Nearest;
        }

        (Vector3d onFirst, Vector3d onSecond) = simplex.Points;
        return (origin + onFirst, origin + onSecond);
    }

    private static Vector3d Extreme(ReadOnlySpan<Vector3d> corners, Vector3d origin, Vector3d direction)
    {
        Vector3d best = corners[0] - origin;
        double most = Vector3d.Dot(best, direction);
        for (int i = 1; i < corners.Length; i++)
        {
            Vector3d corner = corners[i] - origin;
            double along = Vector3d.Dot(corner, direction);
            if (along > most) (most, best) = (along, corner);
        }

        return best;
    }
}
