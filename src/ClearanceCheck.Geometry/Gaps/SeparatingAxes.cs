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

    // Points nearer than this, mm, are the same point: what is left between them has no direction.
    private const double RoundingMm = 1e-12;

    // Shorter axes have lost digits when squared, mm^4.
    private const double Tiny = 1e-200;

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
            foreach (Vector3d other in secondEdges[..secondEdgeCount]) best.Try(first, second, PieceAxes.Across(edge, other));
        if (apart.LengthSquared > RoundingMm * RoundingMm)
        {
            // A corner beside an edge: the way between them is square to the edge, more sharply than rounding has left it.
            foreach (Vector3d edge in firstEdges[..firstEdgeCount]) best.Try(first, second, PieceAxes.Square(apart, edge));
            foreach (Vector3d edge in secondEdges[..secondEdgeCount]) best.Try(first, second, PieceAxes.Square(apart, edge));
        }

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
            if (faces.Length == 1) best.Try(first, second, PieceAxes.Across(edge, faces[0]));
            else
            {
                Vector3d side = edge.AnyPerpendicular();
                best.Try(first, second, side);
                best.Try(first, second, Vector3d.Cross(edge, side));
                best.Try(first, second, edge);
            }
        }
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

        // Both senses of an axis of any length at once.
        public void Try(in Piece first, in Piece second, Vector3d axis)
        {
            double square = axis.LengthSquared;
            if (!(square > Tiny)) return;
            (double firstLow, double firstHigh) = Extent(first.Corners, axis);
            (double secondLow, double secondHigh) = Extent(second.Corners, axis);
            double forward = firstLow - secondHigh, backward = secondLow - firstHigh, most = Math.Max(forward, backward);
            // Most axes fall here, and need no root.
            if (most < 0 && Separation < 0 && most * most > Separation * Separation * square) return;
            double length = Math.Sqrt(square);
            if (most / length > Separation) (Separation, Direction) = (most / length, axis / (backward > forward ? -length : length));
        }

        private static (double Low, double High) Extent(ReadOnlySpan<Vector3d> corners, Vector3d axis)
        {
            double low = Vector3d.Dot(axis, corners[0]), high = low;
            for (int i = 1; i < corners.Length; i++)
            {
                double along = Vector3d.Dot(axis, corners[i]);
                if (along < low) low = along;
                if (along > high) high = along;
            }

            return (low, high);
        }
    }
}
