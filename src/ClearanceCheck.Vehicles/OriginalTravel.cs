namespace ClearanceCheck.Vehicles;

/// <summary>Hub to fender of one wheel as somebody read it before the lift; its differences are the travel that it had.</summary>
/// <param name="Ride">At ride height, mm.</param>
/// <param name="Hanging">With both wheels of the axle hanging, mm; null when nobody read it.</param>
/// <param name="Bumped">With both wheels of the axle on their bump stops, mm; null when nobody read it.</param>
public sealed record OriginalTravel(MeasuredLength Ride, MeasuredLength? Hanging, MeasuredLength? Bumped);
