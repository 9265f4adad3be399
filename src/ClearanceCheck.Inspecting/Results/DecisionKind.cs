namespace ClearanceCheck.Inspecting.Results;

/// <summary>What is decided about the vehicle; the words on paper stand in Reporting.</summary>
public enum DecisionKind
{
    /// <summary>A danger fails, is undecided or could not be evaluated; or a rule was not loaded.</summary>
    Held,

    /// <summary>A warning is open, or a danger rule rests on a default value.</summary>
    Conditions,

    /// <summary>Nothing stands against a first slow drive; only when the whole vehicle is in scope.</summary>
    Clear,

    /// <summary>Nothing found against it in the part inspected.</summary>
    None,
}
