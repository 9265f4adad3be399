using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Benchmarks;

/// <summary>A piece that can be kept.</summary>
internal sealed class Corners(Vector3d[] points, PieceKind kind, double radius)
{
    public Piece Piece => new(points, kind, radius);
}
