using System.Collections.Immutable;
using ClearanceCheck.Documents.Csv;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Files.States;
using ClearanceCheck.Geometry;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Reads the points along a line or pipe, typed in the file or in a table beside it.</summary>
internal static class ChainPathReader
{
    private static readonly CsvColumns Columns = new(["part", "x", "y", "z"], ["in", "within"]);

    public static ImmutableArray<MeasuredPoint>? Read(PartSource part)
    {
        if (!part.Reader.RequireOneOf("path", "path-from", "the points along its middle line")) return null;
        Within surface = part.Surface("a surface of a pipe or hose");
        return part.Reader.Has("path")
            ? Typed(part.Reader.Optional("path"), surface, part)
            : FromTable(part.Reader.Optional("path-from"), surface, part);
    }

    private static ImmutableArray<MeasuredPoint>? Typed(Field field, Within within, PartSource part)
    {
        if (field.Triples()?.Value is not { } points) return null;
        if (points.Count < 2)
        {
            FileMessages.OnePointPath(field);
            return null;
        }

        var read = ImmutableArray.CreateBuilder<MeasuredPoint>();
        for (int i = 0; i < points.Count; i++)
        {
            if (i > 0 && points[i].Value.Millimetres() == points[i - 1].Value.Millimetres()) FileMessages.RepeatedPoint(part.Draft.Diagnostics, points[i].Span, i + 1);
            read.Add(part.Point($"path/{i + 1}", points[i], within, part.Body, null));
        }

        return read.ToImmutable();
    }

    private static ImmutableArray<MeasuredPoint>? FromTable(Field field, Within within, PartSource part)
    {
        VehicleDraft draft = part.Draft;
        if (field.RelativePath() is not { } path) return null;
        if (draft.File.Beside(path.Value) is not { } content)
        {
            FileMessages.NoSuchFile(field, path.Value, "table");
            return null;
        }

        bool first = !draft.FilesBeside.Contains(path.Value);
        if (first) draft.FilesBeside.Add(path.Value);

        // A table that several parts share is reported once.
        var diagnostics = first ? draft.Diagnostics : new Documents.DiagnosticBag();
        CsvTable? table = CsvText.Read(path.Value, content.Span, Columns, diagnostics, LengthUnit.Millimetre);
        if (table is null) return null;
        var read = ImmutableArray.CreateBuilder<MeasuredPoint>();
        Vector3d? last = null;
        bool whole = true;
        foreach (CsvRow row in table.Rows)
        {
            if (row.Required("part", "the part's id").Id() is not { } id || id.Value != part.Id) continue;
            whole &= ReadRow(row, read, ref last, within, part);
        }

        if (!whole) return null;
        if (read.Count >= 2) return read.ToImmutable();
        FileMessages.TooFewRows(field, path.Value, part.Id, read.Count);
        return null;
    }

    private static bool ReadRow(CsvRow row, ImmutableArray<MeasuredPoint>.Builder read, ref Vector3d? last, Within within, PartSource part)
    {
        Placed<LengthReading>? x = row.Required("x", "forward").Length(LengthRange.PlaceOnVehicle);
        Placed<LengthReading>? y = row.Required("y", "left").Length(LengthRange.PlaceOnVehicle);
        Placed<LengthReading>? z = row.Required("z", "up").Length(LengthRange.PlaceOnVehicle);
        Placed<LengthReading>? own = row.Optional("within").Length(LengthRange.Allowance);
        Field stateField = row.Optional("in");
        Placed<string>? state = StateWord.Read(stateField, part.Draft);
        if ((stateField.IsPresent && state is null) || x is null || y is null || z is null) return false;
        Vector3d at = new(x.Value.Length.Millimetres, y.Value.Length.Millimetres, z.Value.Length.Millimetres);
        double step = Math.Max(x.Value.HalfStepMm, Math.Max(y.Value.HalfStepMm, z.Value.HalfStepMm));
        if (at == last) FileMessages.RepeatedPoint(part.Draft.Diagnostics, row.Span, read.Count + 1);
        last = at;
        Within half = own is null ? within : new Within(own.Value.Length.Millimetres, false, "");
        MeasuredPoint point = part.Draft.Point(part.Path($"path/{read.Count + 1}"), at, step, row.Span, row.Span.Text, half);
        part.Stand(point, part.Body, state, row.Span);
        read.Add(point);
        return true;
    }
}
