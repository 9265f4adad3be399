using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Kinematics.Reach;

/// <summary>Goes from a pose as far in one direction of the coordinates as the stops and the ranges allow.</summary>
/// <remarks>
/// Sequential linear programming (textbook, from memory): about each pose the stops are made linear, the best corner of that picture
/// within a trust region is tried, and the region shrinks when the step did not do what the picture promised. A stop that is passed,
/// as ride height itself may, is let in at a price per mm that no gain in travel outweighs, so that the search first comes back.
/// A pose held by as many stops as it has free coordinates is met to 1e-6 mm; along a stop that alone holds more of them the
/// distance gone is met to 1e-6 mm, the place along the stop to what a flat top lets one see.
/// </remarks>
internal sealed class ExtremeSearch(IMovingSystem system)
{
    /// <summary>A stop passed by less than this is met: far under any length that matters, far over rounding.</summary>
    public const double MetMm = 1e-6;

    /// <summary>Price of a mm beyond a stop in mm of travel. A stop that moves less than a hundredth as far as the wheel is none.</summary>
    private const double Price = 100;

    /// <summary>One radian of a steering angle weighs as much as this many mm of travel: about the radius of a large tire.</summary>
    private const double MmPerRad = 400;

    private const double FirstRegionMm = 30;
    private const double LargestRegionMm = 120;
    private const double SmallestRegionMm = 1e-8;
    private const double StillMm = 1e-9;
    private const int MaximumSteps = 300;

    /// <summary>The farthest pose; what it holds of <paramref name="start"/> when nothing can be solved.</summary>
    /// <param name="start">Where to begin, mm or rad, inside the ranges.</param>
    /// <param name="direction">What is made as large as it goes: this times the pose, in mm and <see cref="MmPerRad"/> a radian.</param>
    /// <param name="isFree">Which coordinates may change.</param>
    public (double[] Pose, SolvedPose Solved) From(double[] start, double[] direction, bool[] isFree)
    {
        double[] pose = [.. start];
        SolvedPose at = system.At((ReadOnlySpan<double>)pose);
        double region = FirstRegionMm;
        for (int step = 0; step < MaximumSteps && at.IsSolved && region > SmallestRegionMm; step++)
        {
            if (StopSlopes.Of(system, pose, at, isFree) is not { } near) break;
            double beyond = Beyond(near.Reserves);
            if (Step(pose, near, direction, isFree, region) is not { } move) break;
            double length = Enumerable.Range(0, pose.Length).Max(d => Math.Abs(move.By[d]) * Scale(d));
            double promised = move.Gain + (Price * (beyond - move.Beyond));
            if (length < StillMm || promised < StillMm * 1e-3) break;
            double[] next = [.. pose.Select((value, d) => Math.Clamp(value + move.By[d], system.Box.Coordinates[d].Low, system.Box.Coordinates[d].High))];
            SolvedPose there = system.At((ReadOnlySpan<double>)next);
            double gained = there.IsSolved ? Gain(pose, next, direction) + (Price * (beyond - Beyond(StopSlopes.ReservesAt(system, there)))) : double.NegativeInfinity;
            if (gained >= 0.1 * promised)
            {
                (pose, at) = (next, there);
                if (gained > 0.75 * promised && length > 0.99 * region) region = Math.Min(LargestRegionMm, 2 * region);
            }
            else
            {
                region = length / 4;
            }
        }

        return (pose, at);
    }

    /// <summary>By how much the worst stop is passed, mm; zero when none is.</summary>
    public static double Beyond(double[] reserves) => reserves.Length == 0 ? 0 : Math.Max(0, -reserves.Min());

    private double Scale(int d) => system.Box.Coordinates[d].IsAngle ? MmPerRad : 1;

    private double Gain(double[] from, double[] to, double[] direction)
    {
        double sum = 0;
        for (int d = 0; d < from.Length; d++) sum += direction[d] * Scale(d) * (to[d] - from[d]);
        return sum;
    }

    // Unknowns: the free coordinates in mm, and by how much a stop stays passed.
    private (double[] By, double Gain, double Beyond)? Step(double[] pose, StopSlopes near, double[] direction, bool[] isFree, double region)
    {
        int[] free = [.. Enumerable.Range(0, pose.Length).Where(d => isFree[d])];
        int n = free.Length + 1;
        var limits = new List<(double[] Normal, double Offset)> { (Unit(n, n - 1, 1), 0) };
        for (int k = 0; k < free.Length; k++)
        {
            PoseCoordinate c = system.Box.Coordinates[free[k]];
            double scale = Scale(free[k]);
            limits.Add((Unit(n, k, 1), Math.Min(region, (pose[free[k]] - c.Low) * scale)));
            limits.Add((Unit(n, k, -1), Math.Min(region, (c.High - pose[free[k]]) * scale)));
        }

        for (int j = 0; j < near.Reserves.Length; j++)
        {
            double[] normal = [.. free.Select(d => near.Slopes[j][d] / Scale(d)), 1];
            // A stop that stays clear all over the region is no limit.
            if (near.Reserves[j] - (region * normal.SkipLast(1).Sum(Math.Abs)) <= 0) limits.Add((normal, near.Reserves[j]));
        }

        double[] slope = [.. free.Select(d => direction[d]), -Price];
        if (CornerProgram.Maximize(slope, limits, 1e-8 * region) is not { } best) return null;
        var by = new double[pose.Length];
        double gain = 0;
        for (int k = 0; k < free.Length; k++) (by[free[k]], gain) = (best[k] / Scale(free[k]), gain + (direction[free[k]] * best[k]));
        return (by, gain, best[^1]);
    }

    private static double[] Unit(int n, int k, double sign)
    {
        var unit = new double[n];
        unit[k] = sign;
        return unit;
    }
}
