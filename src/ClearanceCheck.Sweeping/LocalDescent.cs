using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping;

/// <summary>Down from a pose to a local minimum of an objective, with its witness.</summary>
internal sealed class LocalDescent(IMovingSystem system, ReachableSpace space, ISweepObjective objective, int frameBody, int body, SweepSettings settings)
{
    private const double SmallestShare = 1e-3;
    private const double LargestShare = 0.125;

    private readonly SlopeDescent descent = new(system, space);

    /// <summary>The local minimum below a pose; null when no reachable pose was found near it.</summary>
    /// <param name="start">Where to begin, mm or rad.</param>
    /// <param name="firstSteps">How far to look at first in each coordinate.</param>
    public Basin? From(ReadOnlySpan<double> start, ReadOnlySpan<double> firstSteps)
    {
        double share = 0;
        for (int d = 0; d < firstSteps.Length; d++) share = Math.Max(share, firstSteps[d] / system.Box.Range(d));
        double[]? pose = descent.From(start.ToArray(), (solved, _) => Value(solved, out Witness _), Math.Clamp(share, SmallestShare, LargestShare));
        if (pose is null) return null;
        double value = Value(system.At((ReadOnlySpan<double>)pose), out Witness witness);
        return new Basin(value, [.. pose], witness);
    }

    /// <summary>The value at the pose moved onto the stops it passes; not a number when that fails.</summary>
    public double Try(double[] pose, out Witness at)
    {
        at = default;
        return space.Project(pose, settings.StopGiveMm) is { } solved ? Value(solved, out at) : double.NaN;
    }

    private double Value(SolvedPose solved, out Witness witness) => objective.Evaluate(solved.Relative(frameBody, body), out witness);
}
