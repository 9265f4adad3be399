using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Attitude;

/// <summary>A part between two places in a pose: how long it is and how its line turned against the bodies at its ends.</summary>
/// <param name="LengthMm">From end to end, mm.</param>
/// <param name="FirstTurnRad">How far its line turned against the body of its first end since the pose it is compared with, rad; not the joint's angle, which needs the direction of the flange.</param>
/// <param name="SecondTurnRad">The same at its second end.</param>
public sealed record SpanAttitude(double LengthMm, double FirstTurnRad, double SecondTurnRad)
{
    /// <summary>Whether a part spans two bodies of which the axle moves at least one.</summary>
    public static bool IsBetween(AxleModule module, Vehicle vehicle, Part part)
    {
        if (part.Form.Ends.Length != 2 || part.Form.Ends[0].Body == part.Form.Ends[1].Body) return false;
        return part.Form.Ends.All(e => IsHere(e.Body)) && part.Form.Ends.Any(e => module.Bodies.IndexOf(e.Body) > 0);

        bool IsHere(string body) => body == Vehicle.Chassis || vehicle.FixedBodies.Contains(body) || module.Bodies.Contains(body);
    }

    /// <summary>The part in a solved pose, its turns counted from the state in which the axle's points were measured.</summary>
    /// <param name="module">Its axle.</param>
    /// <param name="part">A part with two ends.</param>
    /// <param name="pose">Solved.</param>
    /// <param name="parameters">The parameter values that the axle was made with.</param>
    public static SpanAttitude SinceMeasured(AxleModule module, Part part, SolvedPose pose, ReadOnlySpan<double> parameters)
    {
        var bodies = new RigidMotion[pose.Bodies.Length];
        Array.Fill(bodies, RigidMotion.Identity);
        return Of(module, part, pose, new SolvedPose(PoseAnswerKind.Solved, bodies), parameters);
    }

    /// <summary>The part in a solved pose.</summary>
    /// <param name="module">Its axle.</param>
    /// <param name="part">A part with two ends.</param>
    /// <param name="pose">Solved.</param>
    /// <param name="ride">What turns are counted from: ride height, solved.</param>
    /// <param name="parameters">The parameter values that the axle was made with.</param>
    public static SpanAttitude Of(AxleModule module, Part part, SolvedPose pose, SolvedPose ride, ReadOnlySpan<double> parameters)
    {
        Place first = part.Form.Ends[0], second = part.Form.Ends[1];
        Vector3d from = first.At.At(parameters), to = second.At.At(parameters);
        Vector3d now = Line(pose), before = Line(ride);
        return new SpanAttitude(now.Length, Turn(first.Body), Turn(second.Body));

        Vector3d Line(SolvedPose at) => BodyLine.Of(module, at, second.Body).Apply(to) - BodyLine.Of(module, at, first.Body).Apply(from);

        double Turn(string body) => BodyLine.Angle(
            BodyLine.Of(module, pose, body).ApplyInverseToDirection(now), BodyLine.Of(module, ride, body).ApplyInverseToDirection(before));
    }
}
