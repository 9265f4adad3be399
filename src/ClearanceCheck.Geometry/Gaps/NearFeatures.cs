using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Gaps;

/// <summary>Nearest points of two polytopes from all their edges that face each other: slow, for where the search stopped short.</summary>
/// <remarks>
/// Where nearly parallel edges all but touch, differences of corners surround the origin so narrowly that the search can't tell on which
/// of them to stay. Every segment between two corners is an edge or lies inside, so the closed form over all such pairs finds the nearest
/// points unless these lie within a face; then the face's normal separates the pieces better than the way between any two points.
/// </remarks>
internal static class NearFeatures
{
    // Corners that lie that much deeper than the foremost, mm, are far from contact.
    private const double DepthMm = 1e-3;

    /// <param name="first">Corners near the origin.</param>
    /// <param name="second">Corners of the other.</param>
    /// <param name="n">About the direction between the two, from the second towards the first.</param>
    /// <returns>The way from the second's nearest point to the first's.</returns>
    public static Vector3d Apart(ReadOnlySpan<Vector3d> first, ReadOnlySpan<Vector3d> second, Vector3d n)
    {
        Span<Vector3d> a = stackalloc Vector3d[Piece.MaximumCorners], b = stackalloc Vector3d[Piece.MaximumCorners];
        a = a[..ContactPoint.Feature(first, -n, DepthMm, Vector3d.Zero, a)];
        b = b[..ContactPoint.Feature(second, n, DepthMm, Vector3d.Zero, b)];
        Vector3d best = Vector3d.Zero;
        double least = double.PositiveInfinity;
        for (int i = 0; i < a.Length; i++)
            for (int j = i; j < a.Length; j++)
                for (int k = 0; k < b.Length; k++)
                    for (int l = k; l < b.Length; l++)
                    {
                        Vector3d r = a[i] - b[k], u = a[j] - a[i], v = b[l] - b[k];
                        (double s, double t) = SegmentDistance.Nearest(r, u, v);
                        Vector3d apart = r + (u * s) - (v * t);
                        if (apart.LengthSquared < least) (least, best) = (apart.LengthSquared, apart);
                    }

        return best;
    }
}
