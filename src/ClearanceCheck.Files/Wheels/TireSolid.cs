using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Wheels;

/// <summary>The figures of a swept tire in the parameter vector.</summary>
internal sealed record TireSolid(MeasuredLength Radius, MeasuredLength Width, double RimRadiusMm);
