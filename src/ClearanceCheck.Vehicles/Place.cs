namespace ClearanceCheck.Vehicles;

/// <summary>A place on a body.</summary>
public sealed record Place(string Body, MeasuredPoint At);
