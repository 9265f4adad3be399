using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Sweeping;

/// <summary>The signed gap of two solids through their trees.</summary>
internal sealed class GapObjective(Solid first, Solid second) : ISweepObjective
{
    private readonly IGapKernel kernel = GapKernels.For(first, second);
    private readonly Stack<OpenFeature> stack = new();
    private readonly double[] corners = new double[16];
    private readonly double[] others = new double[16];
    private int nearestFirst = FirstLeaf(first);
    private int nearestSecond = FirstLeaf(second);

    public ReadOnlySpan<Vector3d> Anchors => second.Anchors;

    public ImmutableArray<OpenFeature> Root => [default];

    public double Evaluate(in RigidMotion secondInFirst, out Witness witness)
    {
        // The pieces that were nearest in the pose before are so again, mostly: most nodes then fall to their distance or to their
        // extent along the direction between the two. The least gap does not depend on where one begins.
        PieceGap nearest = kernel.Measure(nearestFirst, nearestSecond, secondInFirst);
        witness = new Witness(nearestFirst, nearestSecond, nearest.OnFirst, nearest.OnSecond);
        if (double.IsNaN(nearest.Gap)) return double.NaN;
        Vector3d n = nearest.Direction, nInSecond = secondInFirst.ApplyInverseToDirection(n);
        double offset = Vector3d.Dot(n, secondInFirst.Translation);
        // Overlaps are known as "at least", which depends on the way through the tree: there it is always the same way.
        double best = nearest.Gap > 0 ? nearest.Gap : double.PositiveInfinity;
        stack.Clear();
        stack.Push(default);
        while (stack.TryPop(out OpenFeature pair))
        {
            if (best is > 0 and < double.PositiveInfinity && -first.Support(pair.First, -n) - offset - second.Support(pair.Second, nInSecond) >= best) continue;
            PieceGap gap = kernel.Measure(pair.First, pair.Second, secondInFirst);
            if (double.IsNaN(gap.Gap)) return double.NaN;
            if (!(gap.Gap < best)) continue;
            if (first.IsLeaf(pair.First) && second.IsLeaf(pair.Second))
            {
                best = gap.Gap;
                witness = new Witness(pair.First, pair.Second, gap.OnFirst, gap.OnSecond);
                (nearestFirst, nearestSecond) = (pair.First, pair.Second);
            }
            else
            {
                Expand(pair, default);
            }
        }

        return best;
    }

    public bool IsExact(double value) => value > 0;

    public void Examine(CellGeometry cell, ImmutableArray<OpenFeature> open, double threshold, CellOutcome outcome)
    {
        int d = cell.Dimensions;
        var loss = new CellLoss(stackalloc double[d], stackalloc double[d]);
        double lowestOpen = double.PositiveInfinity;
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

            PieceGap gap = kernel.Measure(pair.First, pair.Second, cell.Centre);
            double bound = gap.Gap < 0 ? Overlap(cell, pair, gap.Direction, loss) : Separation(cell, pair, gap.Direction, loss);
            bool leaves = first.IsLeaf(pair.First) && second.IsLeaf(pair.Second);
            if (leaves && gap.Gap < outcome.CentreValue)
            {
                outcome.CentreValue = gap.Gap;
                outcome.CentreWitness = new Witness(pair.First, pair.Second, gap.OnFirst, gap.OnSecond);
            }

            if (bound >= threshold)
            {
                outcome.Settled = Math.Min(outcome.Settled, bound);
                continue;
            }

            // Too loose because of the nodes' own thickness: look at their halves. Because of the cell's size: leave it to the cell's halves.
            double thickness = first.Thickness(pair.First) + second.Thickness(pair.Second);
            if (!leaves && (gap.Gap < threshold || thickness > 0.5 * (gap.Gap - bound)))
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
        for (int k = 0; k < remainders.Length; k++) remainders[k] = cell.Curvatures[k].Along(n) * cell.Widths[k] * cell.Widths[k] / 8;
        double lowestFirst = -first.Support(pair.First, -n);
        for (int c = 0; c < cell.CornerCount; c++)
        {
            ref readonly RigidMotion at = ref cell.Corners[c];
            separation[c] = lowestFirst - Vector3d.Dot(n, at.Translation) - second.Support(pair.Second, at.ApplyInverseToDirection(n));
        }
    }

    private void Expand(in OpenFeature pair, Vector3d direction)
    {
        bool splitFirst = !first.IsLeaf(pair.First)
            && (second.IsLeaf(pair.Second) || first.Thickness(pair.First) >= second.Thickness(pair.Second));
        if (splitFirst)
        {
            stack.Push(new OpenFeature(first.Right(pair.First), pair.Second, direction));
            stack.Push(new OpenFeature(first.Left(pair.First), pair.Second, direction));
        }
        else
        {
            stack.Push(new OpenFeature(pair.First, second.Right(pair.Second), direction));
            stack.Push(new OpenFeature(pair.First, second.Left(pair.Second), direction));
        }
    }

    private static int FirstLeaf(Solid solid)
    {
        int node = 0;
        while (!solid.IsLeaf(node)) node = solid.Left(node);
        return node;
    }
}
