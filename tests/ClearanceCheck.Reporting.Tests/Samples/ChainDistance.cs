using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Tests.Samples;

/// <summary>The nearest points of two chains, found by brute force; good enough to place a sample.</summary>
internal static class ChainDistance
{
    private const int Steps = 200;

    public static (Vector3d First, Vector3d Second) Nearest(DrawnPart first, DrawnPart second)
    {
        (Vector3d, Vector3d) best = (first.Points[0], second.Points[0]);
        double least = double.PositiveInfinity;
        foreach (Vector3d a in Along(first))
            for (int i = 1; i < second.Points.Length; i++)
            {
                Vector3d b = OnStretch(second.Points[i - 1], second.Points[i], a);
                if ((b - a).Length < least) (best, least) = ((a, b), (b - a).Length);
            }

        return best;
    }

    private static Vector3d OnStretch(Vector3d from, Vector3d to, Vector3d point)
    {
        Vector3d along = to - from;
        return from + (along * Math.Clamp(Vector3d.Dot(point - from, along) / along.LengthSquared, 0, 1));
    }

    private static IEnumerable<Vector3d> Along(DrawnPart part)
    {
        for (int i = 1; i < part.Points.Length; i++)
            for (int step = 0; step <= Steps; step++)
                yield return Vector3d.Lerp(part.Points[i - 1], part.Points[i], (double)step / Steps);
    }
}
