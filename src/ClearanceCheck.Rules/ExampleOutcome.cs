namespace ClearanceCheck.Rules;

/// <summary>What an example expects of its rule.</summary>
public enum ExampleOutcome
{
    Conforms,
    Fails,
    Undecided,

    /// <summary>The rule does not apply to such parts or facts.</summary>
    NotCovered,

    /// <summary>The limit hangs on a property of the part that is not said.</summary>
    NotEvaluated,
}
