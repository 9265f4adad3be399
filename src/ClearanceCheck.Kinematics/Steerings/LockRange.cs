using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;

namespace ClearanceCheck.Kinematics.Steerings;

/// <summary>How far the steering coordinate goes until the wheel that turns farther stands at its lock, at ride height.</summary>
/// <remarks>
/// A lock is read at the wheel that turns farther, the inner one; the coordinate is the turn of the knuckle that the drag link holds, which may be the
/// outer one. Taken for the lock itself it would turn the inner wheel far beyond its stop, up to where the tie rod goes over its centre.
/// </remarks>
internal static class LockRange
{
    private const int Halvings = 24;
    private const double StepRad = 0.05;

    /// <summary>The coordinate's range, rad.</summary>
    /// <param name="linkage">The axle.</param>
    /// <param name="knuckles">Numbers of both knuckles and of the bodies that carry them, and the lines they turn about, measured state.</param>
    /// <param name="coordinate">The number of the steering coordinate.</param>
    /// <param name="toLeft">The lock to the left, rad, positive.</param>
    /// <param name="toRight">The lock to the right, rad, positive.</param>
    public static (double Low, double High) Of(
        Linkage linkage, IReadOnlyList<(int Knuckle, int Carrier, Vector3d Axis)> knuckles, int coordinate, double toLeft, double toRight)
    {
        var solver = new LinkageSolver(linkage);
        double[] ride = new double[linkage.Coordinates];
        RigidMotion[] start = new RigidMotion[linkage.Bodies.Length];
        Array.Fill(start, RigidMotion.Identity);
        // Where ride height itself can't be reached the typed locks are all there is.
        if (solver.Solve(start, linkage.StartSettings, ride) is not { } straight) return (-toRight, toLeft);
        return (-Reach(-1, toRight), Reach(1, toLeft));

        double Reach(int sign, double limit)
        {
            double at = 0;
            RigidMotion[] bodies = straight;
            while (at < limit)
            {
                double next = Math.Min(limit, at + StepRad);
                if (Turned(bodies, sign * at, sign * next) is not { } moved) return Bisect(sign, bodies, at, next, limit);
                if (Most(moved) >= limit) return Bisect(sign, bodies, at, next, limit);
                (at, bodies) = (next, moved);
            }

            return limit;
        }

        // Between a turn that is short of the lock and one that is beyond it, or beyond what the rods let.
        double Bisect(int sign, RigidMotion[] from, double low, double high, double limit)
        {
            double start = low;
            for (int i = 0; i < Halvings; i++)
            {
                double middle = (low + high) / 2;
                bool beyond = Turned(from, sign * start, sign * middle) is not { } moved || Most(moved) >= limit;
                if (beyond) high = middle;
                else low = middle;
            }

            return low;
        }

        RigidMotion[]? Turned(RigidMotion[] from, double was, double steer)
        {
            double[] before = [.. ride], after = [.. ride];
            (before[coordinate], after[coordinate]) = (was, steer);
            return solver.Solve(from, before, after);
        }

        double Most(RigidMotion[] bodies)
        {
            double most = 0;
            foreach ((int knuckle, int carrier, Vector3d axis) in knuckles)
            {
                Rotation turn = bodies[carrier].Rotation.Inverse * bodies[knuckle].Rotation;
                most = Math.Max(most, Math.Abs(Vector3d.Dot(turn.ToRotationVector(), axis)));
            }

            return most;
        }
    }
}
