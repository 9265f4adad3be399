namespace ClearanceCheck.Geometry.Shapes;

/// <summary>A point of the half plane that is turned around an axis, mm.</summary>
/// <param name="Radius">Distance from the axis, zero or more.</param>
/// <param name="Along">Place along the axis.</param>
public readonly record struct ProfilePoint(double Radius, double Along);
