namespace ClearanceCheck.Mechanics.Poses;

/// <summary>One coordinate of a pose: its name, whether it is an angle, and its range (mm, or rad for an angle).</summary>
public readonly record struct PoseCoordinate(string Name, bool IsAngle, double Low, double High);
