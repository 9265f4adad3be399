namespace ClearanceCheck.Kinematics.Reach;

/// <summary>A stop that a pose lies beyond.</summary>
/// <param name="Name">The stop's name.</param>
/// <param name="BeyondMm">By how much, mm, positive.</param>
public readonly record struct PassedStop(string Name, double BeyondMm);
