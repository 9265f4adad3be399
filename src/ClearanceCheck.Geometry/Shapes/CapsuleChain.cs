using System.Collections.Immutable;

namespace ClearanceCheck.Geometry.Shapes;

/// <summary>A pipe, line, hose or tube: a polyline with one radius, and a binary tree over its index ranges.</summary>
/// <remarks>
/// A node is the capsule from the first to the last point of its range, wide enough to hold all points between: the distance to a
/// segment is convex, so on each piece of the polyline it is largest at the piece's ends, and looking at the points is enough.
/// </remarks>
public sealed class CapsuleChain : Solid
{
    // What rounding can take from a stated containment, as a share of the coordinates' size.
    private const double ContainmentGuard = 1e-14;

    private readonly ImmutableArray<Vector3d> points;
    private readonly Capsule[] capsules;
    private readonly int[] lefts;
    private readonly int[] rights;

    /// <exception cref="ArgumentException">No point, a point that is not finite, or a radius that is negative or not finite.</exception>
    public CapsuleChain(IEnumerable<Vector3d> points, double radiusMm)
    {
        this.points = [.. points];
        if (this.points.IsEmpty) throw new ArgumentException("A chain needs a point.", nameof(points));
        if (!this.points.All(p => p.IsFinite)) throw new ArgumentException("A point of the chain is not finite.", nameof(points));
        if (!(radiusMm >= 0) || !double.IsFinite(radiusMm)) throw new ArgumentException("The radius must be zero or more.", nameof(radiusMm));
        RadiusMm = radiusMm;
        int segments = Math.Max(1, this.points.Length - 1);
        int nodes = (2 * segments) - 1;
        capsules = new Capsule[nodes];
        lefts = new int[nodes];
        rights = new int[nodes];
        int used = 0;
        Build(0, segments, ref used);
    }

    public ImmutableArray<Vector3d> Points => points;

    public double RadiusMm { get; }

    public override int NodeCount => capsules.Length;

    public override ReadOnlySpan<Vector3d> Anchors => points.AsSpan();

    public override int Left(int node) => lefts[node];

    public override int Right(int node) => rights[node];

    public override double Thickness(int node) => capsules[node].Radius - RadiusMm;

    public override double Support(int node, Vector3d direction) => capsules[node].Support(direction);

    public override PieceKind Kind(int node) => PieceKind.Simplex;

    public override double Radius(int node) => capsules[node].Radius;

    public override int Corners(int node, Span<Vector3d> corners)
    {
        (corners[0], corners[1]) = (capsules[node].From, capsules[node].To);
        return 2;
    }

    /// <summary>The node's capsule in the body's frame.</summary>
    public Capsule Piece(int node) => capsules[node];

    private int Build(int first, int last, ref int used)
    {
        int node = used++;
        capsules[node] = Around(first, last);
        if (last - first <= 1)
        {
            lefts[node] = rights[node] = -1;
            return node;
        }

        int middle = (first + last) / 2;
        lefts[node] = Build(first, middle, ref used);
        rights[node] = Build(middle, last, ref used);
        return node;
    }

    private Capsule Around(int first, int last)
    {
        Vector3d from = points[first], to = points[Math.Min(last, points.Length - 1)];
        double farthest = 0, size = 0;
        for (int i = first + 1; i < last; i++)
        {
            farthest = Math.Max(farthest, SegmentDistance.FromPoint(points[i], from, to));
            size = Math.Max(size, Math.Abs(points[i].X) + Math.Abs(points[i].Y) + Math.Abs(points[i].Z));
        }

        return new Capsule(from, to, RadiusMm + farthest + (size * ContainmentGuard));
    }
}
