using System.Text.Json;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Wording;

namespace ClearanceCheck.Reporting.Json;

/// <summary>Writes the whole result in the fixed order of its fields.</summary>
internal static class ResultWriter
{
    public static void Write(Utf8JsonWriter json, InspectionResult result)
    {
        json.WriteStartObject();
        json.WriteNumber("format", FindingsJson.Format);
        json.WriteString("decision", MachineWords.Of(result.Decision.Kind));
        JsonFields.Texts(json, "reasons", result.Decision.Reasons);
        JsonFields.Each(json, "doThis", result.Decision.DoThis, (j, line) =>
        {
            j.WriteString("text", line.Text);
            JsonFields.Text(j, "finding", line.FindingId);
        });
        WriteVehicle(json, result.Vehicle);
        JsonFields.Texts(json, "scope", result.Scope);
        LibraryJson.Write(json, result.Library);
        JsonFields.Each(json, "findings", result.Findings, FindingWriter.Write);
        WriteRest(json, result);
        WriteProvenance(json, result.Provenance);
        json.WriteEndObject();
    }

    private static void WriteVehicle(Utf8JsonWriter json, VehicleCard vehicle)
    {
        json.WriteStartObject("vehicle");
        JsonFields.Text(json, "name", vehicle.Name);
        JsonFields.Text(json, "job", vehicle.Job);
        JsonFields.Text(json, "lift", vehicle.Lift);
        JsonFields.Text(json, "date", vehicle.Date);
        JsonFields.Text(json, "inspector", vehicle.Inspector);
        JsonFields.Text(json, "odometer", vehicle.Odometer);
        JsonFields.Text(json, "drive", vehicle.Drive);
        JsonFields.Text(json, "load", vehicle.Load);
        JsonFields.Text(json, "fuel", vehicle.Fuel);
        JsonFields.Text(json, "datum", vehicle.Datum);
        json.WriteEndObject();
    }

    private static void WriteRest(Utf8JsonWriter json, InspectionResult result)
    {
        RecordWriter.Write(json, result.Record);
        JsonFields.Each(json, "notInspected", result.NotInspected, (j, item) =>
        {
            j.WriteString("what", item.What);
            j.WriteString("why", item.Why);
        });
        JsonFields.Texts(json, "notEvaluated", [.. result.Findings.Where(f => f.Verdict == Verdict.NotEvaluated).Select(f => f.Id)]);
        JsonFields.Each(json, "matchedNothing", result.MatchedNothing, (j, rule) =>
        {
            j.WriteString("rule", rule.Rule);
            j.WriteString("title", rule.Title);
            j.WriteString("reason", rule.Reason);
        });
        JsonFields.Each(json, "exempt", result.Exempt, (j, zone) =>
        {
            JsonFields.Texts(j, "parts", zone.Parts);
            j.WriteString("around", zone.Around);
            JsonFields.Number(j, "radius", zone.RadiusMm);
            j.WriteString("why", zone.Why);
        });
        JsonFields.Each(json, "assumptions", result.Assumptions, (j, assumption) =>
        {
            j.WriteString("path", assumption.Path);
            j.WriteString("text", assumption.Text);
        });
        JsonFields.Each(json, "reach", result.Reach, WriteReach);
        JsonFields.Each(json, "travel", result.Travel, TravelWriter.Write);
        JsonFields.Each(json, "measurements", result.Measurements, WriteMeasurement);
    }

    private static void WriteReach(Utf8JsonWriter json, ReachCard reach)
    {
        json.WriteString("coordinate", reach.Coordinate);
        json.WriteString("label", reach.Label);
        json.WriteString("unit", reach.Unit);
        JsonFields.Number(json, "lowest", reach.Lowest);
        JsonFields.Number(json, "highest", reach.Highest);
        json.WriteString("endsLowest", reach.EndsLowest);
        json.WriteString("endsHighest", reach.EndsHighest);
    }

    private static void WriteMeasurement(Utf8JsonWriter json, MeasurementRow row)
    {
        json.WriteString("path", row.Path);
        json.WriteString("typed", row.Typed);
        json.WritePropertyName("point");
        if (row.PointMm is { } point) JsonFields.Point(json, point, "point");
        else json.WriteNullValue();
        JsonFields.Number(json, "value", row.ValueMm);
        JsonFields.Number(json, "within", row.WithinMm);
        json.WriteBoolean("withinAssumed", row.WithinAssumed);
    }

    private static void WriteProvenance(Utf8JsonWriter json, Provenance provenance)
    {
        json.WriteStartObject("provenance");
        json.WriteString("reportId", provenance.ReportId);
        json.WriteString("programVersion", provenance.ProgramVersion);
        JsonFields.Each(json, "inputs", provenance.Inputs, (j, input) =>
        {
            j.WriteString("name", input.Name);
            j.WriteNumber("bytes", input.Bytes);
            j.WriteString("sha256", input.Sha256);
        });
        JsonFields.Each(json, "settings", provenance.Settings, (j, setting) =>
        {
            j.WriteString("name", setting.Name);
            j.WriteString("value", setting.Value);
        });
        json.WriteNumber("cells", provenance.Cells);
        json.WriteNumber("solves", provenance.Solves);
        json.WriteNumber("pairsAsked", provenance.PairsAsked);
        json.WriteNumber("pairsRefusedAtRoot", provenance.PairsRefusedAtRoot);
        json.WriteEndObject();
    }
}
