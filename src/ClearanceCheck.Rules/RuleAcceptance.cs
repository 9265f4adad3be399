namespace ClearanceCheck.Rules;

/// <summary>On what terms a rule lets a finding be accepted.</summary>
/// <param name="Floor">The worst value that may still be accepted, in the quantity's unit.</param>
/// <param name="Days">For how many days at most.</param>
public sealed record RuleAcceptance(double Floor, int Days);
