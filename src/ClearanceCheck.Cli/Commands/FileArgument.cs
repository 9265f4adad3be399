using System.CommandLine;

namespace ClearanceCheck.Cli.Commands;

/// <summary>The argument that names the inspection file.</summary>
internal static class FileArgument
{
    public static Argument<string> Create() => new("FILE") { Description = "The inspection file; - reads standard input." };
}
