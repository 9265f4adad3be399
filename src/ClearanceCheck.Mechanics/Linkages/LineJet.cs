using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>The place of a body on a line with its derivatives, from those of the bodies that carry it, in any kind of number.</summary>
/// <remarks>
/// Shortest rotation of a unit vector a to b: R e = e + v x e + v x (v x e) / (1 + c), v = a x b, c = a.b. Textbook, from memory;
/// tested against Rodrigues' rotation about v. With intervals inside, a direction that may vanish or point back gives parts without bounds.
/// </remarks>
internal static class LineJet
{
    public static MotionJet<T> Of<T>(LineFollower follower, ReadOnlySpan<MotionJet<T>> bodies)
        where T : unmanaged, IReal<T>
    {
        Vector3<Taylor2<T>> at = bodies[follower.FirstBody].Apply(follower.FirstPoint);
        if (follower.FirstBody == 0 && follower.SecondBody == 0) return MotionJet<T>.Still;
        Vector3<Taylor2<T>> reach = bodies[follower.SecondBody].Apply(follower.SecondPoint) - at;
        var one = Taylor2<T>.From(1);
        Vector3<Taylor2<T>> now = reach * (one / Taylor2<T>.Sqrt(reach.LengthSquared));
        var before = Vector3<Taylor2<T>>.From(follower.Axis);
        Vector3<Taylor2<T>> turn = Vector3<Taylor2<T>>.Cross(before, now);
        Taylor2<T> share = one / (one + Vector3<Taylor2<T>>.Dot(before, now));
        return new MotionJet<T>(
            follower.FirstPoint, at, Turned(turn, share, Vector3d.UnitX), Turned(turn, share, Vector3d.UnitY), Turned(turn, share, Vector3d.UnitZ));
    }

    /// <summary>By how much the follower's two points are farther apart than measured, along its measured axis.</summary>
    public static Vector3<Taylor2<T>> Extension<T>(LineFollower follower, ReadOnlySpan<MotionJet<T>> bodies)
        where T : unmanaged, IReal<T>
    {
        Vector3<Taylor2<T>> reach = bodies[follower.SecondBody].Apply(follower.SecondPoint) - bodies[follower.FirstBody].Apply(follower.FirstPoint);
        Taylor2<T> longer = Taylor2<T>.Sqrt(reach.LengthSquared) - Taylor2<T>.From((follower.SecondPoint - follower.FirstPoint).Length);
        return Vector3<Taylor2<T>>.From(follower.Axis) * longer;
    }

    private static Vector3<Taylor2<T>> Turned<T>(Vector3<Taylor2<T>> turn, Taylor2<T> share, Vector3d direction)
        where T : unmanaged, IReal<T>
    {
        var e = Vector3<Taylor2<T>>.From(direction);
        Vector3<Taylor2<T>> once = Vector3<Taylor2<T>>.Cross(turn, e);
        return e + once + (Vector3<Taylor2<T>>.Cross(turn, once) * share);
    }
}
