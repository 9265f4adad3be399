using System.Collections.Immutable;

namespace ClearanceCheck.Rules;

/// <summary>The words that a rule may use as facts. Never free text: an unknown fact does not hold, and a misspelt one is an error.</summary>
public static class RuleFacts
{
    /// <summary>The two parts ride on bodies that move against each other.</summary>
    public const string Moving = "moving";

    /// <summary>A shield stands between the two at the worst pose. Nothing computes it yet, so it never holds.</summary>
    public const string Shielded = "shielded";

    public static ImmutableArray<string> All { get; } = [Moving, Shielded];
}
