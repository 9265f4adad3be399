using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Units;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>Every reading as it was typed, beside what was made of it.</summary>
public sealed class MeasurementsSection : ReportSection
{
    public override string Name => "measurements";

    public override string Title => "Measurements as typed";

    public override ScriptObject? View(ReportContext context) => context.Result.Measurements.IsEmpty
        ? null
        : new ScriptObject { ["rows"] = new ScriptArray(context.Result.Measurements.Select(Row)) };

    private static ScriptObject Row(MeasurementRow row) => new()
    {
        ["path"] = VisibleText.Typed(row.Path),
        ["typed"] = VisibleText.Typed(row.Typed),
        ["mm"] = row.PointMm is { } point ? Point(point) : row.ValueMm is { } value ? Figures.Plain(value, "mm") : "",
        ["within"] = Figures.GiveOrTake(row.WithinMm, "mm"),
        ["is_assumed"] = row.WithinAssumed,
    };

    private static string Point(Vector3d at) =>
        $"{NumberFormat.UpTo(at.X, 1)}, {NumberFormat.UpTo(at.Y, 1)}, {NumberFormat.UpTo(at.Z, 1)} mm";
}
