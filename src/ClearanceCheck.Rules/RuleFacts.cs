using System.Collections.Immutable;

namespace ClearanceCheck.Rules;

/// <summary>The words that a rule may use as facts. Never free text: an unknown fact does not hold, and a misspelt one is an error.</summary>
public static class RuleFacts
{
    /// <summary>The two parts ride on bodies that move against each other.</summary>
    public const string Moving = "moving";

    /// <summary>A heat shield of the file cuts the line between the nearest points, in every pose in which the two come near each other.</summary>
    public const string Shielded = "shielded";

    /// <summary>No other rule of the library limits the gap of the two.</summary>
    public const string Uncovered = "uncovered";

    /// <summary>The file says that the two are meant to touch.</summary>
    public const string MeantContact = "meant-contact";

    /// <summary>One of the two is joined to the body of the other, and what lies near the joint is left out.</summary>
    public const string Joined = "joined";

    /// <summary>The reading that the quantity needs besides the points of every vehicle is in the file.</summary>
    public const string Read = "read";

    public static ImmutableArray<string> All { get; } = [Moving, Shielded, Uncovered, MeantContact, Joined, Read];
}
