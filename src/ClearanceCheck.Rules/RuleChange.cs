using System.Collections.Immutable;

namespace ClearanceCheck.Rules;

/// <summary>What an overlay did to a rule below it.</summary>
/// <param name="Rule">The rule's id.</param>
/// <param name="Title">The rule's title below the overlay.</param>
/// <param name="Layer">Name and version of the overlay.</param>
/// <param name="Place">File, line and column.</param>
public sealed record RuleChange(string Rule, string Title, RuleChangeKind Kind, string Layer, string Place)
{
    /// <summary>What is different, a phrase each: "limit: at least 40 mm instead of at least 50 mm".</summary>
    public ImmutableArray<string> What { get; init; } = [];

    /// <summary>In what it asks less than before, a phrase each; empty for what does not loosen.</summary>
    public ImmutableArray<string> Looser { get; init; } = [];

    public string? Because { get; init; }

    public string? By { get; init; }

    /// <summary>The last day on which it counts; null where it counts for good.</summary>
    public DateOnly? Until { get; init; }
}
