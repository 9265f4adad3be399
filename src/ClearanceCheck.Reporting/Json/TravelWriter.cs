using System.Text.Json;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Json;

/// <summary>Writes a travel table; a row's values stand under the names of the columns.</summary>
internal static class TravelWriter
{
    public static void Write(Utf8JsonWriter json, TravelTable table)
    {
        json.WriteString("axle", table.Axle);
        JsonFields.Each(json, "columns", table.Columns, (j, column) =>
        {
            j.WriteString("id", column.Id);
            j.WriteString("label", column.Label);
            j.WriteString("unit", column.Unit);
        });
        JsonFields.Each(json, "rows", table.Rows, (j, row) => WriteRow(j, table, row));
        JsonFields.Each(json, "paths", table.Paths, WritePath);
    }

    private static void WriteRow(Utf8JsonWriter json, TravelTable table, TravelRow row)
    {
        json.WriteString("pose", row.Pose);
        json.WriteString("label", row.Label);
        json.WriteString("answer", row.Answer);
        JsonFields.Each(json, "endedBy", row.EndedBy, (j, end) =>
        {
            j.WriteString("id", end.Id);
            j.WriteString("words", end.Words);
            j.WriteBoolean("isStop", end.IsStop);
        });
        JsonFields.Each(json, "passed", row.Passed, (j, passed) =>
        {
            j.WriteString("id", passed.Id);
            j.WriteString("words", passed.Words);
            JsonFields.Number(j, "beyond", passed.BeyondMm);
        });
        json.WriteStartObject("values");
        for (int i = 0; i < table.Columns.Length; i++) JsonFields.Number(json, table.Columns[i].Id, row.Values[i]);
        json.WriteEndObject();
    }

    private static void WritePath(Utf8JsonWriter json, TravelPath path)
    {
        json.WriteString("way", path.Way);
        json.WriteString("label", path.Label);
        json.WriteString("unit", path.Unit);
        JsonFields.Number(json, "endOfRange", path.EndOfRange);
        json.WriteBoolean("endsWithoutStop", path.EndsWithoutStop);
        JsonFields.Each(json, "met", path.Met, (j, met) =>
        {
            j.WriteString("id", met.Id);
            j.WriteString("words", met.Words);
            JsonFields.Number(j, "at", met.At);
            JsonFields.Number(j, "beyondAtRide", met.BeyondAtRideMm);
        });
    }
}
