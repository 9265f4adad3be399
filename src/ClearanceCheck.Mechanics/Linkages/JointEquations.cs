using System.Diagnostics;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>The residuals of all joints, mm, written once for plain numbers, derivatives and intervals.</summary>
internal static class JointEquations
{
    /// <summary>Writes the joint's residuals into <paramref name="residual"/>; zero when the joint holds.</summary>
    /// <param name="settings">The pose's coordinates.</param>
    public static void Evaluate<T>(Joint joint, in Placement<T> at, ReadOnlySpan<T> settings, Span<T> residual)
        where T : unmanaged, IReal<T>
    {
        switch (joint)
        {
            case Joint.Rod rod:
                Vector3<T> along = at.Point(rod.SecondBody, rod.SecondPoint) - at.Point(rod.FirstBody, rod.FirstPoint);
                T lengthSquared = T.Square(T.From(rod.LengthMm));
                // (|d|^2 - L^2) / 2L is the stretch to first order and needs no root.
                residual[0] = (along.LengthSquared - lengthSquared) * T.From(1 / (2 * rod.LengthMm));
                break;
            case Joint.Ball ball:
                Write(at.Point(ball.SecondBody, ball.Point) - at.Point(ball.FirstBody, ball.Point), residual);
                break;
            case Joint.Hinge hinge:
                Write(at.Point(hinge.SecondBody, hinge.Point) - at.Point(hinge.FirstBody, hinge.Point), residual);
                Vector3d e = hinge.Axis.AnyPerpendicular(), axis = hinge.Axis.NormalizedOr(Vector3d.UnitZ);
                Vector3<T> turned = at.Direction(hinge.SecondBody, axis);
                T scale = T.From(Linkage.RotationLengthMm);
                residual[3] = Vector3<T>.Dot(turned, at.Direction(hinge.FirstBody, e)) * scale;
                residual[4] = Vector3<T>.Dot(turned, at.Direction(hinge.FirstBody, Vector3d.Cross(axis, e))) * scale;
                break;
            case Joint.Slide slide:
                Vector3d across = slide.Axis.AnyPerpendicular(), third = Vector3d.Cross(slide.Axis.NormalizedOr(Vector3d.UnitZ), across);
                Vector3<T> apart = at.Point(slide.SecondBody, slide.Point) - at.Point(slide.FirstBody, slide.Point);
                residual[0] = Vector3<T>.Dot(apart, at.Direction(slide.FirstBody, across));
                residual[1] = Vector3<T>.Dot(apart, at.Direction(slide.FirstBody, third));
                Write(at.RelativeCayley(slide.FirstBody, slide.SecondBody) * T.From(2 * Linkage.RotationLengthMm), residual[2..]);
                break;
            case Joint.Turn turn:
                residual[0] = (at.Angle(turn.Body) + T.From(turn.OffsetRad) - settings[turn.Coordinate]) * T.From(Linkage.RotationLengthMm);
                break;
            case Joint.Shift shift:
                residual[0] = at.Slid(shift.Body) + T.From(shift.OffsetMm) - settings[shift.Coordinate];
                break;
            case Joint.Leaf leaf:
                Vector3<T> tip = LeafShape.Tip(leaf, at, out _, out _, out _);
                residual[0] = tip.X - LeafShape.Along(tip.Z, LeafShape.MeasuredLengthMm(leaf));
                break;
            case Joint.Travel travel:
                residual[0] = at.Point(travel.Body, travel.Point).Z - T.From(travel.Point.Z - travel.RideOffsetMm) - settings[travel.Coordinate];
                break;
            case Joint.SpinHold hold:
                residual[0] = Vector3<T>.Dot(at.WholeCayley(hold.Body), Vector3<T>.From(hold.Spin.NormalizedOr(Vector3d.UnitZ)))
                    * T.From(2 * Linkage.RotationLengthMm);
                break;
            case Joint.Guide guide:
                Vector3<T> moved = at.Point(guide.Body, guide.Point) - Vector3<T>.From(guide.Point), whole = at.WholeCayley(guide.Body);
                T twice = T.From(2 * Linkage.RotationLengthMm);
                residual[0] = moved.X - guide.Path.Evaluate(0, settings);
                residual[1] = moved.Y - guide.Path.Evaluate(1, settings);
                residual[2] = (whole.Y - guide.Path.Evaluate(2, settings)) * twice;
                residual[3] = (whole.Z - guide.Path.Evaluate(3, settings)) * twice;
                break;
            case Joint.Spring or Joint.Bushing or Joint.Torque:
                break;
            default:
                throw new UnreachableException();
        }
    }

    private static void Write<T>(Vector3<T> v, Span<T> residual)
        where T : unmanaged, IReal<T>
    {
        residual[0] = v.X;
        residual[1] = v.Y;
        residual[2] = v.Z;
    }
}
