namespace ClearanceCheck.Kinematics.Driveline;

/// <summary>A driveshaft in a pose.</summary>
/// <param name="First">The joint at its first end.</param>
/// <param name="Second">The joint at its second end; null where a centre bearing is and another piece follows.</param>
/// <param name="LengthMm">From joint centre to joint centre, mm.</param>
/// <param name="SlipMm">How much longer that is than as it was measured, mm; null where the state in which that was could not be solved.</param>
/// <param name="Splines">Its splines; null where nobody measured them.</param>
/// <param name="EquivalentRad">The angle of one joint that turns as unevenly as all of the line up to and with this shaft, rad; null where a direction that it needs was not measured, and for a piece that another follows.</param>
public sealed record ShaftPose(JointBend First, JointBend? Second, double LengthMm, double? SlipMm, SplineEngagement? Splines, double? EquivalentRad);
