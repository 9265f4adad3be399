namespace ClearanceCheck.Inspecting.Results.Record;

/// <summary>What became of an item.</summary>
public enum ItemOutcome
{
    Ok,

    /// <summary>Somebody looked, and it is not right.</summary>
    Fails,

    /// <summary>Nobody answered, or the answer is that it was not done.</summary>
    NotInspected,

    /// <summary>Declared with a reason not to apply to this vehicle.</summary>
    NotApplicable,
}
