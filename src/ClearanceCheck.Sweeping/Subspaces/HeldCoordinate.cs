namespace ClearanceCheck.Sweeping.Subspaces;

/// <summary>A coordinate of the pose that is kept.</summary>
/// <param name="Coordinate">Which.</param>
/// <param name="Value">At what, mm or rad, within its range.</param>
public readonly record struct HeldCoordinate(int Coordinate, double Value);
