using System.Text.Json;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Reporting.Wording;

namespace ClearanceCheck.Reporting.Json;

/// <summary>Writes checklist, coverage, tightening audit and temporary states.</summary>
internal static class RecordWriter
{
    public static void Write(Utf8JsonWriter json, RecordCard record)
    {
        json.WriteStartObject("record");
        json.WriteBoolean("wholeVehicle", record.IsWhole);
        JsonFields.Each(json, "items", record.Items, WriteItem);
        JsonFields.Each(json, "coverage", record.Coverage, WriteCoverage);
        JsonFields.Each(json, "pivots", record.Pivots, (j, pivot) =>
        {
            j.WriteString("id", pivot.Id);
            j.WriteString("axle", pivot.Axle);
            j.WriteString("words", pivot.Words);
            j.WriteString("outcome", RecordWords.Of(pivot.Outcome));
            JsonFields.Text(j, "by", pivot.By);
            JsonFields.Text(j, "mark", pivot.Mark);
        });
        JsonFields.Each(json, "temporary", record.Temporary, (j, state) =>
        {
            j.WriteString("id", state.Id);
            j.WriteString("what", state.What);
            j.WriteString("mustNot", state.MustNot);
            j.WriteString("until", state.Until);
            j.WriteString("by", state.By);
        });
        json.WriteEndObject();
    }

    private static void WriteItem(Utf8JsonWriter json, ItemCard item)
    {
        json.WriteString("id", item.Id);
        json.WriteString("title", item.Title);
        json.WriteString("ask", item.Ask);
        json.WriteString("family", item.Family);
        json.WriteString("gate", RecordWords.Of(item.Gate));
        json.WriteString("severity", MachineWords.Of(item.Severity));
        json.WriteString("consequence", item.Consequence);
        WriteSource(json, item.Source);
        JsonFields.Texts(json, "units", item.Units);
        json.WriteBoolean("needsMark", item.NeedsMark);
        json.WriteString("outcome", RecordWords.Of(item.Outcome));
        JsonFields.Text(json, "because", item.Because);
        JsonFields.Text(json, "value", item.Value);
        JsonFields.Text(json, "mark", item.Mark);
        JsonFields.Text(json, "by", item.By);
        JsonFields.Text(json, "note", item.Note);
    }

    private static void WriteCoverage(Utf8JsonWriter json, CoverageCard row)
    {
        json.WriteString("id", row.Id);
        json.WriteString("title", row.Title);
        json.WriteString("severity", MachineWords.Of(row.Severity));
        json.WriteString("consequence", row.Consequence);
        WriteSource(json, row.Source);
        json.WriteString("outcome", RecordWords.Of(row.Outcome));
        json.WriteNumber("expected", row.Expected);
        JsonFields.Texts(json, "parts", row.Parts);
        JsonFields.Text(json, "reason", row.Reason);
    }

    private static void WriteSource(Utf8JsonWriter json, SourceCard source)
    {
        json.WriteStartObject("source");
        json.WriteString("basis", source.Basis);
        json.WriteString("known", source.Known);
        json.WriteString("text", source.Text);
        json.WriteEndObject();
    }
}
