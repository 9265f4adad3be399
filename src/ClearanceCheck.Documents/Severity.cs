namespace ClearanceCheck.Documents;

/// <summary>Whether a diagnostic keeps the file from being used.</summary>
public enum Severity
{
    /// <summary>Said, and the file is still used.</summary>
    Note,

    /// <summary>The file cannot be used.</summary>
    Error,
}
