using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Gaps;

/// <summary>Signed gaps between the nodes of two solids.</summary>
public static class SolidGap
{
    /// <summary>The gap between two nodes in the first solid's frame; exact for two leaves, else a lower bound where they overlap.</summary>
    /// <param name="first">A solid.</param>
    /// <param name="firstNode">A node of it.</param>
    /// <param name="second">Another solid.</param>
    /// <param name="secondNode">A node of it.</param>
    /// <param name="secondInFirst">Pose of the second solid's body in the first's frame.</param>
    public static PieceGap Measure(Solid first, int firstNode, Solid second, int secondNode, in RigidMotion secondInFirst)
    {
        Span<Vector3d> a = stackalloc Vector3d[Piece.MaximumCorners], b = stackalloc Vector3d[Piece.MaximumCorners];
        a = a[..first.Corners(firstNode, a)];
        b = b[..second.Corners(secondNode, b)];
        foreach (ref Vector3d corner in b) corner = secondInFirst.Apply(corner);
        return SignedGap.Measure(
            new Piece(a, first.Kind(firstNode), first.Radius(firstNode)),
            new Piece(b, second.Kind(secondNode), second.Radius(secondNode)),
            first.IsLeaf(firstNode) && second.IsLeaf(secondNode));
    }
}
