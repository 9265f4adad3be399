using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles.Checklists;

/// <summary>What was typed about the tightening of an axle's bushed pivots.</summary>
/// <param name="Axle">The axle.</param>
/// <param name="Pivots">Names of the layout's points that it is about.</param>
/// <param name="AtRideHeight">False where they were tightened while the axle hung.</param>
/// <param name="By">Initials or name.</param>
/// <param name="Mark">How they were marked; null where they were not.</param>
public sealed record Tightening(string Axle, ImmutableArray<string> Pivots, bool AtRideHeight, string By, string? Mark);
