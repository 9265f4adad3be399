using System.Collections.Immutable;

namespace ClearanceCheck.Geometry.Shapes;

/// <summary>Points, segments and triangles, each with a radius, in a binary tree of boxes: plates, brackets, scans.</summary>
/// <remarks>
/// The tree is laid out depth first: a node's first child follows it, its second follows all nodes of the first. Nodes are split at the
/// median along their longest side, ties by number, so the tree depends on the simplices alone. A million triangles take about 130 MB.
/// </remarks>
public sealed class SimplexTree : Solid
{
    private const int MostAnchors = 32;

    private readonly ImmutableArray<Vector3d> points;
    private readonly ImmutableArray<Simplex> simplices;
    private readonly int[] seconds;
    private readonly Vector3d[] lows;
    private readonly Vector3d[] highs;
    private readonly double[] radii;
    private readonly Vector3d[] anchors;

    /// <exception cref="ArgumentException">No simplex, a corner that does not exist or is not finite, or a radius that is negative or not finite.</exception>
    public SimplexTree(ImmutableArray<Vector3d> points, ImmutableArray<Simplex> simplices)
    {
        if (simplices.IsEmpty) throw new ArgumentException("A solid needs a simplex.", nameof(simplices));
        foreach (ref readonly Simplex s in simplices.AsSpan())
        {
            if (Math.Min(s.A, Math.Min(s.B, s.C)) < 0 || Math.Max(s.A, Math.Max(s.B, s.C)) >= points.Length) throw new ArgumentException("A simplex has a corner that does not exist.", nameof(simplices));
            if (!points[s.A].IsFinite || !points[s.B].IsFinite || !points[s.C].IsFinite) throw new ArgumentException("A corner is not finite.", nameof(points));
            if (!(s.Radius >= 0) || !double.IsFinite(s.Radius)) throw new ArgumentException("A radius must be zero or more.", nameof(simplices));
        }

        (this.points, this.simplices) = (points, simplices);
        int nodes = (2 * simplices.Length) - 1;
        (seconds, lows, highs, radii) = (new int[nodes], new Vector3d[nodes], new Vector3d[nodes], new double[nodes]);
        var order = new int[simplices.Length];
        for (int i = 0; i < order.Length; i++) order[i] = i;
        var sort = new MedianSplit(points, simplices, order);
        Build(0, 0, order.Length, order, sort);
        anchors = points.Length <= MostAnchors ? [.. points] : BoxOf(0);
    }

    public override int NodeCount => seconds.Length;

    public override ReadOnlySpan<Vector3d> Anchors => anchors;

    public override int Left(int node) => seconds[node] < 0 ? -1 : node + 1;

    public override int Right(int node) => seconds[node] < 0 ? -1 : seconds[node];

    /// <summary>Half of the box's diagonal: a corner of the box may be about that far from what it holds.</summary>
    public override double Thickness(int node) => seconds[node] < 0 ? 0 : (highs[node] - lows[node]).Length / 2;

    public override double Support(int node, Vector3d direction)
    {
        if (seconds[node] < 0)
        {
            Simplex s = simplices[~seconds[node]];
            return Math.Max(Vector3d.Dot(direction, points[s.A]), Math.Max(Vector3d.Dot(direction, points[s.B]), Vector3d.Dot(direction, points[s.C]))) + s.Radius;
        }

        ref readonly Vector3d low = ref lows[node], high = ref highs[node];
        return (direction.X * (direction.X < 0 ? low.X : high.X)) + (direction.Y * (direction.Y < 0 ? low.Y : high.Y)) + (direction.Z * (direction.Z < 0 ? low.Z : high.Z)) + radii[node];
    }

    public override PieceKind Kind(int node) => seconds[node] < 0 ? PieceKind.Simplex : PieceKind.Box;

    public override double Radius(int node) => radii[node];

    public override int Corners(int node, Span<Vector3d> corners)
    {
        if (seconds[node] >= 0)
        {
            BoxOf(node, corners);
            return 8;
        }

        Simplex s = simplices[~seconds[node]];
        corners[0] = points[s.A];
        if (s.B == s.A && s.C == s.A) return 1;
        corners[1] = points[s.B];
        if (s.C == s.B) return 2;
        corners[2] = points[s.C];
        return 3;
    }

    // Returns the number after the last node of the range.
    private int Build(int node, int from, int to, int[] order, MedianSplit sort)
    {
        if (to - from == 1)
        {
            Simplex s = simplices[order[from]];
            (Vector3d a, Vector3d b, Vector3d c) = (points[s.A], points[s.B], points[s.C]);
            (seconds[node], radii[node]) = (~order[from], s.Radius);
            (lows[node], highs[node]) = (Low(a, Low(b, c)), High(a, High(b, c)));
            return node + 1;
        }

        int middle = sort.Split(from, to);
        int second = Build(node + 1, from, middle, order, sort);
        seconds[node] = second;
        int end = Build(second, middle, to, order, sort);
        (lows[node], highs[node]) = (Low(lows[node + 1], lows[second]), High(highs[node + 1], highs[second]));
        radii[node] = Math.Max(radii[node + 1], radii[second]);
        return end;
    }

    private Vector3d[] BoxOf(int node)
    {
        var corners = new Vector3d[8];
        BoxOf(node, corners);
        return corners;
    }

    private void BoxOf(int node, Span<Vector3d> corners)
    {
        ref readonly Vector3d low = ref lows[node], high = ref highs[node];
        for (int i = 0; i < 8; i++) corners[i] = new Vector3d((i & 1) == 0 ? low.X : high.X, (i & 2) == 0 ? low.Y : high.Y, (i & 4) == 0 ? low.Z : high.Z);
    }

    private static Vector3d Low(Vector3d a, Vector3d b) => new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Min(a.Z, b.Z));

    private static Vector3d High(Vector3d a, Vector3d b) => new(Math.Max(a.X, b.X), Math.Max(a.Y, b.Y), Math.Max(a.Z, b.Z));
}
