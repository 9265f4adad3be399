namespace ClearanceCheck.Inspecting.Results;

/// <summary>One rule's outcome for one subject (JCGM 106, ISO 14253-1).</summary>
public enum Verdict
{
    /// <summary>The limit is met with the whole uncertainty against it.</summary>
    Conforms,

    /// <summary>The limit is missed with the whole uncertainty for it.</summary>
    Fails,

    /// <summary>The uncertainty straddles the limit.</summary>
    Undecided,

    /// <summary>A value is missing or a pose could not be solved.</summary>
    NotEvaluated,
}
