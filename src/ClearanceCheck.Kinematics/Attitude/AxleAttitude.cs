using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Kinematics.Attitude;

/// <summary>How a solid axle stands in a pose against how it stands at ride height.</summary>
/// <remarks>Axes and senses after ISO 8855 (from memory); the definitions are this program's own.</remarks>
/// <param name="ShiftMm">How far the middle between the hubs went to the left, mm.</param>
/// <param name="ForwardMm">How far it went forward, mm: what the wheelbase changes by on this axle.</param>
/// <param name="YawRad">How far the line through the hubs, seen from above, turned to the left (the thrust angle's change), rad.</param>
/// <param name="TiltRad">How far the axle turned about its length, rad, plus when its top goes to the rear and its front side up: caster and a pinion that points forward go up by it.</param>
public sealed record AxleAttitude(double ShiftMm, double ForwardMm, double YawRad, double TiltRad)
{
    /// <summary>How the axle stands; null when the two wheels share no body.</summary>
    /// <param name="module">The axle.</param>
    /// <param name="pose">Solved.</param>
    /// <param name="ride">Ride height, solved.</param>
    /// <param name="parameters">The parameter values that the axle was made with.</param>
    public static AxleAttitude? Of(AxleModule module, SolvedPose pose, SolvedPose ride, ReadOnlySpan<double> parameters)
    {
        if (SharedBody(module) is not { } body) return null;
        RigidMotion now = BodyLine.Of(module, pose, body), before = BodyLine.Of(module, ride, body);
        Vector3d left = module.Axle.Left.Hub.At(parameters), right = module.Axle.Right.Hub.At(parameters), middle = (left + right) / 2;
        Vector3d moved = now.Apply(middle) - before.Apply(middle);
        Vector3d forward = (now.Rotation * before.Rotation.Inverse).Apply(Vector3d.UnitX);
        return new AxleAttitude(
            moved.Y, moved.X, Heading(now.ApplyToDirection(left - right)) - Heading(before.ApplyToDirection(left - right)), Trigonometry.Asin(forward.Z));
    }

    // Which way the line from the right hub to the left one faces, seen from above, rad; zero square to the centre plane.
    private static double Heading(Vector3d line) => Trigonometry.Atan2(-line.X, line.Y);

    // A steered wheel rides on a knuckle, which rides on the axle's own body.
    private static string? SharedBody(AxleModule module)
    {
        if (module.Axle.Left.Body == module.Axle.Right.Body) return module.Axle.Left.Body;
        string own = $"{module.Axle.Name}/axle";
        return module.Bodies.Contains(own) ? own : null;
    }
}
