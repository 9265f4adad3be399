using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping;

/// <summary>From a pose down to a local minimum of an objective, sliding along the stops.</summary>
/// <remarks>
/// Pattern search: steps along each coordinate, then along each pair of coordinates, each brought back onto the stops it passes. When
/// no single step helps, the parabolas through the three values in each coordinate say where the bottom is; that pose is tried, and
/// the steps shrink. It needs no slopes, which jump where the nearest feature changes. What it finds is only ever an upper bound of
/// the least value, so its quality costs time, never truth.
/// </remarks>
internal sealed class LocalDescent(IMovingSystem system, ReachableSpace space, ISweepObjective objective, int frameBody, int body, SweepSettings settings)
{
    private const double SmallestShare = 2e-6;
    private const int MaximumTries = 600;

    // Below this share of the ranges the parabolas are believed when they say that there is nothing to gain any more.
    private const double LocalShare = 0.01;
    private const double NothingMm = 1e-7;
    private const double Shrink = 0.3;

    private readonly int n = system.Box.Dimensions;
    private readonly double[] best = new double[system.Box.Dimensions];
    private readonly double[] next = new double[system.Box.Dimensions];
    private readonly double[] low = new double[system.Box.Dimensions];
    private readonly double[] high = new double[system.Box.Dimensions];
    private Witness witness;
    private Witness tried;
    private double value;
    private int tries;

    public Basin? From(ReadOnlySpan<double> start, ReadOnlySpan<double> firstSteps)
    {
        start.CopyTo(best);
        value = Try(best, out witness);
        if (double.IsNaN(value)) return null;
        double[] step = firstSteps.ToArray();
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

    /// <summary>The value at the pose moved onto the stops it passes; not a number when that fails.</summary>
    public double Try(double[] pose, out Witness at)
    {
        at = default;
        return space.Project(pose, settings.StopGiveMm) is { } solved ? objective.Evaluate(solved.Relative(frameBody, body), out at) : double.NaN;
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
        return Try(next, out tried);
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
