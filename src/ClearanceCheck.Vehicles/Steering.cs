namespace ClearanceCheck.Vehicles;

/// <summary>How an axle's wheels are steered.</summary>
/// <param name="Kind">The linkage's id in the catalogue of steering linkages.</param>
/// <param name="Left">How far it is looked at to the left: of the steered wheel on the drag link's side, rad, or of the rack, mm; positive.</param>
/// <param name="Right">The same to the right; positive.</param>
/// <param name="BoxEndRad">How far the pitman arm turns each way until the steering box ends it; null when not known.</param>
public sealed record Steering(string Kind, double Left, double Right, double? BoxEndRad)
{
    /// <summary>For a free layout: the joint that the steering turns or shifts; its second body is what moves.</summary>
    public string? Joint { get; init; }
}
