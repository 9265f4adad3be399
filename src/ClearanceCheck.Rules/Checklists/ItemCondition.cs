using System.Collections.Immutable;

namespace ClearanceCheck.Rules.Checklists;

/// <summary>What a vehicle must have for an item to be asked: every key that is given must hold, a list means any of its words.</summary>
public sealed record ItemCondition
{
    /// <summary>Kinds of parts in the file.</summary>
    public ImmutableArray<string> Kinds { get; init; } = [];

    /// <summary>Facts of at least one axle inspected.</summary>
    public ImmutableArray<string> Axles { get; init; } = [];

    /// <summary>What the file says is fitted. Where it does not say, the item is asked.</summary>
    public ImmutableArray<string> Fitted { get; init; } = [];
}
