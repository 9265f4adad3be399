using System.CommandLine;
using ClearanceCheck.Cli.Commands;
using Serilog.Events;

namespace ClearanceCheck.Cli;

/// <summary>Reads what was typed behind the program's name and runs the command.</summary>
internal static class CommandLine
{
    /// <summary>Runs one command; never throws.</summary>
    /// <returns>The exit status.</returns>
    public static int Run(IReadOnlyList<string> args, Door door)
    {
        try
        {
            // A file named @something is a file, not a list of further arguments.
            ParseResult parsed = Root(door).Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
            if (parsed.Errors.Count > 0) return Refuse(parsed, door);
            return parsed.Invoke(new InvocationConfiguration { Output = door.Output, Error = door.Error, EnableDefaultExceptionHandler = false });
        }
#pragma warning disable CA1031 // The last catch of the program: whatever it is, it becomes one sentence, a log file and status 3.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            return Crash.Report(fault, door);
        }
    }

    private static RootCommand Root(Door door)
    {
        var verbose = new Option<bool>("--verbose") { Description = "Say more about what is done, on standard error.", Recursive = true };
        verbose.Validators.Add(result => door.LogLevel.MinimumLevel = result.Implicit ? LogEventLevel.Warning : LogEventLevel.Debug);
        var root = new RootCommand("Checks gaps and hose lengths of a lifted vehicle through its whole suspension travel.") { verbose };
        root.Options.OfType<VersionOption>().Single().Action = new VersionAction(door);
        root.Add(InspectCommand.Create(door));
        root.Add(MeasureCommand.Create(door));
        root.Add(PoseCommand.Create(door));
        root.Add(DemoCommand.Create(door));
        root.Add(RulesCommand.Create(door));
        root.Add(SchemaCommand.Create(door));
        return root;
    }

    private static int Refuse(ParseResult parsed, Door door)
    {
        foreach (string message in parsed.Errors.Select(e => e.Message).Distinct()) door.Error.WriteLine(message);
        door.Error.WriteLine("Run `clearance-check --help`, or `clearance-check COMMAND --help`, to see what can be typed.");
        return ExitStatus.UnusableInput;
    }
}
