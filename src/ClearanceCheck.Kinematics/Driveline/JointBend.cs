using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Driveline;

/// <summary>How far a joint of a shaft is bent.</summary>
/// <param name="Kind">What kind it is.</param>
/// <param name="AngleRad">Between the flange's direction and the line of the shaft's joint centres, rad; null where the flange's direction was not measured.</param>
public readonly record struct JointBend(ShaftJointKind Kind, double? AngleRad)
{
    /// <summary>What each cross has to bend, rad: half of it in a double cardan joint, whose centring device shares it evenly.</summary>
    public double? PerCrossRad => Kind == ShaftJointKind.DoubleCardan ? AngleRad / 2 : AngleRad;
}
