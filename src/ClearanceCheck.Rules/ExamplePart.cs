using System.Collections.Immutable;

namespace ClearanceCheck.Rules;

/// <summary>A part as an example names it; what is not said is what the rule selects.</summary>
/// <param name="Kind">A word of the catalogue of kinds; null for one that the rule selects.</param>
/// <param name="Id">An id; null for one that the rule selects.</param>
public sealed record ExamplePart(string? Kind, string? Id)
{
    /// <summary>Properties by their words; one that is not named is one that the file does not say.</summary>
    public ImmutableSortedDictionary<string, double> Properties { get; init; } = ImmutableSortedDictionary<string, double>.Empty;
}
