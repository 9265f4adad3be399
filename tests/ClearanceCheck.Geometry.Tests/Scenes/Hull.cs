using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>A piece that can be kept: its corners, how they are ordered, and its radius.</summary>
internal sealed record Hull(Vector3d[] Corners, PieceKind Kind, double Radius)
{
    public Piece Piece => new(Corners, Kind, Radius);

    public static PieceGap Measure(Hull first, Hull second) => SignedGap.Measure(first.Piece, second.Piece);

    public Hull With(Func<Vector3d, Vector3d> move) => this with { Corners = [.. Corners.Select(move)] };

    /// <summary>Least n.x of this less the largest n.x of the other, from one point near both.</summary>
    public double SeparationFrom(Hull other, Vector3d n)
    {
        Vector3d origin = Corners[0];
        return Corners.Min(c => Vector3d.Dot(n, c - origin)) - other.Corners.Max(c => Vector3d.Dot(n, c - origin)) - Radius - other.Radius;
    }

    /// <summary>A random point of the hull of the corners.</summary>
    public Vector3d Inside(SplitMix64 g)
    {
        Vector3d sum = Vector3d.Zero;
        double weights = 0;
        foreach (Vector3d corner in Corners)
        {
            double weight = -Math.Log(1 - g.Unit());
            (sum, weights) = (sum + (corner * weight), weights + weight);
        }

        return sum / weights;
    }
}
