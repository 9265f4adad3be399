namespace ClearanceCheck.Vehicles;

/// <summary>How far an axle winds up on its springs: nose down under braking is positive, nose up under drive negative.</summary>
public readonly record struct WrapRange(double LowRad, double HighRad);
