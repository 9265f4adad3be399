using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping;

/// <summary>From a pose down to a local minimum of an objective, sliding along the stops.</summary>
/// <remarks>
/// Where there are stops, first along slopes (<see cref="SlopeDescent"/>), which slides along stops but sticks where the nearest feature
/// changes and slopes jump. Then a pattern search without slopes inside the stops: steps along each coordinate, then along each pair; when
/// none helps, the parabolas through the three values in each coordinate say where the bottom is, that pose is tried, and the steps
/// shrink. What is found is only ever an upper bound of the least value, so its quality costs time, never truth.
/// </remarks>
internal sealed class LocalDescent(IMovingSystem system, ReachableSpace space, ISweepObjective objective, SweepSettings settings)
{
    private const double SmallestShare = 2e-6;
    private const int MaximumTries = 600;

    // Below this share of the ranges the parabolas are believed when they say that there is nothing to gain any more.
    private const double LocalShare = 0.01;
    private const double NothingMm = 1e-7;
    private const double Shrink = 0.3;
    private const double FirstPolishShare = 0.02;
    private const double LastPolishShare = 2e-5;
    private const int MaximumPolishTries = 500;
    private const double FirstPatternShare = 0.02;
    private const double SmallestSlopeShare = 1e-3;
    private const double LargestSlopeShare = 0.125;

    private readonly SlopeDescent slopes = new(system, space);
    private readonly int n = system.Box.Dimensions;
    private readonly double[] best = new double[system.Box.Dimensions];
    private readonly double[] next = new double[system.Box.Dimensions];
    private readonly double[] low = new double[system.Box.Dimensions];
    private readonly double[] high = new double[system.Box.Dimensions];
    private Witness witness;
    private Witness tried;
    private double value;
    private int tries;

    /// <summary>The local minimum below a pose; null when no reachable pose was found at the start.</summary>
    /// <param name="start">Where to begin, mm or rad; it may lie beyond a stop.</param>
    /// <param name="firstSteps">How far to look at first in each coordinate.</param>
    public Basin? From(ReadOnlySpan<double> start, ReadOnlySpan<double> firstSteps)
    {
        double[] step = firstSteps.ToArray();
        start.CopyTo(best);
        if (system.Stops.IsEmpty) value = TryInside(best, out witness);
        else if (GoDownSlopes(step))
            for (int d = 0; d < n; d++) step[d] = Math.Min(step[d], FirstPatternShare * system.Box.Range(d));
        else return null;
        if (double.IsNaN(value)) return null;
        for (tries = 0; tries < MaximumTries && IsCoarse(step, SmallestShare);)
        {
            if (StepAlongOne(step)) continue;
            double gain = StepToBottom(step, out bool moved);
            if (StepAlongTwo(step) || moved) moved = true;
            if (!moved && gain < NothingMm && !IsCoarse(step, LocalShare)) break;
            for (int d = 0; d < n; d++) step[d] *= Shrink;
        }

        return new Basin(value, [.. best], witness);
    }

    /// <summary>Follows the crease that a minimum lies in, which steps along the coordinates can't.</summary>
    /// <remarks>Gives way in one coordinate, finds the bottom in the others, and goes there when it is lower.</remarks>
    public Basin Polish(Basin basin)
    {
        basin.Pose.CopyTo(best);
        (value, witness) = (basin.Value, basin.Witness);
        var crease = new double[n];
        double share = FirstPolishShare;
        for (tries = 0; n > 1 && tries < MaximumPolishTries && share > LastPolishShare;)
        {
            bool moved = false;
            for (int side = 0; side < 2 * n && !moved; side++)
            {
                best.CopyTo(crease, 0);
                crease[side / 2] += (side % 2 == 0 ? share : -share) * system.Box.Range(side / 2);
                moved = AcceptBottomBeside(crease, side / 2, share);
            }

            share *= moved ? 1.6 : 0.35;
        }

        return new Basin(value, [.. best], witness);
    }

    /// <summary>The value at the pose moved onto the stops it passes; not a number when that fails.</summary>
    public double Try(double[] pose, out Witness at)
    {
        at = default;
        return space.Project(pose, settings.StopGiveMm) is { } solved ? Value(solved, out at) : double.NaN;
    }

    private double Value(SolvedPose solved, out Witness at) => objective.Evaluate(solved, out at);

    private bool GoDownSlopes(double[] step)
    {
        double share = 0;
        for (int d = 0; d < n; d++) share = Math.Max(share, step[d] / system.Box.Range(d));
        double[]? end = slopes.From(best, (solved, _) => Value(solved, out Witness _), Math.Clamp(share, SmallestSlopeShare, LargestSlopeShare));
        if (end is null) return false;
        end.CopyTo(best, 0);
        value = Value(system.At((ReadOnlySpan<double>)best), out witness);
        return true;
    }

    private bool AcceptBottomBeside(double[] crease, int held, double share)
    {
        tries++;
        double bottom = TryInside(crease, out Witness seen);
        for (double step = share; step > 0.003 * share && !double.IsNaN(bottom); step *= 0.4)
            for (int side = 0; side < 2 * n; side++)
            {
                int d = side / 2;
                if (d == held) continue;
                crease.CopyTo(next, 0);
                next[d] += (side % 2 == 0 ? step : -step) * system.Box.Range(d);
                double found = TryNext();
                if (!(found < bottom)) continue;
                (bottom, seen) = (found, tried);
                next.CopyTo(crease, 0);
            }

        if (!(bottom < value)) return false;
        (value, witness) = (bottom, seen);
        crease.CopyTo(best, 0);
        return true;
    }

    private bool StepAlongOne(double[] step)
    {
        bool moved = false;
        for (int d = 0; d < n; d++)
        {
            low[d] = Offset(d, -step[d], d, 0);
            high[d] = double.NaN;
            if (Accept(low[d])) moved = true;
            else if (Accept(high[d] = Offset(d, step[d], d, 0))) moved = true;
        }

        return moved;
    }

    private bool StepAlongTwo(double[] step)
    {
        for (int d = 0; d < n; d++)
            for (int e = d + 1; e < n; e++)
                for (int signs = 0; signs < 4; signs++)
                    if (Accept(Offset(d, (signs & 1) == 0 ? step[d] : -step[d], e, (signs & 2) == 0 ? step[e] : -step[e]))) return true;
        return false;
    }

    // Returns what the parabolas promise.
    private double StepToBottom(double[] step, out bool moved)
    {
        double gain = 0;
        best.CopyTo(next, 0);
        for (int d = 0; d < n; d++)
        {
            double bend = low[d] + high[d] - (2 * value), rise = high[d] - low[d];
            bool isAtFace = best[d] <= system.Box.Coordinates[d].Low || best[d] >= system.Box.Coordinates[d].High;
            if (isAtFace || !(bend > 0)) continue;
            next[d] -= step[d] * rise / (2 * bend);
            gain += rise * rise / (8 * bend);
        }

        moved = gain > NothingMm && Accept(TryNext());
        return gain;
    }

    private double Offset(int d, double by, int e, double byOther)
    {
        best.CopyTo(next, 0);
        next[d] += by;
        next[e] += byOther;
        return TryNext();
    }

    private double TryNext()
    {
        tries++;
        return TryInside(next, out tried);
    }

    // A pose beyond a stop is none: the slopes have led along the stops already.
    private double TryInside(double[] pose, out Witness at)
    {
        at = default;
        space.Clamp(pose);
        SolvedPose solved = system.At((ReadOnlySpan<double>)pose);
        return solved.IsSolved && space.LeastReserve(solved) >= -ReachableSpace.MetMm ? Value(solved, out at) : double.NaN;
    }

    private bool Accept(double found)
    {
        if (!(found < value)) return false;
        (value, witness) = (found, tried);
        next.CopyTo(best, 0);
        return true;
    }

    private bool IsCoarse(double[] step, double share)
    {
        for (int d = 0; d < n; d++)
            if (step[d] > share * system.Box.Range(d)) return true;
        return false;
    }
}
