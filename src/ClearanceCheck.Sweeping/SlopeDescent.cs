using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping;

/// <summary>From a pose down to a local minimum of a function, along the stops.</summary>
/// <remarks>
/// Sequential linear programming: the function and the stops are made linear about the pose, the best corner of that picture within a
/// trust box is tried and brought back onto the stops, and the box shrinks when it did not help. A minimum that leans on as many
/// stops as there are coordinates is reached in a few rounds; one inside the space by halving. What it finds is only ever an upper
/// bound of the least value, so its quality costs time, never truth.
/// </remarks>
internal sealed class SlopeDescent(IMovingSystem system, ReachableSpace space)
{
    private const double FirstShare = 0.125;
    private const double SmallestShare = 1e-7;
    private const int MaximumRounds = 60;

    /// <summary>The pose of a local minimum; null when no reachable pose was found near the start.</summary>
    /// <param name="start">Where to begin, mm or rad; it may lie beyond a stop.</param>
    /// <param name="function">What to make least, from the solved pose and its coordinates.</param>
    /// <param name="share">Half-width of the first trust box as a share of the ranges.</param>
    public double[]? From(double[] start, Func<SolvedPose, double[], double> function, double share = FirstShare)
    {
        double[] pose = [.. start];
        if (space.Project(pose, 0) is not { } at) return null;
        double value = function(at, pose);
        for (int round = 0; round < MaximumRounds && share > SmallestShare; round++)
        {
            if (space.Linearize(pose, at, function) is not { } near) return pose;
            bool moved = false;
            while (!moved && share > SmallestShare)
            {
                if (Step(pose, near, share) is not { } step) return pose;
                double[] next = [.. pose];
                for (int d = 0; d < next.Length; d++) next[d] += step[d];
                if (space.Project(next, 0) is { } there && function(there, next) is var lower && lower < value)
                {
                    double gain = value - lower;
                    (pose, at, value, moved) = (next, there, lower, true);
                    if (gain < 1e-9) return pose;
                }
                else
                {
                    share /= 4;
                }
            }
        }

        return pose;
    }

    private double[]? Step(double[] pose, Linearization near, double share)
    {
        int n = pose.Length;
        var normals = new List<double[]>();
        var offsets = new List<double>();
        for (int d = 0; d < n; d++)
        {
            PoseCoordinate c = system.Box.Coordinates[d];
            double reach = share * system.Box.Range(d);
            normals.Add(Unit(n, d, 1));
            offsets.Add(Math.Min(reach, pose[d] - c.Low));
            normals.Add(Unit(n, d, -1));
            offsets.Add(Math.Min(reach, c.High - pose[d]));
        }

        for (int j = 0; j < near.Reserves.Length; j++)
        {
            double least = near.Reserves[j];
            for (int d = 0; d < n; d++) least -= Math.Abs(near.ReserveSlopes[j][d]) * share * system.Box.Range(d);
            if (least > 0) continue;
            normals.Add(near.ReserveSlopes[j]);
            offsets.Add(Math.Max(0, near.Reserves[j]));
        }

        return LinearProgram.Minimize(near.Slope, normals, offsets);
    }

    private static double[] Unit(int n, int d, double sign)
    {
        var unit = new double[n];
        unit[d] = sign;
        return unit;
    }
}
