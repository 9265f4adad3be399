using System.CommandLine;
using System.CommandLine.Invocation;

namespace ClearanceCheck.Cli;

/// <summary>Prints the program's version.</summary>
internal sealed class VersionAction(Door door) : SynchronousCommandLineAction
{
    public override int Invoke(ParseResult parseResult)
    {
        door.Output.WriteLine(ProgramVersion.Text);
        return ExitStatus.Nothing;
    }
}
