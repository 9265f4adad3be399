using System.Collections.Immutable;
using System.Text;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Json;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Units;

namespace ClearanceCheck.Reporting;

/// <summary>The travel tables of all axles as one CSV text (RFC 4180 from memory; lines end with LF): one line a pose, a unit in each heading.</summary>
/// <remarks>
/// The columns up to the axle's own are always the same ones; behind them stand those of the parts, named by their ids. A cell is
/// empty where an axle has no such thing or it is not known. Numbers are those of <c>findings.json</c>.
/// </remarks>
public static class TravelCsv
{
    private static readonly ImmutableArray<(string Id, string Unit)> Always =
    [
        ("left.travel", "mm"), ("right.travel", "mm"), ("steer", "deg"),
        ("left.hub-to-fender", "mm"), ("right.hub-to-fender", "mm"),
        ("left.camber", "deg"), ("right.camber", "deg"), ("left.toe", "deg"), ("right.toe", "deg"),
        ("left.steer", "deg"), ("right.steer", "deg"), ("left.caster", "deg"), ("right.caster", "deg"),
        ("axle.shift", "mm"), ("axle.forward", "mm"), ("axle.yaw", "deg"), ("axle.tilt", "deg"),
    ];

    public static string Write(InspectionResult result)
    {
        ImmutableArray<(string Id, string Unit)> columns = [.. Always.Concat(result.Travel.SelectMany(t => t.Columns).Select(c => (c.Id, c.Unit))).DistinctBy(c => c.Item1)];
        var text = new StringBuilder();
        Line(text, ["axle", "pose", "answer", "ended by", "beyond", .. columns.Select(c => Words($"{c.Id} ({c.Unit})"))]);
        foreach (TravelTable table in result.Travel)
            foreach (TravelRow row in table.Rows)
                Line(text, [.. Texts(table, row), .. columns.Select(c => Number(table, row, c.Id))]);
        return text.ToString();
    }

    private static IEnumerable<string> Texts(TravelTable table, TravelRow row) =>
    [
        Words(table.Axle),
        Words(row.Pose),
        Words(row.Answer),
        Words(string.Join("; ", row.EndedBy.Select(e => e.Id))),
        Words(string.Join("; ", row.Passed.Select(p => $"{p.Id} by {NumberFormat.UpTo(p.BeyondMm, 3)} mm"))),
    ];

    private static string Number(TravelTable table, TravelRow row, string id)
    {
        for (int i = 0; i < table.Columns.Length; i++)
            if (table.Columns[i].Id == id) return row.Values[i] is { } value ? NumberFormat.Shortest(JsonFields.Rounded(value, id)) : "";
        return "";
    }

    private static void Line(StringBuilder text, IEnumerable<string> cells) => text.AppendJoin(',', cells.Select(Quoted)).Append('\n');

    // A table program takes a text that begins so for a formula and would run it.
    private static string Words(string typed)
    {
        string shown = VisibleText.Sentence(typed);
        return shown is ['=' or '+' or '-' or '@', ..] ? "'" + shown : shown;
    }

    private static string Quoted(string cell) => cell.AsSpan().IndexOfAny(",\"\n\r") < 0 ? cell : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
