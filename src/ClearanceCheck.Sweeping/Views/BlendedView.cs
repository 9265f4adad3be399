using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Sweeping.Views;

/// <summary>A wire between two bodies, as a binary tree over ranges of its points; a node's capsule is fitted in each pose anew.</summary>
internal sealed class BlendedView : SolidView
{
    // What rounding can take from a stated containment, as a share of the coordinates' size.
    private const double ContainmentGuard = 1e-14;

    private readonly BlendedChain chain;
    private readonly SweptTrack[] tracks;
    private readonly List<(int First, int Last, int Left, int Right)> nodes = [];
    private readonly Vector3d[] posed;
    private readonly double[] bulge;
    private Vector3d[][] atCorners = [];
    private TrackMotion near = new(0, 0);
    private TrackMotion far = new(0, 0);

    public BlendedView(BlendedChain chain)
    {
        this.chain = chain;
        Vector3d[] anchors = FewAnchors.Around(chain.Points.AsSpan());
        tracks = [new(chain.NearBody, anchors), new(chain.FarBody, anchors)];
        posed = new Vector3d[chain.Points.Length];
        Build(0, Math.Max(1, posed.Length - 1));
        bulge = new double[nodes.Count];
    }

    public override IReadOnlyList<SweptTrack> Tracks => tracks;

    public override int NodeCount => nodes.Count;

    public override int Left(int node) => nodes[node].Left;

    public override int Right(int node) => nodes[node].Right;

    public override double Thickness(int node) => double.IsNaN(bulge[node]) ? bulge[node] = Bulge(node, posed) : bulge[node];

    public override PieceKind Kind(int node) => PieceKind.Simplex;

    public override void Pose(ReadOnlySpan<RigidMotion> tracks)
    {
        Blend(tracks[0], tracks[1], posed);
        // A search asks for few of the nodes in any one pose.
        Array.Fill(bulge, double.NaN);
    }

    public override int Corners(int node, Span<Vector3d> corners) => Ends(node, posed, corners);

    public override double Radius(int node) => chain.RadiusMm + Thickness(node);

    public override double Support(int node, Vector3d n) => Support(posed, node, n);

    public override void Load(ReadOnlySpan<TrackMotion> tracks)
    {
        (near, far) = (tracks[0], tracks[1]);
        Pose([near.Centre, far.Centre]);
        if (atCorners.Length != near.Corners.Length) atCorners = [.. near.Corners.Select(_ => new Vector3d[posed.Length])];
        for (int c = 0; c < atCorners.Length; c++) Blend(near.Corners[c], far.Corners[c], atCorners[c]);
    }

    public override double SupportAt(int corner, int node, Vector3d n) => Support(atCorners[corner], node, n);

    public override int CornersAt(int corner, int node, Span<Vector3d> corners) => Ends(node, atCorners[corner], corners);

    public override double CellRadius(int corner, int node) => chain.RadiusMm + Bulge(node, atCorners[corner]);

    public override double Curvature(int coordinate, Vector3d n) =>
        Math.Max(near.Curvatures[coordinate].Along(n), far.Curvatures[coordinate].Along(n));

    public override double CurvatureLength(int coordinate) => Math.Max(near.Curvatures[coordinate].Length, far.Curvatures[coordinate].Length);

    private void Blend(in RigidMotion nearMotion, in RigidMotion farMotion, Vector3d[] into)
    {
        for (int i = 0; i < into.Length; i++)
            into[i] = Vector3d.Lerp(nearMotion.Apply(chain.Points[i]), farMotion.Apply(chain.Points[i]), chain.Shares[i]);
    }

    private double Support(Vector3d[] points, int node, Vector3d n)
    {
        (int first, int last, _, _) = nodes[node];
        double most = double.NegativeInfinity;
        for (int i = first; i <= Math.Min(last, points.Length - 1); i++) most = Math.Max(most, Vector3d.Dot(n, points[i]));
        return most + chain.RadiusMm;
    }

    private int Ends(int node, Vector3d[] points, Span<Vector3d> corners)
    {
        (int first, int last, _, _) = nodes[node];
        (corners[0], corners[1]) = (points[first], points[Math.Min(last, points.Length - 1)]);
        return 2;
    }

    private double Bulge(int node, Vector3d[] points)
    {
        (int first, int last, _, _) = nodes[node];
        double farthest = 0, size = 0;
        for (int i = first + 1; i < Math.Min(last, points.Length); i++)
        {
            farthest = Math.Max(farthest, SegmentDistance.FromPoint(points[i], points[first], points[last]));
            size = Math.Max(size, Math.Abs(points[i].X) + Math.Abs(points[i].Y) + Math.Abs(points[i].Z));
        }

        return farthest + (size * ContainmentGuard);
    }

    private int Build(int first, int last)
    {
        int node = nodes.Count;
        nodes.Add((first, last, -1, -1));
        if (last - first <= 1) return node;
        int middle = (first + last) / 2;
        nodes[node] = (first, last, Build(first, middle), Build(middle, last));
        return node;
    }
}
