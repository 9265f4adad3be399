using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Attitude;

/// <summary>How a wheel stands in a pose.</summary>
/// <remarks>
/// Axes and senses after ISO 8855 (from memory); the definitions are this program's own. With the outward spin axis s and side +1 on
/// the left, -1 on the right: camber -asin(s_z), plus when the top leans outboard; toe atan2(s_x, side s_y), plus for toe-in; steer
/// angle minus the toe on the left wheel and the toe on the right, plus to the left.
/// </remarks>
/// <param name="Hub">The hub, vehicle frame, mm.</param>
/// <param name="Axis">Unit vector along the spin axis, outward, vehicle frame.</param>
/// <param name="CamberRad">Camber, rad.</param>
/// <param name="ToeRad">Toe of this wheel, rad.</param>
/// <param name="SteerRad">Steer angle, rad.</param>
/// <param name="CasterRad">Caster, rad, plus when the kingpin's top leans to the rear; null for a wheel whose file gives no kingpin.</param>
/// <param name="HubToFenderMm">From the hub to the fender's edge, mm; null when nobody read it at ride height.</param>
public sealed record WheelAttitude(Vector3d Hub, Vector3d Axis, double CamberRad, double ToeRad, double SteerRad, double? CasterRad, double? HubToFenderMm)
{
    /// <summary>How a wheel stands in a solved pose.</summary>
    /// <param name="module">Its axle.</param>
    /// <param name="isLeft">Which of the two.</param>
    /// <param name="pose">Solved.</param>
    /// <param name="travelMm">The wheel's travel there, mm from ride height, bump plus.</param>
    /// <param name="parameters">The parameter values that the axle was made with.</param>
    /// <exception cref="ArgumentException">The pose is not solved.</exception>
    public static WheelAttitude Of(AxleModule module, bool isLeft, SolvedPose pose, double travelMm, ReadOnlySpan<double> parameters)
    {
        if (!pose.IsSolved) throw new ArgumentException("A pose that is not solved has no wheels.", nameof(pose));
        Wheel wheel = isLeft ? module.Axle.Left : module.Axle.Right;
        RigidMotion at = BodyLine.Of(module, pose, wheel.Body);
        Vector3d axis = at.ApplyToDirection(MeasuredAxis(module.Axle, isLeft, parameters));
        (double camber, double toe) = CamberAndToe(axis, isLeft);
        return new WheelAttitude(
            at.Apply(wheel.Hub.At(parameters)), axis, camber, toe, isLeft ? -toe : toe, Kingpin(module, isLeft, pose, parameters)?.CasterRad, wheel.HubToFenderRide?.At(parameters) - travelMm);
    }

    /// <summary>Caster and inclination of the line about which a wheel is steered, rad; null where it was not measured.</summary>
    /// <remarks>With u from its lower to its upper point: caster atan2(-u_x, u_z), plus when the top leans to the rear; inclination atan2(-side u_y, u_z), plus when it leans inboard.</remarks>
    /// <param name="module">Its axle.</param>
    /// <param name="isLeft">Which of the two.</param>
    /// <param name="pose">Solved.</param>
    /// <param name="parameters">The parameter values that the axle was made with.</param>
    public static (double CasterRad, double InclinationRad)? Kingpin(AxleModule module, bool isLeft, SolvedPose pose, ReadOnlySpan<double> parameters)
    {
        if (LayoutCatalogue.Of(module.Axle).KingpinOf(module.Axle, isLeft) is not var (lower, upper, body)) return null;
        RigidMotion at = BodyLine.Of(module, pose, $"{module.Axle.Name}/{body}");
        Vector3d up = at.ApplyToDirection(module.Axle.Points[upper].At(parameters) - module.Axle.Points[lower].At(parameters));
        return (Trigonometry.Atan2(-up.X, up.Z), Trigonometry.Atan2((isLeft ? -1 : 1) * up.Y, up.Z));
    }

    /// <summary>Camber and toe of an outward spin axis, rad; see the remarks of this type.</summary>
    public static (double CamberRad, double ToeRad) CamberAndToe(Vector3d axis, bool isLeft)
    {
        int side = isLeft ? 1 : -1;
        return (-Trigonometry.Asin(axis.Z), Trigonometry.Atan2(axis.X, side * axis.Y));
    }

    /// <summary>The outward spin axis of a wheel as measured: where one body reaches from hub to hub the two make it, else it is taken as square to the centre plane; toe that was read turns it.</summary>
    /// <remarks>The reading tells the toe of both wheels together and is shared alike. It belongs to ride height: an axle whose points were measured in another state keeps its axes.</remarks>
    public static Vector3d MeasuredAxis(Axle axle, bool isLeft, ReadOnlySpan<double> parameters)
    {
        Vector3d axis = AxisWithoutToe(axle, isLeft, parameters);
        if (axle.Toe is not { } toe || !axle.IsMeasuredAtRide) return axis;
        (double sin, double cos) = Trigonometry.SinCos((isLeft ? -1 : 1) * toe.TotalRad(parameters) / 2);
        return new Vector3d((cos * axis.X) - (sin * axis.Y), (sin * axis.X) + (cos * axis.Y), axis.Z);
    }

    private static Vector3d AxisWithoutToe(Axle axle, bool isLeft, ReadOnlySpan<double> parameters)
    {
        Vector3d square = isLeft ? Vector3d.UnitY : -Vector3d.UnitY;
        if (axle.Left.Body != axle.Right.Body && !(LayoutCatalogue.Of(axle) is { IsSolid: true } and not FreeLayout)) return square;
        Vector3d own = (isLeft ? axle.Left : axle.Right).Hub.At(parameters), other = (isLeft ? axle.Right : axle.Left).Hub.At(parameters);
        return (own - other).NormalizedOr(square);
    }
}
