using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Kinematics.Steerings;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities.Sets;

namespace ClearanceCheck.Quantities.Steering;

/// <summary>The poses in which the driver holds the steering straight ahead: what moves the rods stands still, and the wheels may not.</summary>
/// <remarks>
/// Where the coordinate is the pitman arm's turn or the rack's way, it is kept at zero. Where it is a knuckle's turn, the end of the pitman
/// arm, or the rack, is kept within <see cref="PlayMm"/> of where it was measured along the way it goes, and the knuckles follow.
/// </remarks>
internal static class SteeringHeld
{
    /// <summary>How far what is held may move each way, mm: a hundredth of a degree at the wheel, far under any steering's own play.</summary>
    public const double PlayMm = 0.02;

    /// <summary>What is held, or why that is not known.</summary>
    public static (PoseSubset? Held, string? Missing) Of(AxleModule module)
    {
        if (module.Axle.Steering is not { } steering || AxleCoordinates.Of(module).Steer is null) return (PoseSubset.Whole, null);
        if (steering.Joint is not null || LayoutCatalogue.Of(module.Axle).KingpinBody(true) is null) return (PoseSubsets.StraightAhead(module), null);
        return Way(module) is null
            ? (null, $"what steers the {module.Axle.Name} wheels is not in the file, only how far they turn: measure the drag link or rack and type its points")
            : (new PoseSubset { Also = Stops }, null);
    }

    // Stops along and against the way that the held end goes; a plane each, in the vehicle frame.
    private static IEnumerable<Stop> Stops(AxleModule module, ReadOnlyMemory<double> parameters)
    {
        (string body, string point) = Way(module)!.Value;
        Vector3d end = module.Axle.Points[point].At(parameters.Span), way = Direction(module, point, parameters.Span);
        int number = module.Bodies.IndexOf($"{module.Axle.Name}/{body}");
        yield return new HeightStop("steering held", 0, end, number, end, way, -PlayMm);
        yield return new HeightStop("steering held", 0, end, number, end, -way, -PlayMm);
    }

    private static (string Body, string Point)? Way(AxleModule module)
    {
        SteeringLinkage? linkage = SteeringCatalogue.Find(module.Axle.Steering!.Kind);
        if (linkage?.PitmanEnd is { } end) return ("pitman-arm", end);
        return module.Bodies.Contains($"{module.Axle.Name}/rack") ? ("rack", "tie-rod-left-inner") : null;
    }

    private static Vector3d Direction(AxleModule module, string point, ReadOnlySpan<double> parameters)
    {
        Vector3d At(string name, ReadOnlySpan<double> values) => module.Axle.Points[name].At(values);
        if (point == "tie-rod-left-inner") return (At(point, parameters) - At("tie-rod-right-inner", parameters)).NormalizedOr(Vector3d.UnitY);
        Vector3d pivot = At("pitman-pivot", parameters), shaft = At("pitman-axis", parameters) - pivot;
        return Vector3d.Cross(shaft, At(point, parameters) - pivot).NormalizedOr(Vector3d.UnitY);
    }
}
