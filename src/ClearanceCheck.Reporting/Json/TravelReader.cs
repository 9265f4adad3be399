using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Json;

/// <summary>Reads a travel table back.</summary>
internal static class TravelReader
{
    public static TravelTable Read(JsonNodeReader table)
    {
        ImmutableArray<TravelColumn> columns = [.. table["columns"].Items.Select(c => new TravelColumn(c["id"].Text, c["label"].Text, c["unit"].Text))];
        return new TravelTable(table["axle"].Text, columns, [.. table["rows"].Items.Select(r => ReadRow(r, columns))], [.. table["paths"].Items.Select(ReadPath)]);
    }

    private static TravelRow ReadRow(JsonNodeReader row, ImmutableArray<TravelColumn> columns) => new(
        row["pose"].Text,
        row["label"].Text,
        row["answer"].Text,
        [.. row["endedBy"].Items.Select(e => new TravelEnd(e["id"].Text, e["words"].Text, e["isStop"].YesNo))],
        [.. row["passed"].Items.Select(p => new TravelPassed(p["id"].Text, p["words"].Text, p["beyond"].Number))],
        [.. columns.Select(c => row["values"][c.Id].NumberOrNull)]);

    private static TravelPath ReadPath(JsonNodeReader path) => new(
        path["way"].Text,
        path["label"].Text,
        path["unit"].Text,
        path["endOfRange"].Number,
        path["endsWithoutStop"].YesNo,
        [.. path["met"].Items.Select(m => new TravelMet(m["id"].Text, m["words"].Text, m["at"].Number, m["beyondAtRide"].Number))]);
}
