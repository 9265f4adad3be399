namespace ClearanceCheck.Vehicles;

/// <summary>A state in which the vehicle was measured, in the words that were typed.</summary>
/// <param name="Name">Its name: <c>hanging</c>.</param>
/// <param name="On">What carried the vehicle: <c>level-floor</c> or <c>frame-lift</c>; null when not typed.</param>
/// <param name="AntiRollBar"><c>connected</c>, <c>disconnected</c> or <c>absent</c>; null when not typed.</param>
/// <param name="Load">As typed.</param>
/// <param name="Fuel">As typed.</param>
public sealed record MeasuringState(string Name, string? On, string? AntiRollBar, string? Load, string? Fuel);
