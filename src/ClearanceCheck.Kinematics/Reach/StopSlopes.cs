using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Kinematics.Reach;

/// <summary>All stops near a solved pose to first order.</summary>
/// <param name="Reserves">Every stop's reserve, mm.</param>
/// <param name="Slopes">One row a stop: its reserve's slope in every coordinate, per mm or rad.</param>
internal sealed record StopSlopes(double[] Reserves, double[][] Slopes)
{
    // The solver's 1e-12 mm over this step leaves eight digits of a slope.
    private const double StepMm = 1e-3;
    private const double StepRad = 1e-6;

    /// <summary>Every stop's reserve in a solved pose, mm.</summary>
    public static double[] ReservesAt(IMovingSystem system, SolvedPose pose) =>
        [.. system.Stops.Select(stop => stop.Reserve(pose.Relative(stop.FirstBody, stop.SecondBody)))];

    /// <summary>Central differences, and at an end of a range one-sided ones of the same order; null where a pose can't be solved.</summary>
    /// <param name="system">The axle.</param>
    /// <param name="pose">Its coordinates, mm or rad.</param>
    /// <param name="here">The pose, solved.</param>
    /// <param name="isFree">Coordinates whose slopes are wanted; the others' stay zero.</param>
    public static StopSlopes? Of(IMovingSystem system, double[] pose, SolvedPose here, bool[] isFree)
    {
        double[] reserves = ReservesAt(system, here);
        double[][] slopes = [.. reserves.Select(_ => new double[pose.Length])];
        for (int d = 0; d < pose.Length; d++)
        {
            if (!isFree[d]) continue;
            PoseCoordinate c = system.Box.Coordinates[d];
            double step = c.IsAngle ? StepRad : StepMm;
            if (pose[d] + step > c.High) step = -step;
            bool isCentral = step > 0 && pose[d] - step >= c.Low;
            if (At(step) is not { } near || At(isCentral ? -step : 2 * step) is not { } other) return null;
            for (int j = 0; j < reserves.Length; j++)
                slopes[j][d] = isCentral ? (near[j] - other[j]) / (2 * step) : ((4 * near[j]) - (3 * reserves[j]) - other[j]) / (2 * step);

            double[]? At(double by)
            {
                double[] moved = [.. pose];
                moved[d] += by;
                SolvedPose solved = system.At((ReadOnlySpan<double>)moved);
                return solved.IsSolved ? ReservesAt(system, solved) : null;
            }
        }

        return new StopSlopes(reserves, slopes);
    }
}
