using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Quantities.Propagation;

/// <summary>The vehicle in one pose with given parameter values.</summary>
/// <param name="Parameters">Values of the parameter vector.</param>
/// <param name="Module">The moving axle; null when nothing moves.</param>
/// <param name="Pose">Where its bodies are; null when nothing moves.</param>
public sealed record Snapshot(ReadOnlyMemory<double> Parameters, AxleModule? Module, SolvedPose? Pose)
{
    /// <summary>The pose of a body of the module; the identity for the chassis.</summary>
    public RigidMotion Body(int number) => Pose is null ? RigidMotion.Identity : Pose[number];

    /// <summary>One body's pose in another's frame.</summary>
    public RigidMotion Relative(int frameBody, int body) => Pose is null ? RigidMotion.Identity : Pose.Relative(frameBody, body);
}
