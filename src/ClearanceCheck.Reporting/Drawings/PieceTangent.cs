using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>The direction in which a convex piece is long: along the longest of its edges.</summary>
internal static class PieceTangent
{
    /// <summary>A piece less longish than this has no direction of its own: the long side of half a rectangle is its diagonal.</summary>
    private const double LeastElongation = 4;

    private const double Worth = 1e-6;

    /// <summary>Of a part's pieces the one nearest to a place gives it; zero for a piece about as wide as it is long.</summary>
    public static Vector3d Of(DrawnPart part, Vector3d near) => Nearest(part, near) is { } piece ? Along(piece.Corners) : Vector3d.Zero;

    /// <summary>The stretch of chain or the piece of a part that is nearest to a place.</summary>
    public static DrawnPiece? Nearest(DrawnPart part, Vector3d near)
    {
        DrawnPiece? nearest = null;
        double least = double.PositiveInfinity;
        foreach (DrawnPiece piece in part.Pieces.Concat(part.Points.Skip(1).Select((to, i) => new DrawnPiece([part.Points[i], to], part.RadiusMm))))
        {
            double distance = Distance(piece, near);
            if (distance < least - Worth) (nearest, least) = (piece, distance);
        }

        return nearest;
    }

    // The nearest point of a face lies near one of its edges or diagonals: near enough to choose among pieces.
    private static double Distance(DrawnPiece piece, Vector3d place)
    {
        double least = double.PositiveInfinity;
        foreach (Vector3d from in piece.Corners)
            foreach (Vector3d to in piece.Corners)
            {
                Vector3d along = to - from;
                double share = along.LengthSquared > 0 ? Math.Clamp(Vector3d.Dot(place - from, along) / along.LengthSquared, 0, 1) : 0;
                least = Math.Min(least, (from + (along * share) - place).Length);
            }

        return least - piece.RadiusMm;
    }

    private static Vector3d Along(ImmutableArray<Vector3d> corners)
    {
        Vector3d longest = Vector3d.Zero;
        for (int i = 0; i < corners.Length; i++)
            for (int j = i + 1; j < corners.Length; j++)
                if ((corners[j] - corners[i]).Length > longest.Length + Worth && !IsDiagonal(corners, i, j)) longest = corners[j] - corners[i];
        if (longest.Length <= Worth) return Vector3d.Zero;
        Vector3d unit = longest / longest.Length;
        double width = corners.Max(c => Vector3d.Cross(c - corners[0], unit).Length);
        return longest.Length >= LeastElongation * width ? unit : Vector3d.Zero;
    }

    /// <summary>A diagonal shares its middle with another one; an edge's middle belongs to no other pair of corners.</summary>
    private static bool IsDiagonal(ImmutableArray<Vector3d> corners, int first, int second)
    {
        Vector3d middle = (corners[first] + corners[second]) * 0.5;
        for (int i = 0; i < corners.Length; i++)
            for (int j = i + 1; j < corners.Length; j++)
                if (i != first && i != second && j != first && j != second && (((corners[i] + corners[j]) * 0.5) - middle).Length < 1e-3) return true;
        return false;
    }
}
