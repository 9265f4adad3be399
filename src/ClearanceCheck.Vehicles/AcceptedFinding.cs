using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles;

/// <summary>A finding that somebody takes the word for: the rule's limit is not met, and the vehicle is driven so for a time.</summary>
/// <param name="Id">Its id in the file.</param>
/// <param name="Rule">The rule.</param>
/// <param name="Parts">Ids of the finding's parts.</param>
/// <param name="Floor">The worst value up to which it counts, in <paramref name="Unit"/>.</param>
/// <param name="Unit"><c>mm</c>, <c>%</c> or <c>deg</c>.</param>
/// <param name="FloorTyped">The floor as typed.</param>
/// <param name="By">Who accepts it, as typed.</param>
/// <param name="Until">The last day on which it counts.</param>
/// <param name="Reason">Why, as typed.</param>
public sealed record AcceptedFinding(
    string Id, string Rule, ImmutableArray<string> Parts, double Floor, string Unit, string FloorTyped, string By, DateOnly Until, string Reason)
{
    /// <summary>True for the finding of the rule with these parts, in whatever order.</summary>
    public bool IsOf(string rule, IEnumerable<string> parts) => rule == Rule && parts.Order(StringComparer.Ordinal).SequenceEqual(Parts.Order(StringComparer.Ordinal));
}
