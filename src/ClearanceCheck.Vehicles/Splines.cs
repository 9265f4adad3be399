namespace ClearanceCheck.Vehicles;

/// <summary>The splines on which the halves of a shaft slide.</summary>
/// <param name="Length">How long they can engage at all: the shorter of the two splined lengths.</param>
/// <param name="Engaged">How much of that was engaged when the shaft's ends were measured.</param>
public sealed record Splines(MeasuredLength Length, MeasuredLength Engaged);
