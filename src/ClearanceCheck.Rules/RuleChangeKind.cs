namespace ClearanceCheck.Rules;

/// <summary>What an overlay did to a rule.</summary>
public enum RuleChangeKind
{
    /// <summary>It asks for no less than before.</summary>
    Tightened,

    /// <summary>It asks for less in some way.</summary>
    Loosened,

    SwitchedOff,

    /// <summary>A rule of the overlay's own.</summary>
    Added,

    /// <summary>Its day has passed: the rule below counts again.</summary>
    Expired,
}
