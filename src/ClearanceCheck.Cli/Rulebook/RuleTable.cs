using System.Text;
using ClearanceCheck.Quantities;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Cli.Rulebook;

/// <summary>The rules that count, one a line: id, severity, quantity, limit, the layer that sets the limit.</summary>
internal static class RuleTable
{
    public static string Write(RuleLibrary library, QuantityCatalogue quantities)
    {
        string[][] rows = [["RULE", "SEVERITY", "QUANTITY", "LIMIT", "LIMIT FROM"], .. library.Rules.Select(r => Row(r, quantities.Find(r.Quantity)!))];
        int[] widths = [.. Enumerable.Range(0, rows[0].Length).Select(i => rows.Max(r => r[i].Length))];
        var text = new StringBuilder();
        foreach (string[] row in rows) text.AppendJoin("  ", row.Select((cell, i) => cell.PadRight(widths[i]))).TrimEnd().Append('\n');
        return text.Append('\n').Append(RuleCount.Write(library)).ToString();
    }

    private static string[] Row(Rule rule, Quantity quantity) =>
        [rule.Id, MachineWords.Of(rule.Severity), rule.Quantity, QuantityWords.Limit(rule.Limit, quantity), rule.Origins.FirstOrDefault(o => o.Field == "limit")?.Layer ?? ""];

    private static StringBuilder TrimEnd(this StringBuilder text)
    {
        while (text.Length > 0 && text[^1] == ' ') text.Length--;
        return text;
    }
}
