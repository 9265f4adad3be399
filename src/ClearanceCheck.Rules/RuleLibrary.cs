using System.Collections.Immutable;

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
}
