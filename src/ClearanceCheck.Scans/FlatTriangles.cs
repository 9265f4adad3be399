using ClearanceCheck.Geometry;

namespace ClearanceCheck.Scans;

/// <summary>Counts triangles without area: two corners at one place, or three on a line.</summary>
internal static class FlatTriangles
{
    // Rounding leaves this much of the product of two edges where three corners are on a line.
    private const double Rounding = 1e-14;

    public static int Count(Scan scan)
    {
        int count = 0;
        for (int i = 0; i < scan.TriangleCount; i++)
        {
            (int a, int b, int c) = scan.Triangle(i);
            Vector3d first = scan.Points[b] - scan.Points[a], second = scan.Points[c] - scan.Points[a];
            double edges = first.LengthSquared * second.LengthSquared;
            if (Vector3d.Cross(first, second).LengthSquared <= edges * Rounding * Rounding) count++;
        }

        return count;
    }
}
