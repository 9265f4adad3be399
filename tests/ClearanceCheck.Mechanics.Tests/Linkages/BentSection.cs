using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

/// <summary>A section of a bent and twisted leaf by angles, sines and arc tangents: nothing of the engine's series but the arc's own points.</summary>
/// <param name="Middle">Chassis frame, mm.</param>
/// <param name="Across">Along its width.</param>
/// <param name="Up">Square to its face.</param>
/// <param name="Turn">By how much the whole leaf turns in its plane, rad.</param>
/// <param name="Twist">And how far it is twisted up to its eye: tangent of the angle.</param>
internal sealed record BentSection(Vector3d Middle, Vector3d Across, Vector3d Up, double Turn, double Twist)
{
    public static BentSection Of(Joint.Leaf leaf, ReadOnlySpan<RigidMotion> bodies, double share)
    {
        RigidMotion seat = bodies[leaf.SeatBody], eye = bodies[leaf.EyeBody];
        Vector3d x = Unit(leaf.Along), y = Unit(Vector3d.Cross(leaf.Up, x)), z = Vector3d.Cross(x, y);
        Vector3d tip = seat.Rotation.ApplyInverse(eye.Apply(leaf.Eye) - seat.Apply(leaf.Clamp)), bolt = seat.Rotation.ApplyInverse(eye.Rotation.Apply(y));
        // The chord of an arc turns by half of what the arc does.
        double turn = 2 * Math.Atan2(Vector3d.Dot(tip, z), Vector3d.Dot(tip, x)), slope = Vector3d.Dot(tip, y) / ArcLength(leaf, x, z);
        Vector3d atEye = Normal(turn);
        double twist = Vector3d.Dot(atEye, bolt) / Vector3d.Dot(bolt, y), roll = Math.Atan(twist * share);
        Vector3d normal = Normal(turn * share), level = Unit(y - (Vector3d.Cross(y, normal) * slope));
        Vector3d across = (level * Math.Cos(roll)) + (normal * Math.Sin(roll)), up = (normal * Math.Cos(roll)) - (level * Math.Sin(roll));
        return new BentSection(LeafShape.At(leaf, bodies, share), seat.Rotation.Apply(across), seat.Rotation.Apply(up), turn, twist);

        Vector3d Normal(double angle) => (z * Math.Cos(angle)) - (x * Math.Sin(angle));
    }

    /// <summary>A point of the section, chassis frame.</summary>
    public Vector3d At(double acrossMm, double upMm) => Middle + (Across * acrossMm) + (Up * upMm);

    private static double ArcLength(Joint.Leaf leaf, Vector3d x, Vector3d z)
    {
        Vector3d tip = leaf.Eye - leaf.Clamp;
        double half = Math.Atan2(Vector3d.Dot(tip, z), Vector3d.Dot(tip, x)), chord = Math.Sqrt(Math.Pow(Vector3d.Dot(tip, x), 2) + Math.Pow(Vector3d.Dot(tip, z), 2));
        return Math.Abs(half) < 1e-9 ? chord : chord * half / Math.Sin(half);
    }

    private static Vector3d Unit(Vector3d v) => v / v.Length;
}
