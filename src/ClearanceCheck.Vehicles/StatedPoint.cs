namespace ClearanceCheck.Vehicles;

/// <summary>A point of a part on a moving body that was measured in another state than the points of its axle's layout.</summary>
/// <param name="Point">The point as typed, vehicle frame in its own state.</param>
/// <param name="Body">The body it rides on: <c>rear/axle</c>.</param>
/// <param name="State">The state it was measured in.</param>
public sealed record StatedPoint(MeasuredPoint Point, string Body, string State)
{
    /// <summary>The axle whose body it rides on.</summary>
    public string Axle => Body.Split('/')[0];
}
