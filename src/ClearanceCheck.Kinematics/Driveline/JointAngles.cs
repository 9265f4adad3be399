using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Driveline;

/// <summary>The joints and splines of a driveshaft in one pose; for many poses make its <see cref="ShaftLine"/> once.</summary>
public static class JointAngles
{
    /// <summary>A shaft in a solved pose.</summary>
    /// <param name="module">The axle that it leads to.</param>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="part">A shaft.</param>
    /// <param name="pose">Solved.</param>
    /// <param name="parameters">The parameter values that the axle was made with.</param>
    public static ShaftPose Of(AxleModule module, Vehicle vehicle, Part part, SolvedPose pose, ReadOnlySpan<double> parameters) =>
        ShaftLine.Of(module, vehicle, part, parameters).At(pose);
}
