using System.Collections.Immutable;
using ClearanceCheck.Rules.Checklists;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Rules;

/// <summary>A set of rules as loaded: a library, with what overlays made of it.</summary>
/// <param name="Name">Of the topmost layer.</param>
/// <param name="Version">Of the topmost layer.</param>
/// <param name="Hash">SHA-256 over the files' names and bytes in ordinal order of the names, 64 small hexadecimal digits; of several layers over their hashes.</param>
/// <param name="NotLoaded">One sentence for each rule that could not be loaded.</param>
public sealed record RuleLibrary(string Name, string Version, string Hash, ImmutableArray<Rule> Rules, ImmutableArray<string> NotLoaded)
{
    /// <summary>The library and what stands on it, from the bottom up.</summary>
    public ImmutableArray<RuleLayer> Layers { get; init; } = [];

    /// <summary>What overlays did, in the order of layers and files.</summary>
    public ImmutableArray<RuleChange> Changes { get; init; } = [];

    /// <summary>What a person is asked, in the order of the files.</summary>
    public ImmutableArray<ChecklistItem> Items { get; init; } = [];

    /// <summary>What a whole vehicle is expected to have.</summary>
    public ImmutableArray<CoverageRow> Coverage { get; init; } = [];

    /// <summary>Items that an overlay switched off: a file may still answer them.</summary>
    public ImmutableArray<ChecklistItem> NoLongerAsked { get; init; } = [];

    /// <summary>Expectations that an overlay switched off: a file may still declare them absent.</summary>
    public ImmutableArray<CoverageRow> NoLongerExpected { get; init; } = [];

    /// <summary>What an inspection file may answer and declare absent; null for a library that asks nothing of a person.</summary>
    public InspectionVocabulary? Vocabulary =>
        Items.IsEmpty && Coverage.IsEmpty && NoLongerAsked.IsEmpty && NoLongerExpected.IsEmpty
            ? null
            : new([.. Items.Concat(NoLongerAsked).Select(i => i.Asked)], [.. Coverage.Concat(NoLongerExpected).Select(c => c.Expectation)]);
}
