using System.Text.Json;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Wording;

namespace ClearanceCheck.Reporting.Json;

/// <summary>Writes one finding; without evidence its numbers are <c>null</c> and its lists empty.</summary>
internal static class FindingWriter
{
    public static void Write(Utf8JsonWriter json, Finding finding)
    {
        json.WriteString("id", finding.Id);
        json.WriteString("rule", finding.Rule);
        json.WriteString("title", finding.Title);
        json.WriteString("severity", MachineWords.Of(finding.Severity));
        json.WriteString("verdict", MachineWords.Of(finding.Verdict));
        JsonFields.Text(json, "missing", finding.Missing);
        JsonFields.Each(json, "parts", finding.Parts, WritePart);
        json.WriteString("quantity", finding.Quantity.Id);
        json.WriteString("quantityName", finding.Quantity.Name);
        json.WriteString("quantityMeaning", finding.Quantity.Meaning);
        json.WriteString("unit", finding.Quantity.Unit);
        EvidenceWriter.Write(json, finding.Evidence);
        WriteLimit(json, finding.Limit);
        JsonFields.Text(json, "consequence", finding.Consequence);
        JsonFields.Text(json, "advice", finding.Advice);
        JsonFields.Text(json, "handCheck", finding.HandCheck);
        JsonFields.Text(json, "checked", finding.Checked);
        AcceptedJson.Write(json, finding.Accepted);
        JsonFields.Texts(json, "recheck", finding.Recheck);
        JsonFields.Texts(json, "assumes", finding.Assumes);
        JsonFields.Texts(json, "shields", finding.Shields);
        json.WriteString("basis", MachineWords.Of(finding.Basis));
        JsonFields.Each(json, "direct", finding.Direct, WriteDirect);
        json.WriteStartObject("source");
        json.WriteString("basis", finding.Source.Basis);
        json.WriteString("known", finding.Source.Known);
        json.WriteString("text", finding.Source.Text);
        json.WriteEndObject();
    }

    private static void WritePart(Utf8JsonWriter json, PartCard part)
    {
        json.WriteString("id", part.Id);
        json.WriteString("name", part.Name);
        json.WriteString("kind", part.Kind);
        json.WriteString("body", part.Body);
    }

    private static void WriteDirect(Utf8JsonWriter json, DirectCard direct)
    {
        json.WriteString("reading", direct.Id);
        json.WriteString("state", direct.State);
        JsonFields.Number(json, "measured", direct.MeasuredMm);
        JsonFields.Number(json, "giveOrTake", direct.GiveOrTakeMm);
        JsonFields.Number(json, "computed", direct.ComputedMm);
        // From the two numbers as written, so that reading and writing again gives the same text.
        JsonFields.Number(json, "delta", direct.ComputedMm is { } computed ? JsonFields.Rounded(direct.MeasuredMm, "measured") - JsonFields.Rounded(computed, "computed") : null);
        JsonFields.Number(json, "travel", direct.TravelMm);
        json.WriteBoolean("counts", direct.Counts);
        json.WriteBoolean("disagrees", direct.Disagrees);
        json.WriteString("words", direct.Words);
    }

    private static void WriteLimit(Utf8JsonWriter json, LimitCard limit)
    {
        json.WriteStartObject("limit");
        if (limit.Least is not null) JsonFields.Number(json, "atLeast", limit.Least);
        if (limit.Most is not null) JsonFields.Number(json, "atMost", limit.Most);
        if (limit.Other is not null) json.WriteString("judged", limit.AtLeast is null ? "atMost" : "atLeast");
        if (limit.Floor is not null) JsonFields.Number(json, "floor", limit.Floor);
        if (limit.By is not null) json.WriteString("by", limit.By);
        JsonFields.Texts(json, "because", limit.Because);
        json.WriteEndObject();
    }
}
