using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Gaps;

/// <summary>Where two polytopes face each other along the direction that separates them most.</summary>
/// <remarks>
/// The corners of the first that lie farthest against n span a point, an edge or a face, those of the second that lie farthest along n
/// another. Were the separation along n raised by moving one of the two, n would not be the best direction: so both features, brought
/// into one plane, have a point in common. Its counterpart on the second lies the separation away.
/// </remarks>
internal static class ContactPoint
{
    // Features that are met this well have a point in common, mm.
    private const double CommonMm = 1e-8;
    private const double EnoughMm = 1e-9;

    // How much less far a corner may reach and still belong to the feature, mm: the next is tried when nothing is in common.
    private const double LeastSameMm = 1e-9;
    private const double MostSameMm = 1e-3;
    private const double Wider = 100;

    /// <param name="first">Corners near the origin.</param>
    /// <param name="second">Corners of the other.</param>
    /// <param name="n">Unit vector, from the second towards the first.</param>
    /// <param name="core">The separation along it, radii left out, mm.</param>
    /// <param name="exact">False when n need not be the best direction, so that nothing need be in common.</param>
    /// <returns>A point of the first's hull.</returns>
    public static Vector3d Find(ReadOnlySpan<Vector3d> first, ReadOnlySpan<Vector3d> second, Vector3d n, double core, bool exact)
    {
        Span<Vector3d> a = stackalloc Vector3d[Piece.MaximumCorners], b = stackalloc Vector3d[Piece.MaximumCorners];
        Vector3d best = Vector3d.Zero;
        double least = double.PositiveInfinity;
        for (double same = LeastSameMm; same <= MostSameMm; same *= Wider)
        {
            int ofFirst = Feature(first, -n, same, Vector3d.Zero, a);
            if (!exact) return Middle(a[..ofFirst]);
            int ofSecond = Feature(second, n, same, n * core, b);
            (Vector3d point, double miss) = Common(a[..ofFirst], b[..ofSecond]);
            if (miss < least) (least, best) = (miss, point);
            if (least <= CommonMm) break;
        }

        return best;
    }

    /// <summary>Writes the corners that reach farthest along a direction, or less far by no more than a little.</summary>
    /// <returns>How many were written.</returns>
    public static int Feature(ReadOnlySpan<Vector3d> corners, Vector3d direction, double same, Vector3d shift, Span<Vector3d> into)
    {
        double most = double.NegativeInfinity;
        foreach (ref readonly Vector3d corner in corners) most = Math.Max(most, Vector3d.Dot(direction, corner));
        int count = 0;
        foreach (ref readonly Vector3d corner in corners)
            if (Vector3d.Dot(direction, corner) >= most - same) into[count++] = corner + shift;
        return count;
    }

    // The middle of one that lies in the other, else any point in common.
    private static (Vector3d Point, double Miss) Common(ReadOnlySpan<Vector3d> a, ReadOnlySpan<Vector3d> b)
    {
        if (a.Length > 1 && b.Length > 1 && a.Length + b.Length > 4)
        {
            Vector3d middleOfA = Middle(a), middleOfB = Middle(b);
            Vector3d inA = PolytopeDistance.Nearest(a, [middleOfB], EnoughMm).OnFirst;
            if (Miss(inA, middleOfB) <= CommonMm) return (inA, Miss(inA, middleOfB));
            Vector3d inB = PolytopeDistance.Nearest(b, [middleOfA], EnoughMm).OnFirst;
            if (Miss(inB, middleOfA) <= CommonMm) return (middleOfA, Miss(inB, middleOfA));
        }

        (Vector3d onA, Vector3d onB) = a.Length <= 2 && b.Length <= 2 ? OfEdges(a, b) : PolytopeDistance.Nearest(a, b, EnoughMm);
        return (onA, Miss(onA, onB));
    }

    private static (Vector3d OnFirst, Vector3d OnSecond) OfEdges(ReadOnlySpan<Vector3d> a, ReadOnlySpan<Vector3d> b)
    {
        Vector3d u = a[^1] - a[0], v = b[^1] - b[0];
        (double s, double t) = SegmentDistance.Nearest(a[0] - b[0], u, v);
        return (a[0] + (u * s), b[0] + (v * t));
    }

    private static double Miss(Vector3d a, Vector3d b) => (a - b).Length;

    private static Vector3d Middle(ReadOnlySpan<Vector3d> corners)
    {
        Vector3d sum = Vector3d.Zero;
        foreach (ref readonly Vector3d corner in corners) sum += corner;
        return sum / corners.Length;
    }
}
