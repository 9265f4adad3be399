namespace ClearanceCheck.Geometry.Gaps;

/// <summary>Nearest points of two points, segments or triangles, in any mixture: closed form.</summary>
/// <remarks>
/// Where the two are apart, the nearest points lie on an edge of each, or on a corner of one and inside the other's face: all these
/// pairs are tried, the least is taken. Where an edge of one passes through the face of the other they meet there. A triangle without
/// area is the union of its edges. Differences are taken before products, so the place of the origin does not matter.
/// </remarks>
internal static class SimplexDistance
{
    /// <param name="first">One to three corners.</param>
    /// <param name="second">One to three corners.</param>
    /// <returns>A point of each; the same point twice where they meet.</returns>
    public static (Vector3d OnFirst, Vector3d OnSecond) Nearest(ReadOnlySpan<Vector3d> first, ReadOnlySpan<Vector3d> second)
    {
        var best = new Best { Squared = double.PositiveInfinity };
        int firstEdges = Edges(first), secondEdges = Edges(second);
        for (int i = 0; i < firstEdges; i++)
            for (int j = 0; j < secondEdges; j++) EdgeEdge(first, i, second, j, ref best);
        if (second.Length == 3) Faces(first, firstEdges, second, swapped: false, ref best);
        if (first.Length == 3) Faces(second, secondEdges, first, swapped: true, ref best);
        return best.Squared < double.PositiveInfinity ? (best.OnFirst, best.OnSecond) : (first[0] * double.NaN, second[0]);
    }

    private static int Edges(ReadOnlySpan<Vector3d> corners) => corners.Length == 3 ? 3 : 1;

    private static void EdgeEdge(ReadOnlySpan<Vector3d> first, int i, ReadOnlySpan<Vector3d> second, int j, ref Best best)
    {
        Vector3d p = first[i], u = first[(i + 1) % first.Length] - p, q = second[j], v = second[(j + 1) % second.Length] - q;
        (double s, double t) = SegmentDistance.Nearest(p - q, u, v);
        best.Offer(p + (u * s), q + (v * t), ((p - q) + (u * s) - (v * t)).LengthSquared, swapped: false);
    }

    // Corners of one above the face of the other, and edges of the one through that face.
    private static void Faces(ReadOnlySpan<Vector3d> corners, int edges, ReadOnlySpan<Vector3d> face, bool swapped, ref Best best)
    {
        Vector3d a = face[0], e = face[1] - a, f = face[2] - a, normal = Vector3d.Cross(e, f);
        double square = normal.LengthSquared;
        if (!(square > 0)) return;
        Span<double> heights = stackalloc double[3];
        for (int i = 0; i < corners.Length; i++)
        {
            Vector3d w = corners[i] - a;
            heights[i] = Vector3d.Dot(w, normal);
            Vector3d foot = w - (normal * (heights[i] / square));
            if (IsInside(foot, e, f, normal, square)) best.Offer(corners[i], a + foot, heights[i] * heights[i] / square, swapped);
        }

        for (int i = 0; i < edges && corners.Length > 1; i++)
        {
            double from = heights[i], to = heights[(i + 1) % corners.Length];
            if (!((from < 0 && to > 0) || (from > 0 && to < 0))) continue;
            Vector3d crossing = Vector3d.Lerp(corners[i], corners[(i + 1) % corners.Length], from / (from - to)) - a;
            if (IsInside(crossing, e, f, normal, square)) best.Offer(a + crossing, a + crossing, 0, swapped);
        }
    }

    private static bool IsInside(Vector3d point, Vector3d e, Vector3d f, Vector3d normal, double square)
    {
        double s = Vector3d.Dot(Vector3d.Cross(point, f), normal), t = Vector3d.Dot(Vector3d.Cross(e, point), normal);
        return s >= 0 && t >= 0 && s + t <= square;
    }

    private struct Best
    {
        public double Squared;
        public Vector3d OnFirst;
        public Vector3d OnSecond;

        public void Offer(Vector3d onFirst, Vector3d onSecond, double squared, bool swapped)
        {
            if (!(squared < Squared)) return;
            Squared = squared;
            (OnFirst, OnSecond) = swapped ? (onSecond, onFirst) : (onFirst, onSecond);
        }
    }
}
