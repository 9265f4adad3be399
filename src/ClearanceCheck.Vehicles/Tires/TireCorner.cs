namespace ClearanceCheck.Vehicles.Tires;

/// <summary>A corner of a tire's profile.</summary>
/// <param name="RadiusMm">From the wheel's axis.</param>
/// <param name="AlongMm">Along the axis from the tire's middle plane, to either side.</param>
public readonly record struct TireCorner(double RadiusMm, double AlongMm);
