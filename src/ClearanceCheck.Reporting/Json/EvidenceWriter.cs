using System.Collections.Immutable;
using System.Text.Json;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Wording;

namespace ClearanceCheck.Reporting.Json;

/// <summary>Writes what was found, flat among the finding's fields.</summary>
internal static class EvidenceWriter
{
    public static void Write(Utf8JsonWriter json, Evidence? evidence)
    {
        WriteNumbers(json, evidence);
        WritePose(json, evidence?.Pose);
        WriteWitness(json, evidence);
        JsonFields.Each(json, "basins", evidence?.Basins ?? [], (j, basin) =>
        {
            JsonFields.Number(j, "value", basin.Value);
            JsonFields.Number(j, "standardUncertainty", basin.StandardUncertainty);
            WritePose(j, basin.Pose);
        });
        JsonFields.Each(json, "readings", evidence?.Readings ?? [], (j, reading) =>
        {
            j.WriteString("path", reading.Path);
            j.WriteString("words", reading.Words);
            JsonFields.Number(j, "share", reading.Share);
            JsonFields.Number(j, "within", reading.WithinMm);
        });
        JsonFields.Each(json, "drawing", evidence?.Drawing.Parts ?? [], WriteDrawn);
        JsonFields.Each(json, "plots", evidence?.Plots ?? [], WritePlot);
        if (evidence is null) json.WriteNull("cells");
        else json.WriteNumber("cells", evidence.Cells);
    }

    private static void WriteNumbers(Utf8JsonWriter json, Evidence? evidence)
    {
        JsonFields.Number(json, "value", evidence?.Value);
        JsonFields.Number(json, "bound", evidence?.Bound);
        JsonFields.Text(json, "boundKind", evidence is null ? null : MachineWords.Of(evidence.BoundKind));
        JsonFields.Number(json, "standardUncertainty", evidence?.StandardUncertainty);
        JsonFields.Number(json, "coverageFactor", evidence?.CoverageFactor);
        // From the two numbers as written, so that reading and writing again gives the same text.
        JsonFields.Number(json, "giveOrTake", evidence is null ? null
            : JsonFields.Rounded(evidence.CoverageFactor, "coverageFactor") * JsonFields.Rounded(evidence.StandardUncertainty, "standardUncertainty"));
    }

    private static void WritePose(Utf8JsonWriter json, PoseCard? pose)
    {
        if (pose is null)
        {
            json.WriteNull("pose");
        }
        else
        {
            RefuseDoubles(pose);
            json.WriteStartObject("pose");
            foreach (PoseCoordinate coordinate in pose.Coordinates) JsonFields.Number(json, coordinate.Name, coordinate.Value);
            json.WriteEndObject();
        }

        JsonFields.Each(json, "poseInWords", pose?.Coordinates ?? [], (j, coordinate) =>
        {
            j.WriteString("coordinate", coordinate.Name);
            j.WriteString("unit", coordinate.Unit);
            j.WriteString("words", coordinate.Words);
        });
        JsonFields.Texts(json, "activeStops", pose?.ActiveStops ?? []);
    }

    private static void RefuseDoubles(PoseCard pose)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (PoseCoordinate coordinate in pose.Coordinates)
            if (!seen.Add(coordinate.Name)) throw new ArgumentException($"A pose names the coordinate '{coordinate.Name}' twice.", nameof(pose));
    }

    private static void WriteWitness(Utf8JsonWriter json, Evidence? evidence)
    {
        json.WritePropertyName("witness");
        if (evidence is null)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartArray();
        JsonFields.Point(json, evidence.WitnessFirst, "witness");
        JsonFields.Point(json, evidence.WitnessSecond, "witness");
        json.WriteEndArray();
    }

    private static void WriteDrawn(Utf8JsonWriter json, DrawnPart part)
    {
        json.WriteString("part", part.PartId);
        JsonFields.Number(json, "radius", part.RadiusMm);
        json.WriteBoolean("dashed", part.Dashed);
        WritePoints(json, "points", part.Points);
        JsonFields.Each(json, "pieces", part.Pieces, (j, piece) =>
        {
            JsonFields.Number(j, "radius", piece.RadiusMm);
            WritePoints(j, "corners", piece.Corners);
        });
    }

    private static void WritePoints(Utf8JsonWriter json, string name, ImmutableArray<Vector3d> points)
    {
        json.WriteStartArray(name);
        foreach (Vector3d point in points) JsonFields.Point(json, point, "drawing");
        json.WriteEndArray();
    }

    private static void WritePlot(Utf8JsonWriter json, PlotCard plot)
    {
        json.WriteString("coordinate", plot.Coordinate);
        json.WriteString("label", plot.Label);
        json.WriteString("unit", plot.Unit);
        JsonFields.Number(json, "at", plot.At);
        JsonFields.Each(json, "points", plot.Points, (j, point) =>
        {
            JsonFields.Number(j, "at", point.At);
            JsonFields.Number(j, "value", point.Value);
            j.WriteBoolean("reachable", point.Reachable);
        });
    }
}
