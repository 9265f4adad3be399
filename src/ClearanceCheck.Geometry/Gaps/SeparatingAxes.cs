using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Gaps;

/// <summary>The direction along which two polytopes that touch or overlap are separated most.</summary>
/// <remarks>
/// The set of differences of two polytopes is a polytope. From inside, its surface is nearest along the normal of one of its faces, and
/// these are the normals of the two's own faces and the directions square to an edge of each. So the largest separation over all n is
/// the largest over these few, and the same from outside as long as the two all but touch. Flat and straight pieces have no faces all
/// around: what is square to them, and in their plane square to their edges, is tried too. Every direction gives a lower bound, so one
/// too many does no harm.
/// </remarks>
internal static class SeparatingAxes
{
    // Fifteen edges of a stave, ten faces.
    private const int MostEdges = 16;

    // A product of two edges shorter than this share of both is rounding.
    private const double ParallelShareSquared = 1e-24;

    /// <param name="first">A piece.</param>
    /// <param name="second">Another.</param>
    /// <param name="exact">False to try the faces alone.</param>
    /// <param name="apart">From the second's nearest point to the first's, where they are apart.</param>
    /// <returns>The separation of the hulls, radii left out, and its direction, from the second towards the first.</returns>
    public static (double Separation, Vector3d Direction) Best(in Piece first, in Piece second, bool exact, Vector3d apart)
    {
        var best = new Search { Separation = double.NegativeInfinity, Direction = Vector3d.UnitZ };
        Span<Vector3d> firstEdges = stackalloc Vector3d[MostEdges], secondEdges = stackalloc Vector3d[MostEdges];
        Span<Vector3d> firstFaces = stackalloc Vector3d[MostEdges], secondFaces = stackalloc Vector3d[MostEdges];
        PieceAxes.Of(first, firstEdges, out int firstEdgeCount, firstFaces, out int firstFaceCount);
        PieceAxes.Of(second, secondEdges, out int secondEdgeCount, secondFaces, out int secondFaceCount);
        best.Try(first, second, apart);
        foreach (Vector3d face in firstFaces[..firstFaceCount]) best.Try(first, second, face);
        foreach (Vector3d face in secondFaces[..secondFaceCount]) best.Try(first, second, face);
        if (!exact)
        {
            best.Try(first, second, Middle(first) - Middle(second));
            return (best.Separation, best.Direction);
        }

        foreach (Vector3d edge in firstEdges[..firstEdgeCount])
            foreach (Vector3d other in secondEdges[..secondEdgeCount]) best.Try(first, second, Across(edge, other));
        // A corner beside an edge: the way between them is square to the edge, more sharply than rounding has left it.
        foreach (Vector3d edge in firstEdges[..firstEdgeCount]) best.Try(first, second, Square(apart, edge));
        foreach (Vector3d edge in secondEdges[..secondEdgeCount]) best.Try(first, second, Square(apart, edge));
        Flat(first, second, firstEdges[..firstEdgeCount], firstFaces[..firstFaceCount], ref best);
        Flat(first, second, secondEdges[..secondEdgeCount], secondFaces[..secondFaceCount], ref best);
        if (double.IsNegativeInfinity(best.Separation)) best.Try(first, second, Vector3d.UnitZ);
        return (best.Separation, best.Direction);
    }

    // In the plane of a face, square to its edges; without any face, square to an edge.
    private static void Flat(in Piece first, in Piece second, ReadOnlySpan<Vector3d> edges, ReadOnlySpan<Vector3d> faces, ref Search best)
    {
        if (faces.Length > 1) return;
        foreach (Vector3d edge in edges)
        {
            if (faces.Length == 1) best.Try(first, second, Across(edge, faces[0]));
            else
            {
                Vector3d side = edge.AnyPerpendicular();
                best.Try(first, second, side);
                best.Try(first, second, Vector3d.Cross(edge, side));
                best.Try(first, second, edge);
            }
        }
    }

    private static Vector3d Across(Vector3d a, Vector3d b)
    {
        Vector3d cross = Vector3d.Cross(a, b);
        return cross.LengthSquared > ParallelShareSquared * a.LengthSquared * b.LengthSquared ? cross : Vector3d.Zero;
    }

    private static Vector3d Square(Vector3d v, Vector3d edge)
    {
        Vector3d unit = edge.NormalizedOr(Vector3d.Zero);
        return v - (unit * Vector3d.Dot(v, unit));
    }

    private static Vector3d Middle(in Piece piece)
    {
        Vector3d sum = Vector3d.Zero;
        foreach (ref readonly Vector3d corner in piece.Corners) sum += corner;
        return sum / piece.Corners.Length;
    }

    private struct Search
    {
        public double Separation;
        public Vector3d Direction;

        // Both senses of an axis at once.
        public void Try(in Piece first, in Piece second, Vector3d axis)
        {
            Vector3d n = axis.NormalizedOr(Vector3d.Zero);
            if (n == Vector3d.Zero) return;
            Vector3d origin = first.Corners[0];
            (double firstLow, double firstHigh) = Extent(first.Corners, origin, n);
            (double secondLow, double secondHigh) = Extent(second.Corners, origin, n);
            if (firstLow - secondHigh > Separation) (Separation, Direction) = (firstLow - secondHigh, n);
            if (secondLow - firstHigh > Separation) (Separation, Direction) = (secondLow - firstHigh, -n);
        }

        private static (double Low, double High) Extent(ReadOnlySpan<Vector3d> corners, Vector3d origin, Vector3d n)
        {
            double low = double.PositiveInfinity, high = double.NegativeInfinity;
            foreach (ref readonly Vector3d corner in corners)
            {
                double along = Vector3d.Dot(n, corner - origin);
                (low, high) = (Math.Min(low, along), Math.Max(high, along));
            }

            return (low, high);
        }
    }
}
