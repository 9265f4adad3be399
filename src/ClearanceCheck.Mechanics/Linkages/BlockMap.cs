using System.Collections.Concurrent;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>The pose box in blocks, each proved when first asked for; blocks that resist are quartered, and read from the solver at the smallest size.</summary>
internal sealed class BlockMap(LinkageMotion motion)
{
    /// <summary>Blocks are no wider than this, mm of travel.</summary>
    public const double BlockMm = 60;

    /// <summary>And no wider than this, rad of an angle.</summary>
    public const double BlockRad = 0.2;

    // Halvings of a block that resists the proof, each coordinate, before its derivatives are only read.
    private const int Refinements = 2;

    // A block proved with more slack than the first is divided; the second is the most for the last.
    private const double Loose = 0.25;
    private const double Loosest = 0.6;

    // Proofs of many unknowns cost more than the cells that somewhat wider bounds cost.
    private const double LooseOfMany = 0.35;
    private const int ManyUnknowns = 16;

    private readonly BlockProver prover = new(motion);
    private readonly ConcurrentDictionary<DyadicCell, MotionBlock> known = new();
    private readonly ConcurrentDictionary<(DyadicCell Cell, int FrameBody, int Body, Vector3d Point), (CurvatureBasis Basis, Curvature[] Bounds)> ofPoints = new();

    public CurvatureBasis Bound(in DyadicCell cell, int frameBody, int body, ReadOnlySpan<Vector3d> anchors, Span<Curvature> perCoordinate)
    {
        if (anchors.Length != 1) return BoundAnew(cell, frameBody, body, anchors, perCoordinate);
        // Single points are those of stops, which every pair asks for again.
        var key = (cell, frameBody, body, anchors[0]);
        if (!ofPoints.TryGetValue(key, out (CurvatureBasis Basis, Curvature[] Bounds) known))
        {
            known.Bounds = new Curvature[perCoordinate.Length];
            known.Basis = BoundAnew(cell, frameBody, body, anchors, known.Bounds);
            ofPoints.TryAdd(key, known);
        }

        known.Bounds.CopyTo(perCoordinate);
        return known.Basis;
    }

    private CurvatureBasis BoundAnew(in DyadicCell cell, int frameBody, int body, ReadOnlySpan<Vector3d> anchors, Span<Curvature> perCoordinate)
    {
        CurvatureBasis basis = CurvatureBasis.Enclosed;
        bool started = false;
        foreach (DyadicCell block in BlocksOver(cell))
        {
            CurvatureBasis own = BoundBlock(block, cell, Refinements, frameBody, body, anchors, perCoordinate, ref started);
            if (own > basis) basis = own;
            if (basis == CurvatureBasis.Unknown) return basis;
        }

        return basis;
    }

    /// <summary>The proved parts that cover a cell, and what lies beside it in its blocks; null where a block is not proved.</summary>
    public List<ProvedPart>? ProvedOver(in DyadicCell cell)
    {
        var parts = new List<ProvedPart>();
        foreach (DyadicCell block in BlocksOver(cell))
            if (!AddProved(block, cell, Refinements, parts)) return null;
        return parts;
    }

    private bool AddProved(in DyadicCell block, in DyadicCell cell, int refinements, List<ProvedPart> parts)
    {
        MotionBlock data = Block(block, refinements == 0);
        if (data.Basis == CurvatureBasis.Enclosed)
        {
            foreach (ProvedPart part in data.Parts)
                if (Overlaps(part, cell)) parts.Add(part);
            return true;
        }

        if (refinements == 0) return false;
        foreach (DyadicCell part in Parts(block))
            if (Meets(part, cell) && !AddProved(part, cell, refinements - 1, parts)) return false;
        return true;
    }

    private bool Overlaps(ProvedPart part, in DyadicCell cell)
    {
        for (int k = 0; k < part.Settings.Length; k++)
            if (part.Settings[k].High < motion.Box.ValueAt(k, cell.Low[k]) || part.Settings[k].Low > motion.Box.ValueAt(k, cell.Low[k] + cell.Size[k])) return false;
        return true;
    }

    private CurvatureBasis BoundBlock(
        in DyadicCell block, in DyadicCell cell, int refinements, int frameBody, int body, ReadOnlySpan<Vector3d> anchors, Span<Curvature> perCoordinate, ref bool started)
    {
        MotionBlock data = Block(block, refinements == 0);
        Span<Curvature> bounds = stackalloc Curvature[perCoordinate.Length];
        if (data.TryBound(frameBody, body, anchors, bounds))
        {
            for (int k = 0; k < bounds.Length; k++) perCoordinate[k] = started ? Curvature.Hull(perCoordinate[k], bounds[k]) : bounds[k];
            started = true;
            return data.Basis;
        }

        if (refinements == 0) return CurvatureBasis.Unknown;
        CurvatureBasis basis = CurvatureBasis.Enclosed;
        foreach (DyadicCell part in Parts(block))
        {
            if (!Meets(part, cell)) continue;
            CurvatureBasis own = BoundBlock(part, cell, refinements - 1, frameBody, body, anchors, perCoordinate, ref started);
            if (own > basis) basis = own;
        }

        return basis;
    }

    private bool IsLarge => motion.Stages is null && motion.Linkage.Unknowns > ManyUnknowns;

    private MotionBlock Block(in DyadicCell block, bool mayRead) =>
        known.GetOrAdd(block, static (key, arg) => arg.Map.Make(key, arg.MayRead), (Map: this, MayRead: mayRead));

    private MotionBlock Make(in DyadicCell block, bool mayRead)
    {
        int d = motion.Box.Dimensions;
        SolvedPose centre = motion.At(block.Center(d));
        if (!centre.IsSolved) return MotionBlock.Unknown;
        ProvedBlock? proved = prover.TryProve(block, motion.LinkageBodies(centre), mayRead ? Loosest : IsLarge ? LooseOfMany : Loose);
        if (proved is not null && CornersAreInside(block, proved.Proof)) return new MotionBlock(motion.Followers, proved.Parts);
        return mayRead ? Read(block) : MotionBlock.Unknown;
    }

    // Neighbouring blocks share corners; when each block's only solution is the stored one there, their branches are one.
    private bool CornersAreInside(in DyadicCell block, Enclosure proof)
    {
        int d = motion.Box.Dimensions;
        for (int corner = 0; corner < 1 << d; corner++)
        {
            SolvedPose pose = motion.At(block.Corner(corner, d));
            if (!pose.IsSolved || !proof.Contains(pose.Bodies.Span)) return false;
        }

        return true;
    }

    private MotionBlock Read(in DyadicCell block)
    {
        int d = motion.Box.Dimensions;
        int nodes = 1;
        for (int k = 0; k < d; k++) nodes *= 3;
        var read = new MotionJet<Real>[nodes][][];
        var settings = new double[d];
        for (int node = 0; node < nodes; node++)
        {
            DyadicPose at = block.Low;
            for (int k = 0, rest = node; k < d; k++, rest /= 3) at = at.With(k, block.Low[k] + (block.Size[k] / 2 * (rest % 3)));
            SolvedPose pose = motion.At(at);
            if (!pose.IsSolved) return MotionBlock.Unknown;
            motion.Box.Values(at, settings);
            read[node] = new MotionJet<Real>[d][];
            for (int k = 0; k < d; k++) read[node][k] = WithFollowers(LinkageDerivatives.Along(motion.Linkage, motion.LinkageBodies(pose), settings, k));
        }

        return new MotionBlock(motion.Followers, read);
    }

    private MotionJet<T>[] WithFollowers<T>(MotionJet<T>[] jets)
        where T : unmanaged, IReal<T> => [.. jets, .. motion.Followers.Select(f => f.Jet<T>(jets))];

    /// <summary>The blocks that a cell meets: the one that holds it, or all that it spans.</summary>
    public IReadOnlyList<DyadicCell> Regions(in DyadicCell cell) => BlocksOver(cell);

    private List<DyadicCell> BlocksOver(DyadicCell cell)
    {
        int d = motion.Box.Dimensions;
        var blocks = new List<DyadicCell> { new(default, default) };
        for (int k = 0; k < d; k++)
        {
            int size = BlockSize(k);
            int first = cell.Low[k] / size, last = (cell.Low[k] + cell.Size[k] - 1) / size;
            var next = new List<DyadicCell>();
            foreach (DyadicCell block in blocks)
                for (int i = first; i <= last; i++)
                    next.Add(new DyadicCell(block.Low.With(k, i * size), block.Size.With(k, size)));
            blocks = next;
        }

        return blocks;
    }

    private int BlockSize(int dimension)
    {
        int size = DyadicPose.Denominator;
        double width = motion.Box.Range(dimension);
        double widest = motion.Box.Coordinates[dimension].IsAngle ? BlockRad : BlockMm;
        while (width > widest)
        {
            width /= 2;
            size /= 2;
        }

        return size;
    }

    private List<DyadicCell> Parts(in DyadicCell block)
    {
        var parts = new List<DyadicCell> { block };
        for (int k = 0; k < motion.Box.Dimensions; k++)
            parts = [.. parts.SelectMany(p => { (DyadicCell low, DyadicCell high) = p.Halves(k); return new[] { low, high }; })];
        return parts;
    }

    private bool Meets(in DyadicCell a, in DyadicCell b)
    {
        for (int k = 0; k < motion.Box.Dimensions; k++)
            if (a.Low[k] + a.Size[k] <= b.Low[k] || b.Low[k] + b.Size[k] <= a.Low[k]) return false;
        return true;
    }
}
