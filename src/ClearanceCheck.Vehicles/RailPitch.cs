namespace ClearanceCheck.Vehicles;

/// <summary>How far the frame rails leaned while the vehicle was measured.</summary>
/// <param name="Degrees">Nose down is positive.</param>
/// <param name="HalfWidthDegrees">Half the interval the true angle lies in.</param>
/// <param name="WithinIsAssumed">True when nobody typed the half-width.</param>
public sealed record RailPitch(double Degrees, double HalfWidthDegrees, bool WithinIsAssumed);
