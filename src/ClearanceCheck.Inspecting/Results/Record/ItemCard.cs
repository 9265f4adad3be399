using System.Collections.Immutable;
using ClearanceCheck.Rules;
using ClearanceCheck.Rules.Checklists;

namespace ClearanceCheck.Inspecting.Results.Record;

/// <summary>An item that a person answers, with the answer. Texts of the answer as typed, none trusted.</summary>
public sealed record ItemCard
{
    public required string Id { get; init; }
    public required string Title { get; init; }
    public required string Ask { get; init; }
    public required string Family { get; init; }
    public required ChecklistGate Gate { get; init; }
    public required Severity Severity { get; init; }
    public required string Consequence { get; init; }
    public required SourceCard Source { get; init; }

    /// <summary>Units of the value that is asked for; empty where none is.</summary>
    public required ImmutableArray<string> Units { get; init; }

    public required bool NeedsMark { get; init; }
    public required ItemOutcome Outcome { get; init; }

    /// <summary>Why it is asked where that is not plain: the file does not say whether the thing is fitted; null else.</summary>
    public string? Because { get; init; }

    public string? Value { get; init; }
    public string? Mark { get; init; }
    public string? By { get; init; }

    /// <summary>The note of the answer, or the reason why it does not apply.</summary>
    public string? Note { get; init; }
}
