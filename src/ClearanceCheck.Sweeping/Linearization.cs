namespace ClearanceCheck.Sweeping;

/// <summary>An objective and all stops near a pose, to first order in the pose's coordinates.</summary>
/// <param name="Value">The objective.</param>
/// <param name="Slope">Its slope, per mm or rad.</param>
/// <param name="Reserves">Every stop's reserve, mm.</param>
/// <param name="ReserveSlopes">Their slopes.</param>
internal sealed record Linearization(double Value, double[] Slope, double[] Reserves, double[][] ReserveSlopes);
