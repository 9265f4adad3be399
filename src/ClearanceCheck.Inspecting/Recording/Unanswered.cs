using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Rules;
using ClearanceCheck.Rules.Checklists;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Recording;

/// <summary>What of the record nobody looked at, for the list of what was not inspected. Each stands in the checklist with its words.</summary>
internal static class Unanswered
{
    public static IEnumerable<NotInspectedItem> Of(RecordCard record)
    {
        foreach (IGrouping<Severity, ItemCard> same in record.Items
            .Where(i => i.Gate == ChecklistGate.BeforeFirstDrive && i.Outcome == ItemOutcome.NotInspected).GroupBy(i => i.Severity).OrderByDescending(g => g.Key))
            yield return new NotInspectedItem($"{Lines(same.Count())} of the checklist, each a {Word(same.Key)}", "nobody answered: " + string.Join("; ", same.Select(i => i.Title)));
        ImmutableArray<string> parts = [.. record.Coverage.Where(c => c.Outcome == CoverageOutcome.NotInspected).Select(c => c.Title)];
        if (!parts.IsEmpty) yield return new NotInspectedItem("Expected of a whole vehicle", "neither in the file nor declared absent: " + string.Join("; ", parts));
    }

    /// <summary>Answers that no item of the rules asks for: they count for nothing, and that is said.</summary>
    public static IEnumerable<NotInspectedItem> NotUsed(Vehicle vehicle, RuleLibrary library)
    {
        string[] unused = [.. vehicle.Record.Answers.Select(a => a.Item).Where(id => !library.Items.Any(i => i.Id == id))];
        if (unused.Length > 0) yield return new NotInspectedItem("Answers that were not used", "the rules ask no such item: " + string.Join(", ", unused));
    }

    private static string Lines(int count) => count == 1 ? "1 line" : FormattableString.Invariant($"{count} lines");

    private static string Word(Severity severity) => severity switch
    {
        Severity.Danger => "danger",
        Severity.Warning => "warning",
        Severity.Caution => "caution",
        _ => "notice",
    };
}
