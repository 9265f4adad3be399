namespace ClearanceCheck.Inspecting.Results.Record;

/// <summary>Whether something that a whole vehicle has was looked at.</summary>
public enum CoverageOutcome
{
    Present,

    /// <summary>Declared absent with a reason.</summary>
    Absent,

    /// <summary>Neither in the file nor declared absent.</summary>
    NotInspected,
}
