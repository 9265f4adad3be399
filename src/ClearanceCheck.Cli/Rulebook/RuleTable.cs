using System.Globalization;
using System.Text;
using ClearanceCheck.Quantities;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Rules;
using ClearanceCheck.Rules.Checklists;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Cli.Rulebook;

/// <summary>What counts, one a line: rules with their limit, items and expectations, each with the layer that it is as it is from.</summary>
internal static class RuleTable
{
    public static string Write(RuleLibrary library, QuantityCatalogue quantities)
    {
        var text = new StringBuilder();
        Write(text, ["RULE", "SEVERITY", "QUANTITY", "LIMIT", "LIMIT FROM"], library.Rules.Select(r => Row(r, quantities.Find(r.Quantity)!)));
        Write(text, ["ITEM", "SEVERITY", "ASKED", "TITLE", "FROM"], library.Items.Select(Row));
        Write(text, ["EXPECTED", "SEVERITY", "OF EACH", "COUNT", "FROM"], library.Coverage.Select(Row));
        return text.Append(RuleCount.Write(library)).ToString();
    }

    private static void Write(StringBuilder text, string[] heading, IEnumerable<string[]> lines)
    {
        string[][] rows = [heading, .. lines];
        if (rows.Length == 1) return;
        int[] widths = [.. Enumerable.Range(0, heading.Length).Select(i => rows.Max(r => r[i].Length))];
        foreach (string[] row in rows) text.AppendJoin("  ", row.Select((cell, i) => cell.PadRight(widths[i]))).TrimEnd().Append('\n');
        text.Append('\n');
    }

    private static string[] Row(ChecklistItem item) =>
        [item.Id, MachineWords.Of(item.Severity), item.Gate == ChecklistGate.BeforeFirstDrive ? "before the first drive" : "after the first drive", VisibleText.Sentence(item.Title), Layers(item.Origins)];

    private static string[] Row(CoverageRow row) =>
        [row.Expectation.Id, MachineWords.Of(row.Severity), Each(row.Expectation.For), row.Expectation.Count.ToString(CultureInfo.InvariantCulture), Layers(row.Origins)];

    private static string Each(ExpectedFor each) => each switch
    {
        ExpectedFor.Vehicle => "vehicle",
        ExpectedFor.Axle => "axle",
        _ => "wheel body",
    };

    // The lowest first: who wrote it, and who changed something of it.
    private static string Layers(IEnumerable<FieldOrigin> origins) => string.Join(", ", origins.Select(o => o.Layer).Distinct(StringComparer.Ordinal));

    private static string[] Row(Rule rule, Quantity quantity) =>
        [rule.Id, MachineWords.Of(rule.Severity), rule.Quantity, QuantityWords.Limit(rule.Limit, quantity), rule.Origins.FirstOrDefault(o => o.Field == "limit")?.Layer ?? ""];

    private static StringBuilder TrimEnd(this StringBuilder text)
    {
        while (text.Length > 0 && text[^1] == ' ') text.Length--;
        return text;
    }
}
