namespace ClearanceCheck.Cli;

/// <summary>The program <c>clearance-check</c>.</summary>
internal static class Program
{
    private static int Main(string[] args)
    {
        using Door door = ProcessDoor.Open();
        return CommandLine.Run(args, door);
    }
}
