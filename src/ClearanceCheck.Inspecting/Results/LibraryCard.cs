using System.Collections.Immutable;

namespace ClearanceCheck.Inspecting.Results;

/// <summary>The rules that judged: a library, with what overlays made of it.</summary>
/// <param name="Hash">SHA-256 of the library's files, hexadecimal; of several layers over their hashes.</param>
/// <param name="NotLoaded">One sentence for each rule that could not be loaded; any of these holds the vehicle.</param>
public sealed record LibraryCard(string Name, string Version, string Hash, int RuleCount, ImmutableArray<string> NotLoaded)
{
    /// <summary>The library and the overlays on it, from the bottom up.</summary>
    public ImmutableArray<LayerCard> Layers { get; init; } = [];

    /// <summary>Rules that an overlay loosened or switched off, and changes whose day has passed.</summary>
    public ImmutableArray<RuleChangeCard> Changes { get; init; } = [];
}

/// <summary>A library or an overlay.</summary>
public sealed record LayerCard(string Name, string Version, bool IsOverlay, string Hash);

/// <summary>A rule that an overlay asks less of, or a change that no longer counts.</summary>
/// <param name="Kind"><c>loosened</c>, <c>switched-off</c> or <c>expired</c>.</param>
/// <param name="What">In what it asks less, a phrase each; empty for a change that no longer counts.</param>
/// <param name="Until">The last day on which it counts, as <c>2031-12-31</c>; null where it counts for good.</param>
/// <param name="Layer">Name and version of the overlay.</param>
/// <param name="Place">File, line and column.</param>
public sealed record RuleChangeCard(
    string Rule, string Title, string Kind, ImmutableArray<string> What, string? Because, string? By, string? Until, string Layer, string Place);
