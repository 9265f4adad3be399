using ClearanceCheck.Geometry;

namespace ClearanceCheck.Sweeping.Views;

/// <summary>Points that hold others between them, where those are many: curvature is asked for at each.</summary>
internal static class FewAnchors
{
    private const int Most = 8;

    /// <summary>The points themselves, or the corners of the box around them.</summary>
    public static Vector3d[] Around(ReadOnlySpan<Vector3d> points)
    {
        if (points.Length <= Most) return points.ToArray();
        Vector3d low = points[0], high = points[0];
        foreach (Vector3d p in points)
        {
            low = new Vector3d(Math.Min(low.X, p.X), Math.Min(low.Y, p.Y), Math.Min(low.Z, p.Z));
            high = new Vector3d(Math.Max(high.X, p.X), Math.Max(high.Y, p.Y), Math.Max(high.Z, p.Z));
        }

        return [.. Enumerable.Range(0, 8).Select(i => new Vector3d((i & 1) == 0 ? low.X : high.X, (i & 2) == 0 ? low.Y : high.Y, (i & 4) == 0 ? low.Z : high.Z))];
    }
}
