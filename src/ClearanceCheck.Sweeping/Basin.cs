using System.Collections.Immutable;

namespace ClearanceCheck.Sweeping;

/// <summary>A local extreme: a reachable pose, its value and its witness.</summary>
/// <param name="Value">Gap or chord, mm.</param>
/// <param name="Pose">Coordinates, mm or rad; empty when the parts never move against each other.</param>
public sealed record Basin(double Value, ImmutableArray<double> Pose, Witness Witness);
