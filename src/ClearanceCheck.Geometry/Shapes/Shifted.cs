namespace ClearanceCheck.Geometry.Shapes;

/// <summary>A solid moved by a displacement: to see what an error of its place does, without building its tree again.</summary>
public sealed class Shifted : Solid
{
    private readonly Solid inner;
    private readonly Vector3d by;
    private readonly Vector3d[] anchors;

    private Shifted(Solid inner, Vector3d by)
    {
        (this.inner, this.by) = (inner, by);
        anchors = new Vector3d[inner.Anchors.Length];
        for (int i = 0; i < anchors.Length; i++) anchors[i] = inner.Anchors[i] + by;
    }

    public override int NodeCount => inner.NodeCount;

    public override ReadOnlySpan<Vector3d> Anchors => anchors;

    /// <summary>The solid moved; itself where it is not.</summary>
    public static Solid Of(Solid solid, Vector3d by) => by == Vector3d.Zero ? solid : new Shifted(solid, by);

    public override int Left(int node) => inner.Left(node);

    public override int Right(int node) => inner.Right(node);

    public override double Thickness(int node) => inner.Thickness(node);

    public override double Support(int node, Vector3d direction) => inner.Support(node, direction) + Vector3d.Dot(direction, by);

    public override PieceKind Kind(int node) => inner.Kind(node);

    public override int Corners(int node, Span<Vector3d> corners)
    {
        int count = inner.Corners(node, corners);
        for (int i = 0; i < count; i++) corners[i] += by;
        return count;
    }

    public override double Radius(int node) => inner.Radius(node);

    public override double InsideHollow(int node, Vector3d point) => inner.InsideHollow(node, point - by);
}
