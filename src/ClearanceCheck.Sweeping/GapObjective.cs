using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Views;

namespace ClearanceCheck.Sweeping;

/// <summary>The signed gap of two solids through their trees.</summary>
internal sealed class GapObjective : ISweepObjective
{
    // From here on the pairs of a cell are no longer opened up: what they bound is looser, and the cell's halves go on.
    private const int MaximumOpen = 4096;

    // Deeper pairs of pieces that are looked for once two overlap: the deepest of a union is known as "at least" anyway.
    private const int MaximumOverlaps = 400;

    private readonly SolidView first;
    private readonly SolidView second;
    private readonly SweptTrack[] tracks;
    private readonly Stack<OpenFeature> stack = new();
    private readonly Stack<(int First, int Second, double Gap)> nodes = new();
    private readonly double[] corners = new double[16];
    private readonly double[] others = new double[16];
    private readonly Vector3d[] firstRoom = new Vector3d[Piece.MaximumCorners];
    private readonly Vector3d[] secondRoom = new Vector3d[Piece.MaximumCorners];
    private int nearestFirst;
    private int nearestSecond;

    /// <param name="frameBody">The body in whose frame the search runs.</param>
    /// <param name="first">The first solid; where one has hollows, it is this one and stands still in the frame.</param>
    /// <param name="second">The second solid.</param>
    public GapObjective(int frameBody, SweptSolid first, SweptSolid second)
    {
        FrameBody = frameBody;
        (this.first, this.second) = (SolidView.Of(first, frameBody), SolidView.Of(second, frameBody));
        tracks = [.. this.first.Tracks, .. this.second.Tracks];
        (nearestFirst, nearestSecond) = (FirstLeaf(this.first), FirstLeaf(this.second));
    }

    public int FrameBody { get; }

    public IReadOnlyList<SweptTrack> Tracks => tracks;

    public ImmutableArray<OpenFeature> Root => [default];

    public long Work { get; private set; }

    /// <summary>Leaves that were nearest in a pose like those to come: only time depends on it.</summary>
    public void StartAt(int firstLeaf, int secondLeaf)
    {
        if (first.Has(firstLeaf) && second.Has(secondLeaf) && first.IsLeaf(firstLeaf) && second.IsLeaf(secondLeaf)) (nearestFirst, nearestSecond) = (firstLeaf, secondLeaf);
    }

    public double Evaluate(ReadOnlySpan<RigidMotion> tracks, out Witness witness)
    {
        first.Pose(tracks[..first.Tracks.Count]);
        second.Pose(tracks[first.Tracks.Count..]);

        // The pieces that were nearest in the pose before are so again, mostly: most nodes then fall to their distance or to their
        // extent along the direction between the two. The least gap does not depend on where one begins.
        PieceGap nearest = Measure(nearestFirst, nearestSecond);
        witness = new Witness(nearestFirst, nearestSecond, nearest.OnFirst, nearest.OnSecond);
        if (double.IsNaN(nearest.Gap)) return double.NaN;

        // Overlaps are known as "at least", which depends on the way through the tree: there it is always the same way.
        double best = nearest.Gap > 0 ? nearest.Gap : double.PositiveInfinity;
        int overlaps = 0;
        nodes.Clear();
        if (!Look(0, 0, nearest.Direction, ref best, ref witness, ref overlaps, out double root)) return double.NaN;
        if (root < best) nodes.Push((0, 0, root));
        while (nodes.TryPop(out (int First, int Second, double Gap) pair))
        {
            if (!(pair.Gap < best) || overlaps > MaximumOverlaps) continue;
            ((int First, int Second) a, (int First, int Second) b) = Halves(pair.First, pair.Second);
            if (!Look(a.First, a.Second, nearest.Direction, ref best, ref witness, ref overlaps, out double gapA)) return double.NaN;
            if (!Look(b.First, b.Second, nearest.Direction, ref best, ref witness, ref overlaps, out double gapB)) return double.NaN;
            // The nearer of the two comes first.
            if (gapB < gapA) ((a, gapA), (b, gapB)) = ((b, gapB), (a, gapA));
            if (gapB < best) nodes.Push((b.First, b.Second, gapB));
            if (gapA < best) nodes.Push((a.First, a.Second, gapA));
        }

        return best;
    }

    /// <summary>The gap of two leaves in a pose; without a pose nothing moves.</summary>
    public double PieceGap(SolvedPose? pose, Witness pieces)
    {
        if (!first.Has(pieces.FirstNode) || !second.Has(pieces.SecondNode)) return double.NaN;
        RigidMotion[] motions = [.. tracks.Select(t => pose?.Relative(FrameBody, t.Body) ?? RigidMotion.Identity)];
        first.Pose(motions.AsSpan(0, first.Tracks.Count));
        second.Pose(motions.AsSpan(first.Tracks.Count));
        return Measure(pieces.FirstNode, pieces.SecondNode).Gap;
    }

    public bool IsExact(double value) => value > 0;

    public void Examine(CellGeometry cell, ImmutableArray<OpenFeature> open, double threshold, CellOutcome outcome)
    {
        int d = cell.Dimensions;
        var loss = new CellLoss(stackalloc double[d], stackalloc double[d]);
        double lowestOpen = double.PositiveInfinity;
        first.Load(cell.Tracks.AsSpan(0, first.Tracks.Count));
        second.Load(cell.Tracks.AsSpan(first.Tracks.Count));
        stack.Clear();
        foreach (OpenFeature feature in open) stack.Push(feature);
        while (stack.TryPop(out OpenFeature pair))
        {
            // The direction that separated it in the parent often still does, and then no distance is needed at all.
            if (pair.Direction != Vector3d.Zero && Separation(cell, pair, pair.Direction, loss) is var known && known >= threshold)
            {
                outcome.Settled = Math.Min(outcome.Settled, known);
                continue;
            }

            PieceGap gap = Measure(pair.First, pair.Second);
            double bound = gap.Gap < 0 ? Overlap(cell, pair, gap.Direction, loss) : Separation(cell, pair, gap.Direction, loss);
            bool leaves = first.IsLeaf(pair.First) && second.IsLeaf(pair.Second);
            if (leaves && gap.Gap < outcome.CentreValue)
            {
                outcome.CentreValue = gap.Gap;
                outcome.CentreWitness = new Witness(pair.First, pair.Second, gap.OnFirst, gap.OnSecond);
            }

            if (bound < threshold) bound = Math.Max(bound, Hollow(cell, pair, loss, bound));
            if (bound >= threshold)
            {
                outcome.Settled = Math.Min(outcome.Settled, bound);
                continue;
            }

            // Too loose because of the nodes' own thickness: look at their halves. Because of the cell's size: leave it to the cell's halves.
            double thickness = first.Thickness(pair.First) + second.Thickness(pair.Second);
            if (!leaves && thickness > 0.5 * (gap.Gap - bound) && stack.Count + outcome.Open.Count < MaximumOpen)
            {
                Expand(pair, gap.Direction);
                continue;
            }

            outcome.Open.Add(pair with { Direction = gap.Direction });
            outcome.Bound = Math.Min(outcome.Bound, bound);
            if (bound >= lowestOpen) continue;
            lowestOpen = bound;
            loss.CopyTo(outcome);
        }
    }

    // A pair of nodes in the pose: a leaf pair may become the best, any other says how near its leaves can be. False for no number.
    private bool Look(int firstNode, int secondNode, Vector3d n, ref double best, ref Witness witness, ref int overlaps, out double gap)
    {
        gap = double.PositiveInfinity;
        if (best is > 0 and < double.PositiveInfinity && IsFar(firstNode, secondNode, n, best)) return true;
        PieceGap measured = Measure(firstNode, secondNode);
        if (double.IsNaN(measured.Gap)) return false;
        if (best < 0 && measured.Gap < 0) overlaps++;
        if (!first.IsLeaf(firstNode) || !second.IsLeaf(secondNode))
        {
            gap = measured.Gap;
            return true;
        }

        if (!(measured.Gap < best)) return true;
        best = measured.Gap;
        witness = new Witness(firstNode, secondNode, measured.OnFirst, measured.OnSecond);
        (nearestFirst, nearestSecond) = (firstNode, secondNode);
        return true;
    }

    private bool IsFar(int firstNode, int secondNode, Vector3d n, double best) =>
        -first.Support(firstNode, -n) - second.Support(secondNode, n) >= best || HollowGap(firstNode, secondNode) >= best;

    private double HollowGap(int firstNode, int secondNode)
    {
        int count = second.Corners(secondNode, secondRoom);
        double least = double.PositiveInfinity;
        for (int i = 0; i < count && least > 0; i++) least = Math.Min(least, first.InsideHollow(firstNode, secondRoom[i]));
        return least - second.Radius(secondNode);
    }

    private PieceGap Measure(int firstNode, int secondNode)
    {
        Work++;
        int a = first.Corners(firstNode, firstRoom), b = second.Corners(secondNode, secondRoom);
        return SignedGap.Measure(
            new Piece(firstRoom.AsSpan(0, a), first.Kind(firstNode), first.Radius(firstNode)),
            new Piece(secondRoom.AsSpan(0, b), second.Kind(secondNode), second.Radius(secondNode)),
            first.IsLeaf(firstNode) && second.IsLeaf(secondNode));
    }

    private double Separation(CellGeometry cell, in OpenFeature pair, Vector3d n, CellLoss loss)
    {
        Span<double> remainders = stackalloc double[cell.Dimensions];
        Separate(cell, pair, n, corners, remainders);
        return cell.Bound(corners.AsSpan(0, cell.CornerCount), remainders, loss);
    }

    // Overlapping pieces part on either side.
    private double Overlap(CellGeometry cell, in OpenFeature pair, Vector3d n, CellLoss loss)
    {
        Span<double> remainders = stackalloc double[cell.Dimensions], otherRemainders = stackalloc double[cell.Dimensions];
        Separate(cell, pair, n, corners, remainders);
        Separate(cell, pair, -n, others, otherRemainders);
        return cell.Bound(corners.AsSpan(0, cell.CornerCount), remainders, others.AsSpan(0, cell.CornerCount), otherRemainders, loss);
    }

    private void Separate(CellGeometry cell, in OpenFeature pair, Vector3d n, double[] separation, Span<double> remainders)
    {
        for (int k = 0; k < remainders.Length; k++)
            remainders[k] = (first.Curvature(k, -n) + second.Curvature(k, n)) * cell.Widths[k] * cell.Widths[k] / 8;
        for (int c = 0; c < cell.CornerCount; c++) separation[c] = -first.SupportAt(c, pair.First, -n) - second.SupportAt(c, pair.Second, n);
    }

    /// <summary>The bound for what stays inside a hollow of the first solid, which no single direction separates from its wall.</summary>
    /// <remarks>
    /// With g the distance from the wall as <see cref="Solid.InsideHollow"/> bounds it, concave and no steeper than one, and x - I x the
    /// interpolation error of <see cref="CellGeometry"/>: g(x) >= g(I x) - |x - I x| >= sum of l_c g(x_c) - sum of M_k w_k^2 / 8, with the
    /// corners' weights l_c the same for all points, and M the length of the second derivative, as the direction is not known.
    /// </remarks>
    private double Hollow(CellGeometry cell, in OpenFeature pair, CellLoss loss, double soFar)
    {
        int count = second.Corners(pair.Second, secondRoom);
        for (int i = 0; i < count; i++)
            if (!(first.InsideHollow(pair.First, secondRoom[i]) > 0)) return soFar;
        Span<double> remainders = stackalloc double[cell.Dimensions];
        for (int k = 0; k < remainders.Length; k++) remainders[k] = second.CurvatureLength(k) * cell.Widths[k] * cell.Widths[k] / 8;
        for (int c = 0; c < cell.CornerCount; c++)
        {
            count = second.CornersAt(c, pair.Second, secondRoom);
            double least = double.PositiveInfinity;
            for (int i = 0; i < count; i++) least = Math.Min(least, first.InsideHollow(pair.First, secondRoom[i]));
            if (double.IsNegativeInfinity(least)) return soFar;
            corners[c] = least - second.CellRadius(c, pair.Second);
        }

        var own = new CellLoss(stackalloc double[cell.Dimensions], stackalloc double[cell.Dimensions]);
        double bound = cell.Bound(corners.AsSpan(0, cell.CornerCount), remainders, own);
        if (!(bound > soFar)) return soFar;
        own.Bound.CopyTo(loss.Bound);
        own.Plain.CopyTo(loss.Plain);
        return bound;
    }

    private void Expand(in OpenFeature pair, Vector3d direction)
    {
        ((int First, int Second) a, (int First, int Second) b) = Halves(pair.First, pair.Second);
        stack.Push(new OpenFeature(b.First, b.Second, direction));
        stack.Push(new OpenFeature(a.First, a.Second, direction));
    }

    // The thicker of the two nodes in halves.
    private ((int First, int Second) A, (int First, int Second) B) Halves(int firstNode, int secondNode)
    {
        bool splitFirst = !first.IsLeaf(firstNode) && (second.IsLeaf(secondNode) || first.Thickness(firstNode) >= second.Thickness(secondNode));
        return splitFirst
            ? ((first.Left(firstNode), secondNode), (first.Right(firstNode), secondNode))
            : ((firstNode, second.Left(secondNode)), (firstNode, second.Right(secondNode)));
    }

    private static int FirstLeaf(SolidView solid)
    {
        int node = 0;
        while (!solid.IsLeaf(node)) node = solid.Left(node);
        return node;
    }
}
