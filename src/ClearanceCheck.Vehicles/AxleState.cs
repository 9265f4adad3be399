namespace ClearanceCheck.Vehicles;

/// <summary>How an axle stood in a state other than that of its layout's points.</summary>
/// <param name="State">The state's name.</param>
/// <param name="LeftHubToFender">Read at the left wheel; null at ride height, where travel is zero by itself.</param>
/// <param name="RightHubToFender">Read at the right wheel; null at ride height.</param>
public sealed record AxleState(string State, MeasuredLength? LeftHubToFender, MeasuredLength? RightHubToFender)
{
    /// <summary>The numbers that say how it stood.</summary>
    public IEnumerable<MeasuredLength> Readings => new[] { LeftHubToFender, RightHubToFender }.OfType<MeasuredLength>();
}
