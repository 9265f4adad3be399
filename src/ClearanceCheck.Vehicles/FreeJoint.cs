using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles;

/// <summary>A joint of a free layout.</summary>
/// <param name="Kind">Which joint.</param>
/// <param name="FirstBody">Chassis or a body with the axle's name; of a bushing the one that carries the housing.</param>
/// <param name="At">One point, or two for a rod or spring (on the first body, on the second).</param>
/// <param name="Axis">A second point on the line of a hinge or slide; null for the others.</param>
public sealed record FreeJoint(string Name, FreeJointKind Kind, string FirstBody, string SecondBody, ImmutableArray<MeasuredPoint> At, MeasuredPoint? Axis)
{
    /// <summary>Of a spring its stiffness in X; of a bushing along the vehicle's axes as measured. N/mm.</summary>
    public Geometry.Vector3d Stiffness { get; init; }

    /// <summary>Of a bushing about the vehicle's axes as measured, N mm/rad.</summary>
    public Geometry.Vector3d TurningStiffness { get; init; }

    /// <summary>True when a bushing's axes turn with its housing.</summary>
    public bool RidesOnHousing { get; init; } = true;
}
