using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>What is known of the motion over one block of the pose box: an enclosure, or derivatives read at its nodes.</summary>
internal sealed class MotionBlock
{
    /// <summary>What read second derivatives are multiplied by: twice for what lies between the nodes, twice for a danger.</summary>
    public const double ReadFactor = 4;

    private readonly ImmutableArray<Follower> followers = [];
    private readonly Lazy<ImmutableArray<ProvedPart>>? proved;
    private readonly Lazy<ImmutableArray<MotionJet<Interval>[][]>>? parts;
    private readonly MotionJet<Real>[][][]? read;

    /// <param name="followers">The bodies that come last in each list of jets.</param>
    /// <param name="parts">The parts that cover the block; made when first asked for.</param>
    public MotionBlock(ImmutableArray<Follower> followers, Func<ImmutableArray<ProvedPart>> parts)
    {
        (this.followers, Basis) = (followers, CurvatureBasis.Enclosed);
        proved = new(parts);
        this.parts = new(() => [.. proved.Value.Select(WithFollowers)]);
    }

    /// <param name="followers">The bodies that come last in each list of jets.</param>
    /// <param name="read">For each node, each coordinate, each body.</param>
    public MotionBlock(ImmutableArray<Follower> followers, MotionJet<Real>[][][] read) =>
        (this.followers, this.read, Basis) = (followers, read, CurvatureBasis.Read);

    private MotionBlock() => Basis = CurvatureBasis.Unknown;

    public static MotionBlock Unknown { get; } = new();

    public CurvatureBasis Basis { get; }

    /// <summary>The parts that cover the block, where it was proved.</summary>
    public ImmutableArray<ProvedPart> Parts => proved?.Value ?? [];

    /// <summary>Bounds, coordinate by coordinate, the second derivatives of a body's points; false when one has no bound over this block.</summary>
    public bool TryBound(int frameBody, int body, ReadOnlySpan<Vector3d> anchors, Span<Curvature> perCoordinate)
    {
        if (Basis == CurvatureBasis.Unknown) return false;
        for (int k = 0; k < perCoordinate.Length; k++)
        {
            perCoordinate[k] = Bound(k, frameBody, body, anchors);
            if (!double.IsFinite(perCoordinate[k].Length)) return false;
        }

        return true;
    }

    private MotionJet<Interval>[][] WithFollowers(ProvedPart part) =>
        [.. part.Jets.Select(jets => (MotionJet<Interval>[])[.. jets, .. followers.Select(f => f.Jet<Interval>(jets))])];

    private Curvature Bound(int coordinate, int frameBody, int body, ReadOnlySpan<Vector3d> anchors)
    {
        bool started = false;
        Curvature hull = Curvature.None;
        foreach (Vector3d anchor in anchors)
        {
            Curvature own = parts is not null ? Enclosed(coordinate, frameBody, body, anchor) : Read(coordinate, frameBody, body, anchor);
            hull = started ? Curvature.Hull(hull, own) : own;
            started = true;
        }

        return hull;
    }

    private Curvature Enclosed(int coordinate, int frameBody, int body, Vector3d anchor)
    {
        ImmutableArray<MotionJet<Interval>[][]> over = parts!.Value;
        Curvature hull = Enclosed(over[0][coordinate], frameBody, body, anchor);
        for (int i = 1; i < over.Length; i++) hull = Curvature.Hull(hull, Enclosed(over[i][coordinate], frameBody, body, anchor));
        return hull;
    }

    private Curvature Enclosed(MotionJet<Interval>[] jets, int frameBody, int body, Vector3d anchor)
    {
        Vector3<Taylor2<Interval>> path = RelativePath.Of<Interval>(followers, jets, frameBody, body, anchor);
        Interval x = path.X.Second, y = path.Y.Second, z = path.Z.Second;
        double square = (x.Magnitude * x.Magnitude) + (y.Magnitude * y.Magnitude) + (z.Magnitude * z.Magnitude);
        return new Curvature(x.Low, x.High, y.Low, y.High, z.Low, z.High, Math.Sqrt(square) * (1 + 1e-14));
    }

    private Curvature Read(int coordinate, int frameBody, int body, Vector3d anchor)
    {
        double largest = 0;
        foreach (MotionJet<Real>[][] node in read!)
        {
            MotionJet<Real>[] jets = node[coordinate];
            Vector3<Taylor2<Real>> path = RelativePath.Of<Real>(followers, jets, frameBody, body, anchor);
            largest = Math.Max(largest, new Vector3d(path.X.Second.Value, path.Y.Second.Value, path.Z.Second.Value).Length);
        }

        return Curvature.Ball(ReadFactor * largest);
    }
}
