using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Rules;
using ClearanceCheck.Rules.Checklists;

namespace ClearanceCheck.Reporting.Json;

/// <summary>Reads checklist, coverage, tightening audit and temporary states back.</summary>
internal static class RecordReader
{
    public static RecordCard Read(JsonNodeReader record) => new()
    {
        IsWhole = record["wholeVehicle"].YesNo,
        Items = [.. record["items"].Items.Select(ReadItem)],
        Coverage = [.. record["coverage"].Items.Select(ReadCoverage)],
        Pivots =
        [
            .. record["pivots"].Items.Select(p => new PivotCard(
                p["id"].Text, p["axle"].Text, p["words"].Text, p["outcome"].Word<PivotOutcome>(RecordWords.Of), p["by"].TextOrNull, p["mark"].TextOrNull)),
        ],
        Temporary = [.. record["temporary"].Items.Select(t => new TemporaryCard(t["id"].Text, t["what"].Text, t["mustNot"].Text, t["until"].Text, t["by"].Text))],
    };

    private static ItemCard ReadItem(JsonNodeReader item) => new()
    {
        Id = item["id"].Text,
        Title = item["title"].Text,
        Ask = item["ask"].Text,
        Family = item["family"].Text,
        Gate = item["gate"].Word<ChecklistGate>(RecordWords.Of),
        Severity = item["severity"].Word<Severity>(MachineWords.Of),
        Consequence = item["consequence"].Text,
        Source = ReadSource(item["source"]),
        Units = item["units"].Texts,
        NeedsMark = item["needsMark"].YesNo,
        Outcome = item["outcome"].Word<ItemOutcome>(RecordWords.Of),
        Because = item["because"].TextOrNull,
        Value = item["value"].TextOrNull,
        Mark = item["mark"].TextOrNull,
        By = item["by"].TextOrNull,
        Note = item["note"].TextOrNull,
    };

    private static CoverageCard ReadCoverage(JsonNodeReader row) => new(
        row["id"].Text,
        row["title"].Text,
        row["severity"].Word<Severity>(MachineWords.Of),
        row["consequence"].Text,
        ReadSource(row["source"]),
        row["outcome"].Word<CoverageOutcome>(RecordWords.Of),
        (int)row["expected"].Whole,
        row["parts"].Texts,
        row["reason"].TextOrNull);

    private static SourceCard ReadSource(JsonNodeReader source) => new(source["basis"].Text, source["known"].Text, source["text"].Text);
}
