using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Driveline;

/// <summary>A shaft with its numbers filled in: which bodies its ends are on, and where.</summary>
/// <param name="Shaft">The shaft.</param>
/// <param name="FirstBody">Number of the body at its first end.</param>
/// <param name="From">The middle of the joint there, mm, in that body's frame.</param>
/// <param name="FirstAxis">Along the flange there, towards the second end; null where it was not measured.</param>
/// <param name="SecondBody">Number of the body at its second end.</param>
/// <param name="To">The middle of the joint there.</param>
/// <param name="SecondAxis">Along the flange there, away from the first end; null where it was not measured.</param>
public sealed record ShaftPiece(PartForm.Shaft Shaft, int FirstBody, Vector3d From, Vector3d? FirstAxis, int SecondBody, Vector3d To, Vector3d? SecondAxis)
{
    /// <summary>The joint at its first end as a function of the poses of both bodies; null where the flange's direction was not measured.</summary>
    public JointGeometry? FirstJoint => FirstAxis is { } axis ? new JointGeometry(From, axis, To) : null;

    /// <summary>The joint at its second end.</summary>
    public JointGeometry? SecondJoint => SecondAxis is { } axis ? new JointGeometry(To, -axis, From) : null;

    /// <summary>A shaft of an axle.</summary>
    /// <param name="module">The axle.</param>
    /// <param name="shaft">The shaft.</param>
    /// <param name="parameters">The parameter values that the axle was made with.</param>
    public static ShaftPiece Of(AxleModule module, PartForm.Shaft shaft, ReadOnlySpan<double> parameters)
    {
        Vector3d from = shaft.First.At.At(parameters), to = shaft.Second.At.At(parameters);
        return new ShaftPiece(
            shaft,
            Number(shaft.First.Body),
            from,
            shaft.FirstEnd.Ahead is { } first ? Along(first.At(parameters) - from, to - from) : null,
            Number(shaft.Second.Body),
            to,
            shaft.SecondEnd.Ahead is { } second ? Along(second.At(parameters) - to, to - from) : null);

        int Number(string body) => Math.Max(0, module.Bodies.IndexOf(body));
    }

    /// <summary>From joint centre to joint centre in a pose, mm, vehicle frame.</summary>
    public Vector3d Line(SolvedPose pose) => pose[SecondBody].Apply(To) - pose[FirstBody].Apply(From);

    /// <summary>Along the flange at its first end in a pose, vehicle frame.</summary>
    public Vector3d? FirstAxisIn(SolvedPose pose) => FirstAxis is { } axis ? pose[FirstBody].ApplyToDirection(axis) : null;

    /// <summary>Along the flange at its second end in a pose, vehicle frame.</summary>
    public Vector3d? SecondAxisIn(SolvedPose pose) => SecondAxis is { } axis ? pose[SecondBody].ApplyToDirection(axis) : null;

    // A point behind the flange is as good as one before it: no joint bends by a quarter turn, so the shaft tells which way is ahead.
    private static Vector3d Along(Vector3d axis, Vector3d line) => Vector3d.Dot(axis, line) < 0 ? -axis : axis;
}
