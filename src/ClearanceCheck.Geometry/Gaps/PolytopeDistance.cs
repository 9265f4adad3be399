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

    /// <param name="first">Corners near the origin: their own size is what rounding counts by.</param>
    /// <param name="second">Corners of the other.</param>
    /// <param name="enough">Points this near to each other end the search, mm.</param>
    /// <returns>A point of each hull; the same point twice, up to rounding, where they meet.</returns>
    public static (Vector3d OnFirst, Vector3d OnSecond) Nearest(ReadOnlySpan<Vector3d> first, ReadOnlySpan<Vector3d> second, double enough = RoundingMm)
    {
        var simplex = new DifferenceSimplex(stackalloc Vector3d[8], stackalloc double[8]);
        simplex.Start(first[0], second[0]);
        Vector3d v = simplex.Nearest;
        for (int step = 0; step < MaximumSteps; step++)
        {
            double square = v.LengthSquared;
            if (!(square > enough * enough)) break;
            Vector3d a = Extreme(first, -v), b = Extreme(second, v);
            if (square - Vector3d.Dot(a - b, v) <= (Share * square) + (RoundingMm * Math.Sqrt(square)) || !simplex.TryAdd(a, b)) break;
            if (simplex.HoldsOrigin || !(simplex.Nearest.LengthSquared < square)) break;
            v = simplex.Nearest;
        }

        return simplex.Points;
    }

    private static Vector3d Extreme(ReadOnlySpan<Vector3d> corners, Vector3d direction)
    {
        int best = 0;
        double most = Vector3d.Dot(corners[0], direction);
        for (int i = 1; i < corners.Length; i++)
        {
            double along = Vector3d.Dot(corners[i], direction);
            if (along > most) (most, best) = (along, i);
        }

        return corners[best];
    }
}
