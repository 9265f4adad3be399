using System.CommandLine;
using ClearanceCheck.Cli.Inputs;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Cli.Commands;

/// <summary><c>demo</c>: an invented vehicle, its inspection file and its report, to look at.</summary>
internal static class DemoCommand
{
    private const string Fixture = "fixtures/one-line/";
    private const string Main = "inspection.yaml";

    public static Command Create(Door door)
    {
        var folder = new Option<string>("--out") { Description = "Where the demo goes.", HelpName = "DIR", DefaultValueFactory = _ => "clearance-demo" };
        var command = new Command("demo", "Writes a demo inspection of an invented vehicle and its report.") { folder };
        command.SetAction(p => Run(door, p.GetRequiredValue(folder)));
        return command;
    }

    private static int Run(Door door, string folder)
    {
        var report = new ReportFolder(door, folder);
        (string Name, byte[] Content)[] files = [.. EmbeddedFiles.Below(Fixture).Select(f => (f.Name, f.Content.ToArray()))];
        if (files.Select(f => f.Name).FirstOrDefault(name => report.HoldsOther(name, files.Single(f => f.Name == name).Content)) is { } other)
            return InputFault.Print(door, new InputFault($"{report.Named(other)} exists and is not the demo's.", "Choose an empty folder with --out."));
        if (!report.Write(files)) return ExitStatus.UnusableInput;
        var run = new InspectionRun(door, report.Named(Main)) { Threads = Environment.ProcessorCount };
        InspectionResult result = run.Inspect() ?? throw new InvalidOperationException("The demo that the program carries can't be inspected.");
        if (!report.Write(result, ReportFormats.Usual)) return ExitStatus.UnusableInput;
        report.Print(result, ReportFormats.Usual);
        door.Output.WriteLine($"The vehicle is invented; so are its faults. Open {report.Named(ReportFolder.Page)} in a browser.");
        return ExitStatus.Nothing;
    }
}
