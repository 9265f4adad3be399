namespace ClearanceCheck.Vehicles;

/// <summary>How an axle's wheels are steered.</summary>
/// <param name="Kind">The linkage's id in the catalogue of steering linkages.</param>
/// <param name="Left">How far it is looked at to the left: the turn of the wheel that turns farther, rad, or where knuckles hang on balls that of the pitman arm, or the rack's way, mm; positive.</param>
/// <param name="Right">The same to the right; positive.</param>
/// <param name="BoxEndRad">How far the pitman arm turns each way until the steering box ends it; null when not known.</param>
public sealed record Steering(string Kind, double Left, double Right, double? BoxEndRad)
{
    /// <summary>For a free layout: the joint that the steering turns or shifts; its second body is what moves.</summary>
    public string? Joint { get; init; }
}
