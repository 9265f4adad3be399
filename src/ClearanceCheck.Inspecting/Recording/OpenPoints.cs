using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Rules;
using ClearanceCheck.Rules.Checklists;

namespace ClearanceCheck.Inspecting.Recording;

/// <summary>What of the record holds the vehicle or is a condition, what holds it first.</summary>
/// <remarks>
/// What somebody found wrong counts in any inspection. What nobody looked at counts only where the whole vehicle is in scope: a part inspection
/// says nothing of the vehicle, and lists it. Items of the second gate can't have an answer before the first drive.
/// </remarks>
internal static class OpenPoints
{
    private const int MostNamed = 6;

    public static ImmutableArray<OpenPoint> Of(RecordCard record) =>
    [
        .. new[] { Severity.Danger, Severity.Warning }.SelectMany(s => Failed(record, s)),
        .. new[] { Severity.Danger, Severity.Warning }.SelectMany(s => Missing(record, s)),
        .. record.Temporary.Select(t => new OpenPoint(false, $"{Sentence(t.What)} Until {t.Until}: {Sentence(t.MustNot)}", $"{Sentence(t.What)} Mend it: {Sentence(t.Until)}")),
        .. Pivots(record),
    ];

    private static IEnumerable<OpenPoint> Failed(RecordCard record, Severity severity) =>
        record.Items.Where(i => i.Severity == severity && i.Outcome == ItemOutcome.Fails).Select(i => new OpenPoint(
            severity == Severity.Danger, $"{i.Title}: not right. {i.Consequence}", $"{i.Title}: {(i.Note is { } note ? Sentence(note) + " " : "")}{i.Ask}"));

    private static IEnumerable<OpenPoint> Missing(RecordCard record, Severity severity)
    {
        if (!record.IsWhole) yield break;
        bool holds = severity == Severity.Danger;
        string word = holds ? "danger" : "warning";
        ImmutableArray<string> items =
            [.. record.Items.Where(i => i.Severity == severity && i.Gate == ChecklistGate.BeforeFirstDrive && i.Outcome == ItemOutcome.NotInspected).Select(i => i.Title)];
        if (!items.IsEmpty)
            yield return new OpenPoint(holds, $"Not inspected, and each is a {word}: {Listed(items)}.", $"Answer these lines of the checklist: {Listed(items)}.");
        ImmutableArray<string> parts = [.. record.Coverage.Where(c => c.Severity == severity && c.Outcome == CoverageOutcome.NotInspected).Select(c => c.Title)];
        if (!parts.IsEmpty)
            yield return new OpenPoint(holds, $"Expected of a whole vehicle, not in the file, and each is a {word}: {Listed(parts)}.", $"Measure these, or declare them absent with the reason: {Listed(parts)}.");
    }

    private static IEnumerable<OpenPoint> Pivots(RecordCard record)
    {
        foreach (IGrouping<string, PivotCard> axle in record.Pivots.Where(p => p.Outcome != PivotOutcome.AtRideHeight).GroupBy(p => p.Axle))
        {
            int hanging = axle.Count(p => p.Outcome == PivotOutcome.Hanging), open = axle.Count() - hanging;
            string said = hanging == 0
                ? $"not known to be tightened at ride height: {Count(open)} of the {axle.Key} axle."
                : $"tightened while hanging: {Count(hanging)} of the {axle.Key} axle{(open > 0 ? $"; not known to be tightened: {Count(open)}" : "")}.";
            yield return new OpenPoint(false, "Tightening audit open, " + said, $"Stand the {axle.Key} axle at ride height, {(hanging > 0 ? "loosen what was tightened hanging, " : "")}tighten every bushed pivot to the value of the maker's manual, and write it below `tightened`.");
        }
    }

    private static string Count(int pivots) => pivots == 1 ? "1 bushed pivot" : FormattableString.Invariant($"{pivots} bushed pivots");

    private static string Listed(ImmutableArray<string> titles) => titles.Length <= MostNamed
        ? string.Join("; ", titles)
        : FormattableString.Invariant($"{string.Join("; ", titles.Take(MostNamed))}; and {titles.Length - MostNamed} more");

    private static string Sentence(string text) => text.TrimEnd('.', ' ') + ".";
}
