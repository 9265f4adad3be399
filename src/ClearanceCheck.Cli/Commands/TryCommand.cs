using System.CommandLine;
using ClearanceCheck.Cli.Inputs;
using ClearanceCheck.Cli.Trying;
using ClearanceCheck.Inspecting.Trying;
using ClearanceCheck.Quantities;
using ClearanceCheck.Rules;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Cli.Commands;

/// <summary><c>rules try</c>: inspects a vehicle with and without an overlay, and says what flips.</summary>
internal static class TryCommand
{
    public static Command Create(Door door)
    {
        var overlay = new Argument<string>("OVERLAY") { Description = "The folder of the overlay to try." };
        Argument<string> file = FileArgument.Create();
        Option<string> format = TextOrJson.Create();
        RulesOptions rules = RulesOptions.Create();
        var command = new Command("try", "Inspects a vehicle with and without an overlay, and prints which verdicts flip.") { overlay, file, format };
        rules.AddTo(command);
        command.SetAction(p => Run(door, p.GetRequiredValue(overlay), p.GetRequiredValue(file), p.GetValue(rules.Folders) ?? [], p.GetValue(rules.Today), p.GetValue(format) == TextOrJson.Json));
        return command;
    }

    private static int Run(Door door, string overlay, string file, string[] folders, DateOnly? today, bool json)
    {
        DateOnly day = today ?? door.Today;
        if (RulesSource.Load(folders, day, QuantityCatalogue.Standard, door) is not { } below) return ExitStatus.UnusableInput;
        if (RulesSource.Load([.. folders, overlay], day, QuantityCatalogue.Standard, door) is not { } above) return ExitStatus.UnusableInput;
        if (LoadedInspection.Load(file, door, Both(below.Vocabulary, above.Vocabulary)) is not { } loaded) return ExitStatus.UnusableInput;
        var run = new InspectionRun(door, file) { Today = day, Threads = Environment.ProcessorCount };
        if (run.Inspect(loaded, below) is not { } before || run.Inspect(loaded, above) is not { } after) return ExitStatus.UnusableInput;
        RuleTrial trial = RuleTrial.Compare(before, after);
        door.Output.Write(json ? TrialJson.Write(trial, above) : TrialTable.Write(trial, above));
        return Status(above);
    }

    // What flips is an answer, not a fault; a rule that is not loaded fails the run, as it does an inspection.
    private static int Status(RuleLibrary library) => library.NotLoaded.IsEmpty ? ExitStatus.Nothing : ExitStatus.Findings;

    /// <summary>What a file may answer to either: an answer that only one asks for is no fault of the file.</summary>
    private static InspectionVocabulary? Both(InspectionVocabulary? below, InspectionVocabulary? above) => (below, above) switch
    {
        (null, _) => above,
        (_, null) => below,
        var (b, a) => new InspectionVocabulary(
            [.. b.Items.Concat(a.Items).GroupBy(i => i.Id, StringComparer.Ordinal).Select(Either)], [.. b.Expected.Concat(a.Expected).DistinctBy(e => (e.Id, e.For))]),
    };

    private static AskedItem Either(IEnumerable<AskedItem> same) =>
        same.Aggregate((a, b) => new AskedItem(a.Id, [.. a.Units.Union(b.Units, StringComparer.Ordinal)], a.NeedsMark && b.NeedsMark));
}
