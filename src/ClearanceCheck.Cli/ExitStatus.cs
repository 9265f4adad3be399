namespace ClearanceCheck.Cli;

/// <summary>What a command ends with.</summary>
internal static class ExitStatus
{
    /// <summary>Nothing at or above the severity asked for, and not held; or the answer was given.</summary>
    public const int Nothing = 0;

    /// <summary>A finding at or above the severity asked for, or held; or the answer is "not known".</summary>
    public const int Findings = 1;

    /// <summary>The input can't be used.</summary>
    public const int UnusableInput = 2;

    /// <summary>A fault of the program.</summary>
    public const int ProgramFault = 3;
}
