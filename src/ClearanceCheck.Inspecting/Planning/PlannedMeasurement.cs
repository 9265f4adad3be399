using System.Collections.Immutable;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Rules;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Planning;

/// <summary>One measurement that serves all rules on the same subject.</summary>
/// <param name="Subject">The part, or the pair sorted by id.</param>
internal sealed record PlannedMeasurement(
    Quantity Quantity, ImmutableArray<Part> Subject, ImmutableSortedSet<string> Facts, ImmutableArray<AppliedRule> Rules)
{
    /// <summary>The poses that are looked at.</summary>
    public PoseSet Over { get; init; } = PoseSet.AllPoses;

    /// <summary>True when every rule on it is one for pairs that no other rule covers.</summary>
    public bool IsUncovered => Rules.All(r => r.Rule.OnlyWhen.Contains(RuleFacts.Uncovered));
}

/// <summary>A rule on a subject.</summary>
/// <param name="Parts">The parts in the rule's own order.</param>
/// <param name="Because">Facts of the case that set the limit; empty for the rule's own.</param>
/// <param name="Limit">For these parts; the rule's own where a property of the part is missing that sets it.</param>
internal sealed record AppliedRule(Rule Rule, ImmutableArray<Part> Parts, RuleLimit Limit, ImmutableArray<string> Because)
{
    /// <summary>What of the part sets the limit and stands nowhere; null where the limit is known.</summary>
    public LimitForPart.Missing? Missing { get; init; }
}
