using ClearanceCheck.Kinematics.Attitude;
using ClearanceCheck.Kinematics.Driveline;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Cli.Poses;

/// <summary>A shock or shaft in a pose.</summary>
/// <param name="Part">Which.</param>
/// <param name="Attitude">Its length and the turn of its line since ride height.</param>
/// <param name="Shaft">Its joints and splines; null for a shock.</param>
internal sealed record SpanPose(Part Part, SpanAttitude Attitude, ShaftPose? Shaft)
{
    /// <summary>Whether its line has joints whose bend matters.</summary>
    public bool IsShaft => Shaft is not null;
}
