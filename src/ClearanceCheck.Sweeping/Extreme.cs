using System.Collections.Immutable;

namespace ClearanceCheck.Sweeping;

/// <summary>The least gap or longest chord over all reachable poses, with a bound that no reachable pose passes.</summary>
public sealed record Extreme
{
    /// <summary>The value found; <see cref="Basins"/>[0] reaches it. Not a number when no reachable pose was found.</summary>
    public required double Value { get; init; }

    /// <summary>
    /// No reachable pose of the model lies beyond: below for a gap, above for a chord. Infinite on the unsafe side (minus infinity for a
    /// gap) when nothing can be said: no reachable pose was found, no part of the space could be bounded, or a pose contradicts the bound.
    /// </summary>
    public required double Bound { get; init; }

    public required Grade Grade { get; init; }

    /// <summary>All local extremes found within reach of the best, the best first.</summary>
    public required ImmutableArray<Basin> Basins { get; init; }

    public required int Cells { get; init; }

    /// <summary>The whole pose space was beyond the ceiling at first sight: the bound says so, and the value is only that of some pose.</summary>
    public bool RefusedAtRoot { get; init; }

    /// <summary>Regions of the pose space in which the motion could not be solved: the bound does not speak of them.</summary>
    public int UnsolvedRegions { get; init; }

    /// <summary>It is proved that no pose of the space can be reached: there is no value, and none is missing.</summary>
    public bool IsProvedEmpty { get; init; }

    /// <summary>The search ended on its budget of cells, with a looser bound.</summary>
    public bool BudgetSpent { get; init; }
}
