namespace ClearanceCheck.Geometry.Shapes;

/// <summary>A straight bar of rectangular section, its edges in any directions, mm: a stretch of a leaf spring.</summary>
public sealed class Plank : Solid
{
    private readonly Vector3d[] corners = new Vector3d[8];

    /// <param name="from">One end of the line along which it lies.</param>
    /// <param name="to">The other end.</param>
    /// <param name="across">From the line to one edge; the other is as far on the other side.</param>
    /// <param name="low">From the line to the lower face.</param>
    /// <param name="high">From the line to the upper face, in the same or the opposite direction as <paramref name="low"/>.</param>
    /// <exception cref="ArgumentException">A number that is not finite.</exception>
    public Plank(Vector3d from, Vector3d to, Vector3d across, Vector3d low, Vector3d high)
    {
        (From, To, Across, Low, High) = (from, to, across, low, high);
        for (int i = 0; i < 8; i++) corners[i] = ((i & 1) == 0 ? from : to) + ((i & 2) == 0 ? -across : across) + ((i & 4) == 0 ? low : high);
        if (!corners.All(c => c.IsFinite)) throw new ArgumentException("A corner of the plank is not finite.", nameof(from));
    }

    public Vector3d From { get; }

    public Vector3d To { get; }

    public Vector3d Across { get; }

    public Vector3d Low { get; }

    public Vector3d High { get; }

    public override int NodeCount => 1;

    public override ReadOnlySpan<Vector3d> Anchors => corners;

    /// <summary>The stretch of it between two shares of its line, 0 at <see cref="From"/> and 1 at <see cref="To"/>.</summary>
    public Plank Between(double first, double last) => new(Vector3d.Lerp(From, To, first), Vector3d.Lerp(From, To, last), Across, Low, High);

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
