namespace ClearanceCheck.Geometry.Shapes;

/// <summary>A solid box with its edges along its body's axes, mm.</summary>
public sealed class SolidBox : Solid
{
    private readonly Vector3d[] corners = new Vector3d[8];

    /// <exception cref="ArgumentException">A corner that is not finite.</exception>
    public SolidBox(Vector3d corner, Vector3d opposite)
    {
        if (!corner.IsFinite || !opposite.IsFinite) throw new ArgumentException("A corner of the box is not finite.", nameof(corner));
        for (int i = 0; i < 8; i++)
            corners[i] = new Vector3d((i & 1) == 0 ? corner.X : opposite.X, (i & 2) == 0 ? corner.Y : opposite.Y, (i & 4) == 0 ? corner.Z : opposite.Z);
    }

    public override int NodeCount => 1;

    public override ReadOnlySpan<Vector3d> Anchors => corners;

    public override int Left(int node) => -1;

    public override int Right(int node) => -1;

    public override double Thickness(int node) => 0;

    public override double Support(int node, Vector3d direction) => new Piece(corners, PieceKind.Box, 0).Support(direction);

    public override PieceKind Kind(int node) => PieceKind.Box;

    public override int Corners(int node, Span<Vector3d> corners)
    {
        this.corners.CopyTo(corners);
        return 8;
    }

    public override double Radius(int node) => 0;
}
