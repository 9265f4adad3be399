namespace ClearanceCheck.Geometry.Shapes;

/// <summary>A convex piece: all points within a radius of the hull of a few corners. Millimetres, any one frame.</summary>
/// <param name="corners">One to <see cref="MaximumCorners"/> corners, ordered as <paramref name="kind"/> says.</param>
/// <param name="kind">How the corners are ordered.</param>
/// <param name="radius">Zero or more, mm.</param>
public readonly ref struct Piece(ReadOnlySpan<Vector3d> corners, PieceKind kind, double radius)
{
    /// <summary>The most corners that a piece has.</summary>
    public const int MaximumCorners = 16;

    public ReadOnlySpan<Vector3d> Corners { get; } = corners;

    public PieceKind Kind => kind;

    public double Radius => radius;

    /// <summary>The largest n.x over the piece, radius included; <paramref name="direction"/> is a unit vector.</summary>
    public double Support(Vector3d direction)
    {
        double most = double.NegativeInfinity;
        foreach (ref readonly Vector3d corner in Corners) most = Math.Max(most, Vector3d.Dot(direction, corner));
        return most + Radius;
    }
}
