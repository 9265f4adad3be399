using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>The direction in which two pieces that touch in one point lie beside each other: there is no line between nearest points to tell it.</summary>
internal static class TouchNormal
{
    private const double Worth = 1e-6;

    /// <summary>Unit vector from the first part to the second at a place; zero when one of them has no pieces near it.</summary>
    /// <remarks>Of two convex polyhedra that touch, one is separated from the other square to a face of either or to an edge of each (the separating axis theorem).</remarks>
    public static Vector3d Of(DrawingCard drawing, Vector3d at)
    {
        if (drawing.Parts.Length < 2 || PieceTangent.Nearest(drawing.Parts[0], at) is not { } first || PieceTangent.Nearest(drawing.Parts[1], at) is not { } second) return Vector3d.Zero;
        Vector3d best = Vector3d.Zero;
        double bestSeparation = double.NegativeInfinity;
        foreach (Vector3d direction in Candidates([.. Edges(first), .. Edges(second)]))
            foreach (Vector3d normal in new[] { direction, -direction })
            {
                double separation = second.Corners.Min(c => Vector3d.Dot(c, normal)) - second.RadiusMm - first.Corners.Max(c => Vector3d.Dot(c, normal)) - first.RadiusMm;
                if (separation > bestSeparation + Worth) (best, bestSeparation) = (normal, separation);
            }

        return best;
    }

    private static IEnumerable<Vector3d> Candidates(ImmutableArray<Vector3d> edges)
    {
        foreach (Vector3d axis in new[] { Vector3d.UnitZ, Vector3d.UnitY, Vector3d.UnitX }) yield return axis;
        for (int i = 0; i < edges.Length; i++)
            for (int j = i + 1; j < edges.Length; j++)
            {
                Vector3d square = Vector3d.Cross(edges[i], edges[j]);
                if (square.Length > Worth) yield return square / square.Length;
            }
    }

    private static IEnumerable<Vector3d> Edges(DrawnPiece piece)
    {
        for (int i = 0; i < piece.Corners.Length; i++)
            for (int j = i + 1; j < piece.Corners.Length; j++)
                if ((piece.Corners[j] - piece.Corners[i]).Length > Worth) yield return (piece.Corners[j] - piece.Corners[i]).NormalizedOr(Vector3d.UnitX);
    }
}
