using System.Collections.Immutable;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Rules.Checklists;

/// <summary>Something that only a person can see, asked in a sentence.</summary>
public sealed record ChecklistItem
{
    /// <summary>Stable for ever: answers hang on it.</summary>
    public required string Id { get; init; }

    /// <summary>A few words for lists.</summary>
    public required string Title { get; init; }

    /// <summary>What to do, and what has to be so.</summary>
    public required string Ask { get; init; }

    public required Severity Severity { get; init; }

    public required string Consequence { get; init; }

    public required string Family { get; init; }

    public required ChecklistGate Gate { get; init; }

    /// <summary>Units of the value that is asked for; empty where none is.</summary>
    public ImmutableArray<string> Units { get; init; } = [];

    public bool NeedsMark { get; init; }

    public ItemCondition AppliesTo { get; init; } = new();

    public required RuleSource Source { get; init; }

    /// <summary>Where each field was typed, in the order of the fields.</summary>
    public ImmutableArray<FieldOrigin> Origins { get; init; } = [];

    public AskedItem Asked => new(Id, Units, NeedsMark);
}
