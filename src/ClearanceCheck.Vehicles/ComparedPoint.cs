namespace ClearanceCheck.Vehicles;

/// <summary>A point of a layout that was measured once more in a second state: the model is not made of it but compared with it.</summary>
/// <param name="Name">The layout's name of the point: <c>hub-left</c>.</param>
/// <param name="State">The second state.</param>
/// <param name="Point">The point as typed there.</param>
public sealed record ComparedPoint(string Name, string State, MeasuredPoint Point);
