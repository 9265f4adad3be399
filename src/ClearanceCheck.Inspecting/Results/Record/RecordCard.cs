using System.Collections.Immutable;

namespace ClearanceCheck.Inspecting.Results.Record;

/// <summary>What only a person can see or answer for, beside what was measured.</summary>
public sealed record RecordCard
{
    public static RecordCard Empty { get; } = new();

    /// <summary>True when the whole vehicle is in scope: then what is not inspected counts against it.</summary>
    public bool IsWhole { get; init; }

    public ImmutableArray<ItemCard> Items { get; init; } = [];

    /// <summary>Empty for a part inspection: it expects nothing.</summary>
    public ImmutableArray<CoverageCard> Coverage { get; init; } = [];

    public ImmutableArray<PivotCard> Pivots { get; init; } = [];

    public ImmutableArray<TemporaryCard> Temporary { get; init; } = [];
}
