using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping;

/// <summary>The pose box cut by its stops: asks whether a pose is reachable, moves one that is not onto the stops it passed, and goes down slopes inside.</summary>
public sealed class ReachableSpace(IMovingSystem system)
{
    // Finite differences of solved poses: the solver's 1e-12 mm over this step leaves eight digits of a slope.
    private const double StepMm = 1e-3;
    private const double StepRad = 1e-6;

    /// <summary>A stop passed by less than this is met: far under any length that matters, far over rounding.</summary>
    internal const double MetMm = 1e-6;

    private const int MaximumProjections = 12;
    private const int FarthestGrid = 8;
    private const int FarthestStarts = 4;

    /// <summary>The smallest reserve of any stop in a solved pose, mm; infinite without stops.</summary>
    public double LeastReserve(SolvedPose pose)
    {
        double least = double.PositiveInfinity;
        foreach (Stop stop in system.Stops) least = Math.Min(least, stop.Reserve(pose.Relative(stop.FirstBody, stop.SecondBody)));
        return least;
    }

    /// <summary>Every stop with its reserve in a solved pose, mm.</summary>
    public IEnumerable<(Stop Stop, double Reserve)> Reserves(SolvedPose pose) =>
        system.Stops.Select(stop => (stop, stop.Reserve(pose.Relative(stop.FirstBody, stop.SecondBody))));

    /// <summary>Moves a pose into the box and onto the stops that it passes; null when the motion can't be solved or no way back is found.</summary>
    /// <param name="pose">Changed in place, mm or rad.</param>
    /// <param name="giveMm">A stop may stay passed by this when the last digits can't be had.</param>
    public SolvedPose? Project(double[] pose, double giveMm)
    {
        Clamp(pose);
        SolvedPose at = system.At((ReadOnlySpan<double>)pose);
        for (int round = 0; round < MaximumProjections && at.IsSolved && LeastReserve(at) < -MetMm; round++)
        {
            if (Linearize(pose, at, static (_, _) => 0) is not { } near || !StepBack(pose, near)) break;
            at = system.At((ReadOnlySpan<double>)pose);
        }

        return at.IsSolved && LeastReserve(at) >= -Math.Max(giveMm, MetMm) ? at : null;
    }

    /// <summary>Slope of a function of the pose by central differences inside the box, per mm or rad; null where a pose can't be solved.</summary>
    public double[]? Slope(ReadOnlySpan<double> pose, Func<SolvedPose, double> function)
    {
        double[] at = pose.ToArray();
        SolvedPose here = system.At(pose);
        return here.IsSolved ? Linearize(at, here, (solved, _) => function(solved))?.Slope : null;
    }

    /// <summary>A reachable pose with one coordinate as large (sign +1) or as small (-1) as was found; null when none is reachable.</summary>
    /// <remarks>For a person's eyes: no bound rests on it.</remarks>
    public double[]? Farthest(int dimension, int sign)
    {
        var descent = new SlopeDescent(system, this);
        double[]? best = null;
        foreach (double[] start in ReachableGridPoses().OrderByDescending(pose => sign * pose[dimension]).Take(FarthestStarts))
            if (descent.From(start, (_, pose) => -sign * pose[dimension]) is { } end && (best is null || sign * (end[dimension] - best[dimension]) > 0)) best = end;
        return best;
    }

    /// <summary>The objective and all stops near a solved pose to first order.</summary>
    internal Linearization? Linearize(double[] pose, SolvedPose here, Func<SolvedPose, double[], double> objective)
    {
        int n = pose.Length;
        var slope = new double[n];
        double[] reserves = Values(here);
        var reserveSlopes = new double[reserves.Length][];
        for (int j = 0; j < reserves.Length; j++) reserveSlopes[j] = new double[n];
        double[] at = [.. pose];
        for (int d = 0; d < n; d++)
        {
            PoseCoordinate c = system.Box.Coordinates[d];
            double step = c.IsAngle ? StepRad : StepMm;
            double high = Math.Min(c.High, pose[d] + step), low = Math.Max(c.Low, pose[d] - step);
            at[d] = high;
            SolvedPose above = system.At((ReadOnlySpan<double>)at);
            if (!above.IsSolved) return null;
            double valueAbove = objective(above, at);
            at[d] = low;
            SolvedPose below = system.At((ReadOnlySpan<double>)at);
            if (!below.IsSolved) return null;
            slope[d] = (valueAbove - objective(below, at)) / (high - low);
            at[d] = pose[d];
            double[] up = Values(above), down = Values(below);
            for (int j = 0; j < reserves.Length; j++) reserveSlopes[j][d] = (up[j] - down[j]) / (high - low);
        }

        return new Linearization(objective(here, at), slope, reserves, reserveSlopes);
    }

    /// <summary>Brings passed stops to zero to first order by the least change, in shares of the ranges.</summary>
    /// <remarks>A coordinate that would leave the box is held, and the others make up for it.</remarks>
    internal bool StepBack(double[] pose, Linearization near)
    {
        var move = new double[pose.Length];
        var held = new bool[pose.Length];
        for (int again = 0; again <= pose.Length; again++)
        {
            LeastMove(near, held, move);
            bool more = false;
            for (int d = 0; d < pose.Length; d++)
            {
                PoseCoordinate c = system.Box.Coordinates[d];
                if (!(move[d] > 0 && pose[d] >= c.High) && !(move[d] < 0 && pose[d] <= c.Low)) continue;
                (held[d], more) = (true, true);
            }

            if (!more) break;
        }

        double largest = 0;
        for (int d = 0; d < pose.Length; d++)
        {
            pose[d] += move[d];
            largest = Math.Max(largest, Math.Abs(move[d]));
        }

        Clamp(pose);
        return largest > 0;
    }

    // Gauss-Seidel over the stops.
    private void LeastMove(Linearization near, bool[] held, double[] move)
    {
        Array.Clear(move);
        int rounds = near.Reserves.Length == 1 ? 1 : 30;
        for (int round = 0; round < rounds; round++)
            for (int j = 0; j < near.Reserves.Length; j++)
            {
                double reserve = near.Reserves[j], square = 0;
                for (int d = 0; d < move.Length; d++)
                {
                    double slope = near.ReserveSlopes[j][d], perRange = slope * system.Box.Range(d);
                    reserve += slope * move[d];
                    if (!held[d]) square += perRange * perRange;
                }

                if (!(square > 0) || reserve >= 0) continue;
                for (int d = 0; d < move.Length; d++)
                    if (!held[d]) move[d] -= reserve / square * near.ReserveSlopes[j][d] * system.Box.Range(d) * system.Box.Range(d);
            }
    }

    internal void Clamp(double[] pose)
    {
        for (int d = 0; d < pose.Length; d++) pose[d] = Math.Clamp(pose[d], system.Box.Coordinates[d].Low, system.Box.Coordinates[d].High);
    }

    private double[] Values(SolvedPose pose)
    {
        var values = new double[system.Stops.Length];
        for (int j = 0; j < values.Length; j++)
        {
            Stop stop = system.Stops[j];
            values[j] = stop.Reserve(pose.Relative(stop.FirstBody, stop.SecondBody));
        }

        return values;
    }

    private IEnumerable<double[]> ReachableGridPoses()
    {
        int d = system.Box.Dimensions, total = 1, count = d <= 2 ? FarthestGrid + 1 : 3;
        for (int k = 0; k < d; k++) total *= count;
        for (int node = 0; node < total; node++)
        {
            DyadicPose at = default;
            for (int k = 0, rest = node; k < d; k++, rest /= count) at = at.With(k, DyadicPose.Denominator / (count - 1) * (rest % count));
            SolvedPose pose = system.At(at);
            if (!pose.IsSolved || LeastReserve(pose) < 0) continue;
            var values = new double[d];
            system.Box.Values(at, values);
            yield return values;
        }
    }
}
