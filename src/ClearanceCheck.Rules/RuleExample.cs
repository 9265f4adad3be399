using System.Collections.Immutable;

namespace ClearanceCheck.Rules;

/// <summary>A case that a rule states about itself; run when the library is loaded.</summary>
/// <param name="Value">In the quantity's unit.</param>
/// <param name="Uncertainty">Standard uncertainty, in the quantity's unit.</param>
/// <param name="Facts">Facts that hold.</param>
/// <param name="Part">The part; null for one that the rule selects.</param>
/// <param name="To">The other part; null for one that the rule selects.</param>
/// <param name="Expect">What the rule should make of it.</param>
public sealed record RuleExample(
    double Value, double Uncertainty, ImmutableArray<string> Facts, ExamplePart? Part, ExamplePart? To, ExampleOutcome Expect);
