using System.Diagnostics;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>What all joints do to their bodies, written once for plain numbers, derivatives and intervals.</summary>
/// <remarks>
/// Principle of virtual work: an exact equation r = 0 with load m works with m times the derivative of r, a soft joint with the derivative of its
/// energy. Both are given as forces at places and moments.
/// </remarks>
internal static class JointForces
{
    /// <summary>Adds the work of the joint's exact equations.</summary>
    /// <param name="loads">One load for each of its equations, mm; zero for an equation that is left out.</param>
    public static void AddExact<T>(Joint joint, in Placement<T> at, ReadOnlySpan<T> loads, Wrenches<T> on)
        where T : unmanaged, IReal<T>
    {
        switch (joint)
        {
            case Joint.Rod rod:
                Vector3<T> along = at.Point(rod.SecondBody, rod.SecondPoint) - at.Point(rod.FirstBody, rod.FirstPoint);
                Vector3<T> pull = along * (loads[0] * T.From(1 / rod.LengthMm));
                Pair(rod.FirstBody, rod.FirstPoint, rod.SecondBody, rod.SecondPoint, pull, at, on);
                break;
            case Joint.Ball ball:
                Pair(ball.FirstBody, ball.Point, ball.SecondBody, ball.Point, new(loads[0], loads[1], loads[2]), at, on);
                break;
            case Joint.Hinge hinge:
                Pair(hinge.FirstBody, hinge.Point, hinge.SecondBody, hinge.Point, new(loads[0], loads[1], loads[2]), at, on);
                Vector3d axis = hinge.Axis.NormalizedOr(Vector3d.UnitZ), e = hinge.Axis.AnyPerpendicular();
                Vector3<T> turned = at.Direction(hinge.SecondBody, axis);
                T scale = T.From(Linkage.RotationLengthMm);
                Vector3<T> across = (at.Direction(hinge.FirstBody, e) * loads[3]) + (at.Direction(hinge.FirstBody, Vector3d.Cross(axis, e)) * loads[4]);
                Twist(hinge.FirstBody, hinge.SecondBody, Vector3<T>.Cross(turned, across) * scale, on);
                break;
            case Joint.Travel travel:
                on.Push(travel.Body, new(default, default, loads[0]), at.Arm(travel.Body, travel.Point));
                break;
            case Joint.SpinHold hold:
                // The turn d changes the Cayley vector c by (d + d x c + c (c.d)) / 2.
                Vector3<T> c = at.WholeCayley(hold.Body);
                var spin = Vector3<T>.From(hold.Spin.NormalizedOr(Vector3d.UnitZ));
                on.Twist(hold.Body, (spin + Vector3<T>.Cross(c, spin) + (c * Vector3<T>.Dot(c, spin))) * (loads[0] * T.From(Linkage.RotationLengthMm)));
                break;
            case Joint.Leaf leaf:
                Vector3<T> tip = LeafShape.Tip(leaf, at, out Vector3<T> x, out _, out Vector3<T> z);
                OnSeat(leaf, (x - (z * LeafShape.AlongSlope(tip.Z, LeafShape.MeasuredLengthMm(leaf)))) * loads[0], at, on);
                break;
            case Joint.Turn turn:
                (int turnParent, Vector3<T> line) = at.Line(turn.Body);
                Twist(turnParent, turn.Body, line * (loads[0] * T.From(Linkage.RotationLengthMm)), on);
                break;
            case Joint.Shift shift:
                (int shiftParent, Vector3<T> way) = at.Line(shift.Body);
                Vector3<T> push = way * loads[0];
                on.Push(shift.Body, push, default);
                on.Push(shiftParent, -push, at.Centre(shift.Body) - at.Centre(shiftParent));
                break;
            case Joint.Slide or Joint.Guide:
                throw new InvalidOperationException($"{joint.Name} closes a loop that carries load, which no layout makes.");
            case Joint.Spring or Joint.Bushing or Joint.Torque:
                break;
            default:
                throw new UnreachableException();
        }
    }

    /// <summary>Adds the work of a soft joint's loads.</summary>
    /// <param name="loads">One for each of its directions, mm; see <see cref="SoftRows"/>.</param>
    /// <param name="reference">What a load of 1 mm stands for, N/mm.</param>
    public static void AddSoft<T>(Joint joint, in Placement<T> at, ReadOnlySpan<T> loads, double reference, Wrenches<T> on)
        where T : unmanaged, IReal<T>
    {
        switch (joint)
        {
            case Joint.Spring spring:
                Vector3<T> along = at.Point(spring.SecondBody, spring.SecondPoint) - at.Point(spring.FirstBody, spring.FirstPoint);
                Pair(spring.FirstBody, spring.FirstPoint, spring.SecondBody, spring.SecondPoint, along * (loads[0] / T.Sqrt(along.LengthSquared)), at, on);
                break;
            case Joint.Bushing bushing:
                AddBushing(bushing, at, loads, reference, on);
                break;
            case Joint.Leaf leaf:
                Vector3<T> tip = LeafShape.Tip(leaf, at, out _, out Vector3<T> y, out Vector3<T> z);
                OnSeat(leaf, (y * loads[1]) + (z * (LeafShape.TurnSlope(tip.Z, LeafShape.MeasuredLengthMm(leaf)) * loads[0])), at, on);
                break;
        }
    }

    /// <summary>Adds what a torque does.</summary>
    /// <param name="load">The torque over the reference stiffness, mm^2.</param>
    public static void AddTorque<T>(Joint.Torque torque, T load, Wrenches<T> on)
        where T : unmanaged, IReal<T> => on.Twist(torque.Body, Vector3<T>.From(torque.Axis.NormalizedOr(Vector3d.UnitY)) * -load);

    private static void AddBushing<T>(Joint.Bushing bushing, in Placement<T> at, ReadOnlySpan<T> loads, double reference, Wrenches<T> on)
        where T : unmanaged, IReal<T>
    {
        int first = bushing.FirstBody, second = bushing.SecondBody, frame = bushing.RidesOnHousing ? first : 0;
        Vector3<T> force = default;
        for (int k = 0; k < 3; k++) force += at.Direction(frame, SoftRows.Axis(bushing, k)) * loads[k];
        on.Push(second, force, at.Arm(second, bushing.Point));
        // Axes that ride on the housing turn with it, which puts the housing's force where the pin is.
        Vector3<T> arm = at.Arm(first, bushing.Point);
        if (bushing.RidesOnHousing && first != 0)
        {
            arm += SoftRows.HoldsEverywhere(bushing)
                ? SoftRows.GiveByLoads(bushing, at, loads, reference)
                : at.Point(second, bushing.Point) - at.Point(first, bushing.Point);
        }

        on.Push(first, -force, arm);
        if (bushing.TurningStiffness != Vector3d.Zero) Twist(first, second, TurningMoment(bushing, at, loads[3..]), on);
    }

    /// <remarks>
    /// With w the rotation vector of a turn and E a function of it, a further turn d changes w by J d, J = 1 - [w]/2 + g [w]^2,
    /// g = (1 - (a/2) cot(a/2)) / a^2, so the moment is J^T dE/dw (the inverse of the exponential map's derivative; textbook, from memory; checked in
    /// the tests against differences of the energy). With c the Cayley vector, q = c.c: w = 2 ratio c and g = bow / (4 ratio^2).
    /// </remarks>
    private static Vector3<T> TurningMoment<T>(Joint.Bushing bushing, in Placement<T> at, ReadOnlySpan<T> loads)
        where T : unmanaged, IReal<T>
    {
        Vector3<T> w = SoftRows.Turned(bushing, at, out Vector3<T> c), byW = default;
        T square = c.LengthSquared, bow = ArcSeries.Bow(square), ratio = T.From(1) - (square * bow);
        for (int k = 0; k < 3; k++) byW += Vector3<T>.From(SoftRows.Axis(bushing, k)) * (loads[k] * T.From(Linkage.RotationLengthMm));
        Vector3<T> cross = Vector3<T>.Cross(w, byW);
        Vector3<T> moment = byW + (cross * T.From(0.5)) + (Vector3<T>.Cross(w, cross) * (bow / (T.From(4) * T.Square(ratio))));
        int housing = bushing.FirstBody;
        return housing == 0
            ? moment
            : (at.Direction(housing, Vector3d.UnitX) * moment.X) + (at.Direction(housing, Vector3d.UnitY) * moment.Y) + (at.Direction(housing, Vector3d.UnitZ) * moment.Z);
    }

    // A force on the eye whose energy is told in the seat's axes: the seat's own force works at the eye as well.
    private static void OnSeat<T>(Joint.Leaf leaf, Vector3<T> force, in Placement<T> at, Wrenches<T> on)
        where T : unmanaged, IReal<T>
    {
        on.Push(leaf.EyeBody, force, at.Arm(leaf.EyeBody, leaf.Eye));
        if (leaf.SeatBody == 0) return;
        Vector3<T> apart = at.Point(leaf.EyeBody, leaf.Eye) - at.Point(leaf.SeatBody, leaf.Clamp);
        on.Push(leaf.SeatBody, -force, at.Arm(leaf.SeatBody, leaf.Clamp) + apart);
    }

    private static void Pair<T>(int first, Vector3d firstPoint, int second, Vector3d secondPoint, Vector3<T> force, in Placement<T> at, Wrenches<T> on)
        where T : unmanaged, IReal<T>
    {
        on.Push(second, force, at.Arm(second, secondPoint));
        on.Push(first, -force, at.Arm(first, firstPoint));
    }

    private static void Twist<T>(int first, int second, Vector3<T> moment, Wrenches<T> on)
        where T : unmanaged, IReal<T>
    {
        on.Twist(second, moment);
        on.Twist(first, -moment);
    }
}
