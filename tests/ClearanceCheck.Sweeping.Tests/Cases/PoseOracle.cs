using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping.Tests.Cases;

/// <summary>The gap of a pair pose by pose, all pieces against all pieces and no tree: what a sampling program would see.</summary>
internal sealed class PoseOracle(SweepCase pair)
{
    private readonly int[] firstLeaves = Leaves(pair.First);
    private readonly int[] secondLeaves = Leaves(pair.Second);

    public PoseBox Box => pair.System.Box;

    /// <summary>As <see cref="Least(SplitMix64, int, double[], double[], double)"/> over the whole box.</summary>
    public (double Gap, double[] Pose) Least(SplitMix64 random, int samples) =>
        Least(random, samples, [.. Box.Coordinates.Select(c => c.Low)], [.. Box.Coordinates.Select(c => c.High)]);

    /// <summary>The gap in a pose; infinite where a stop is passed.</summary>
    public double Gap(ReadOnlySpan<double> pose)
    {
        SolvedPose at = pair.System.At(pose);
        if (!at.IsSolved) return double.PositiveInfinity;
        foreach (Stop stop in pair.System.Stops)
            if (stop.Reserve(at.Relative(stop.FirstBody, stop.SecondBody)) < 0) return double.PositiveInfinity;
        return Gap(at);
    }

    /// <summary>The gap whether stops are passed or not.</summary>
    public double GapBeyondStops(ReadOnlySpan<double> pose) => pair.System.At(pose) is { IsSolved: true } at ? Gap(at) : double.PositiveInfinity;

    // A pair of pieces that a plane already keeps farther apart than the least so far needs no closer look.
    private double Gap(SolvedPose at)
    {
        RigidMotion motion = at.Relative(pair.FirstBody, pair.SecondBody);
        double least = double.PositiveInfinity;
        Vector3d n = Vector3d.UnitZ, back = motion.ApplyInverseToDirection(n);
        foreach (int i in firstLeaves)
            foreach (int j in secondLeaves)
            {
                if (-pair.First.Support(i, -n) - Vector3d.Dot(n, motion.Translation) - pair.Second.Support(j, back) >= least) continue;
                PieceGap gap = SolidGap.Measure(pair.First, i, pair.Second, j, motion);
                if (!(gap.Gap < least)) continue;
                least = gap.Gap;
                n = gap.Direction;
                back = motion.ApplyInverseToDirection(n);
            }

        return least;
    }

    /// <summary>The least gap of random poses, of the box's corners and faces, and of the way down from the best of them.</summary>
    /// <param name="random">Draws the poses.</param>
    /// <param name="samples">How many.</param>
    /// <param name="low">Low end of the region.</param>
    /// <param name="high">High end of the region.</param>
    /// <param name="finest">The way down ends with steps of this share of the region.</param>
    public (double Gap, double[] Pose) Least(SplitMix64 random, int samples, double[] low, double[] high, double finest = 1e-6)
    {
        int d = Box.Dimensions;
        var seen = new List<(double Gap, double[] Pose)>();
        for (int i = 0; i < samples + (1 << d); i++)
        {
            var pose = new double[d];
            for (int k = 0; k < d; k++)
            {
                double share = i < 1 << d ? i >> k & 1 : Math.Clamp(random.In(-0.15, 1.15), 0, 1);
                pose[k] = low[k] + ((high[k] - low[k]) * share);
            }

            seen.Add((Gap(pose), pose));
        }

        (double Gap, double[] Pose) best = (double.PositiveInfinity, seen[0].Pose);
        foreach ((double gap, double[] pose) in seen.OrderBy(s => s.Gap).Take(2))
            if (gap < double.PositiveInfinity && Descend(gap, pose, low, high, finest) is var end && end.Gap < best.Gap) best = end;
        return best;
    }

    public (double Gap, double[] Pose) Descend(double gap, double[] pose, double[] low, double[] high, double finest)
    {
        for (double share = 0.1; share > finest; share *= 0.4)
            for (bool moved = true; moved;)
            {
                moved = false;
                for (int k = 0; k < 2 * pose.Length; k++)
                {
                    int d = k / 2;
                    double[] next = [.. pose];
                    next[d] = Math.Clamp(next[d] + ((k % 2 == 0 ? share : -share) * (high[d] - low[d])), low[d], high[d]);
                    if (!(Gap(next) is var found && found < gap)) continue;
                    (gap, pose, moved) = (found, next, true);
                }
            }

        return (gap, pose);
    }

    private static int[] Leaves(Solid solid) => [.. Enumerable.Range(0, solid.NodeCount).Where(solid.IsLeaf)];
}
