namespace ClearanceCheck.Sweeping;

/// <summary>How far a search goes. All in the unit of the quantity, mm.</summary>
public sealed record SweepSettings
{
    /// <summary>The search ends when value and bound are this near.</summary>
    public double ToleranceMm { get; init; } = 0.1;

    /// <summary>Poses that certainly stay above this need no closer look: the largest limit of any rule with its guard.</summary>
    public double CeilingMm { get; init; } = double.PositiveInfinity;

    /// <summary>True where a few poses are enough to name a value of a pair that lies beyond the ceiling.</summary>
    public bool LooksOnceBeyondCeiling { get; init; }

    /// <summary>A search that has found a pose at or below this ends with the bound it has: the deepest overlap need not be known.</summary>
    public double FloorMm { get; init; } = double.NegativeInfinity;

    /// <summary>Local minima within this of the least are kept: any of them may decide a verdict.</summary>
    public double ReachMm { get; init; } = 10;

    /// <summary>The search ends here with the bound it has, which makes a finding undecided, never clear.</summary>
    public int MaximumCells { get; init; } = 200_000;

    /// <summary>As <see cref="MaximumCells"/>, for the pairs of pieces measured: what a search over large meshes costs.</summary>
    public long MaximumWork { get; init; } = 2_000_000;

    /// <summary>A pose counts as reachable when every stop is passed by less than this, mm.</summary>
    public double StopGiveMm { get; init; } = 0.2;

    /// <summary>Cells with a corner that can't be solved are halved down to this width, mm, and then reported.</summary>
    public double SmallestUnsolvedMm { get; init; } = 5;
}
