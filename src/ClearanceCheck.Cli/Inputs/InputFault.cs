namespace ClearanceCheck.Cli.Inputs;

/// <summary>Something that a person typed can't be used: what is wrong, and what would be right.</summary>
internal sealed record InputFault(string Message, string Help)
{
    /// <summary>Prints faults to standard error.</summary>
    /// <returns>The exit status.</returns>
    public static int Print(Door door, params IEnumerable<InputFault> faults)
    {
        foreach (InputFault fault in faults)
        {
            door.Error.WriteLine($"error: {fault.Message}");
            if (fault.Help.Length > 0) door.Error.WriteLine($"help: {fault.Help}");
        }

        return ExitStatus.UnusableInput;
    }
}
