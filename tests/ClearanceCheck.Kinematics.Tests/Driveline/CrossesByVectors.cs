using ClearanceCheck.Geometry;

namespace ClearanceCheck.Kinematics.Tests.Driveline;

/// <summary>A line of shafts with cardan joints turned step by step: each cross has one arm on the fork that drives and one, square to it, on the fork that is driven. No formula for angles goes in.</summary>
internal static class CrossesByVectors
{
    private const int Steps = 3600;

    /// <summary>Half of the largest less the least speed of the last shaft, the first one turning evenly at one.</summary>
    /// <param name="axes">Directions of the shafts, unit vectors.</param>
    /// <param name="phases">How far each inner shaft's rear fork is turned against its front one, rad, right-handed.</param>
    public static double Swing(Vector3d[] axes, double[] phases)
    {
        double least = double.MaxValue, most = double.MinValue, before = Out(axes, phases, 0), step = 2 * Math.PI / Steps;
        for (int i = 1; i <= Steps; i++)
        {
            double now = Out(axes, phases, i * step), gone = Math.IEEERemainder(now - before, 2 * Math.PI);
            (least, most, before) = (Math.Min(least, gone / step), Math.Max(most, gone / step), now);
        }

        return (most - least) / 2;
    }

    private static double Out(Vector3d[] axes, double[] phases, double turn)
    {
        Vector3d fork = Turned(axes[0].AnyPerpendicular(), axes[0], turn);
        for (int joint = 1; joint < axes.Length; joint++)
        {
            // The driven arm is square to its own shaft and to the arm that drives.
            Vector3d driven = Vector3d.Cross(axes[joint], fork).NormalizedOr(Vector3d.UnitX);
            fork = joint - 1 < phases.Length ? Turned(driven, axes[joint], phases[joint - 1]) : driven;
        }

        Vector3d last = axes[^1], zero = last.AnyPerpendicular();
        return Math.Atan2(Vector3d.Dot(fork, Vector3d.Cross(last, zero)), Vector3d.Dot(fork, zero));
    }

    private static Vector3d Turned(Vector3d v, Vector3d axis, double angle) => (v * Math.Cos(angle)) + (Vector3d.Cross(axis, v) * Math.Sin(angle));
}
