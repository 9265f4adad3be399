using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Units;

namespace ClearanceCheck.Files.Forms;

/// <summary>Says why the points around a plate make none.</summary>
internal static class PlateOutline
{
    /// <summary>How far a point may lie off the plane, mm. Common practice, no source.</summary>
    public const double FlatWithinMm = 25;

    /// <summary>The most points of an outline: what a person measures, and few enough to try each one's give or take.</summary>
    public const int MostPoints = 100;

    // A millimetre: what is narrower is a line.
    private const double LeastWidthMm = 1;

    /// <summary>What is wrong and what would be right, or null for a good outline.</summary>
    /// <param name="points">Around the plate, mm.</param>
    /// <param name="thicknessMm">How thick it is.</param>
    /// <param name="giveMm">How far each coordinate must be free to move without the outline losing its shape: what an error of a reading does is found that way.</param>
    public static OutlineFault? FaultOf(ImmutableArray<Vector3d> points, double thicknessMm, double giveMm)
    {
        Vector3d along = (points.MaxBy(p => (p - points[0]).LengthSquared) - points[0]).NormalizedOr(Vector3d.UnitX);
        Vector3d across = points.Select(p => Vector3d.Cross(along, p - points[0])).MaxBy(c => c.LengthSquared);
        if (across.Length < LeastWidthMm) return FileMessages.OutlineWithoutArea;

        // The two halves of a figure of eight have opposite turns, so its normal is taken from its two farthest directions instead.
        Vector3d middle = points.Aggregate(Vector3d.Zero, (sum, p) => sum + p) * (1.0 / points.Length), turns = TwiceArea(points, middle);
        Vector3d widest = across.NormalizedOr(Vector3d.UnitZ), normal = turns.NormalizedOr(widest);
        if (Crosses(points, widest) && Crosses(points, normal)) return FileMessages.OutlineCrosses;
        ImmutableArray<double> off = [.. points.Select(p => Math.Abs(Vector3d.Dot(normal, p - middle)))];
        int worst = off.IndexOf(off.Max());
        if (off[worst] > FlatWithinMm) return FileMessages.OutlineNotFlat(worst + 1, NumberFormat.UpTo(off[worst], 0));
        if (Crosses(points, normal) || Simplices.Plate(points.AsSpan(), thicknessMm) is null) return FileMessages.OutlineCrosses;
        return FirstThatMakesItCross(points, thicknessMm, giveMm) is { } number ? FileMessages.OutlineAlmostCrosses(number, giveMm) : null;
    }

    // Newell's normal: its length is twice the area of the outline's projection along it.
    private static Vector3d TwiceArea(ImmutableArray<Vector3d> points, Vector3d middle)
    {
        Vector3d sum = Vector3d.Zero;
        for (int i = 0; i < points.Length; i++) sum += Vector3d.Cross(points[i] - middle, points[(i + 1) % points.Length] - middle);
        return sum;
    }

    /// <summary>True when two edges meet elsewhere than in a common corner, or one runs back over its neighbour; seen along a direction.</summary>
    private static bool Crosses(ImmutableArray<Vector3d> points, Vector3d normal)
    {
        int n = points.Length;
        for (int i = 0; i < n; i++)
        {
            (Vector3d a, Vector3d b, Vector3d c) = (points[i], points[(i + 1) % n], points[(i + 2) % n]);
            if (Turn(a, b, c, normal) == 0 && Vector3d.Dot(b - a, c - b) < 0) return true;
            for (int j = i + 2; j < n; j++)
            {
                if (i == 0 && j == n - 1) continue;
                if (Meet(a, b, points[j], points[(j + 1) % n], normal)) return true;
            }
        }

        return false;
    }

    private static bool Meet(Vector3d a, Vector3d b, Vector3d c, Vector3d d, Vector3d normal)
    {
        double abc = Turn(a, b, c, normal), abd = Turn(a, b, d, normal), cda = Turn(c, d, a, normal), cdb = Turn(c, d, b, normal);
        if (abc == 0 && abd == 0) return Between(a, b, c) || Between(a, b, d) || Between(c, d, a);
        return abc * abd <= 0 && cda * cdb <= 0;
    }

    private static bool Between(Vector3d a, Vector3d b, Vector3d p) => Vector3d.Dot(p - a, p - b) <= 0;

    private static double Turn(Vector3d a, Vector3d b, Vector3d c, Vector3d normal) => Vector3d.Dot(Vector3d.Cross(b - a, c - a), normal);

    private static int? FirstThatMakesItCross(ImmutableArray<Vector3d> points, double thicknessMm, double giveMm)
    {
        Vector3d[] moved = [.. points];
        foreach (int i in Enumerable.Range(0, points.Length))
            foreach (Vector3d axis in new[] { Vector3d.UnitX, Vector3d.UnitY, Vector3d.UnitZ })
                foreach (double by in new[] { giveMm, -giveMm })
                {
                    moved[i] = points[i] + (axis * by);
                    bool holds = Simplices.Plate(moved, thicknessMm) is not null;
                    moved[i] = points[i];
                    if (!holds) return i + 1;
                }

        return null;
    }
}
