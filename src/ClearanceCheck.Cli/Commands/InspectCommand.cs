using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using ClearanceCheck.Cli.Inputs;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Cli.Commands;

/// <summary><c>inspect</c>: the main job.</summary>
internal static class InspectCommand
{
    private const int MostThreads = 256;

    private static ImmutableArray<string> Severities { get; } = [.. Enum.GetValues<Severity>().Select(MachineWords.Of)];

    public static Command Create(Door door)
    {
        Argument<string> file = FileArgument.Create();
        var folder = new Option<string>("--out") { Description = "Where the report goes.", HelpName = "DIR", DefaultValueFactory = _ => "clearance-report" };
        Option<string> formats = ReportFormats.CreateOption();
        RulesOptions rules = RulesOptions.Create();
        var failAt = new Option<string>("--fail-at") { Description = "The least severity that ends the command with status 1: " + string.Join(", ", Severities) + ".", HelpName = "SEVERITY", DefaultValueFactory = _ => MachineWords.Of(Severity.Danger) };
        failAt.AcceptOnlyFromAmong([.. Severities]);
        Option<int> threads = Threads();
        var command = new Command("inspect", "Inspects a vehicle: prints a summary and writes the report.") { file, folder, formats, failAt, threads };
        rules.AddTo(command);
        command.SetAction(p =>
        {
            var run = new InspectionRun(door, p.GetRequiredValue(file)) { RulesFolders = p.GetValue(rules.Folders) ?? [], Today = p.GetValue(rules.Today), Threads = p.GetValue(threads) };
            if (run.Inspect() is not { } result) return ExitStatus.UnusableInput;
            var report = new ReportFolder(door, p.GetRequiredValue(folder));
            ImmutableArray<string> written = ReportFormats.Parse(p.GetRequiredValue(formats));
            if (!report.Write(result, written)) return ExitStatus.UnusableInput;
            report.Print(result, written);
            return Status(result, MachineWords.Parse<Severity>(p.GetRequiredValue(failAt), MachineWords.Of)!.Value);
        });
        return command;
    }

    /// <summary>1 for an open finding, or an item found wrong, at or above a severity and for a vehicle that is held, else 0.</summary>
    private static int Status(InspectionResult result, Severity failAt) =>
        result.Decision.Kind == DecisionKind.Held || result.Findings.Any(f => f.IsOpen && f.Severity >= failAt)
        || result.Record.Items.Any(i => i.Outcome == ItemOutcome.Fails && i.Severity >= failAt)
            ? ExitStatus.Findings
            : ExitStatus.Nothing;

    private static Option<int> Threads() => new("--threads")
    {
        Description = "How many pairs are searched at once; the result does not depend on it.",
        HelpName = "N",
        DefaultValueFactory = _ => Math.Min(Environment.ProcessorCount, MostThreads),
        CustomParser = result =>
        {
            if (int.TryParse(result.Tokens[0].Value, NumberStyles.None, CultureInfo.InvariantCulture, out int threads) && threads is >= 1 and <= MostThreads) return threads;
            result.AddError(string.Create(CultureInfo.InvariantCulture, $"--threads takes a number from 1 to {MostThreads}."));
            return 1;
        },
    };
}
