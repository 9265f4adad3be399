using System.Collections.Immutable;
using ClearanceCheck.Sweeping;

namespace ClearanceCheck.Quantities.Sets;

/// <summary>An extreme over a pose set.</summary>
/// <param name="Extreme">Poses of the whole axle.</param>
/// <param name="Subsets">For each of its basins, what was held where it was found.</param>
public sealed record SearchedSet(Extreme Extreme, ImmutableArray<PoseSubset> Subsets);
