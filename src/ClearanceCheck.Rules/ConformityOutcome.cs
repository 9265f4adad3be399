namespace ClearanceCheck.Rules;

/// <summary>How a value stands to a limit. Ordered: the graver the larger.</summary>
public enum ConformityOutcome
{
    Conforms,

    /// <summary>Too close to call.</summary>
    Undecided,

    Fails,
}
