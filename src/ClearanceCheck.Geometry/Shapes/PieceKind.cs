namespace ClearanceCheck.Geometry.Shapes;

/// <summary>How the corners of a <see cref="Piece"/> are ordered, which tells its edges and faces.</summary>
public enum PieceKind
{
    /// <summary>One, two or three corners: a point, a segment, a triangle.</summary>
    Simplex,

    /// <summary>Eight corners of a parallelepiped: bit k of the corner's number says on which side along edge k it lies.</summary>
    Box,

    /// <summary>Part of a solid of revolution: its corners in rings of equal size, one ring a station around the axis.</summary>
    Stave,
}
