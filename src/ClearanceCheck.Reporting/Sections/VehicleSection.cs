using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>The vehicle as the inspector described it, and the rules that judged it.</summary>
public sealed class VehicleSection : ReportSection
{
    public override string Name => "vehicle";

    public override string Title => "Vehicle and job";

    public override ScriptObject View(ReportContext context)
    {
        VehicleCard vehicle = context.Result.Vehicle;
        LibraryCard library = context.Result.Library;
        return new ScriptObject
        {
            ["rows"] = new ScriptArray(Rows(vehicle, context.Result).Select(row => new ScriptObject
            {
                ["label"] = row.Label,
                ["value"] = string.IsNullOrWhiteSpace(row.Value) ? "" : VisibleText.Typed(row.Value),
            })),
            ["library"] = VisibleText.Typed(library.Name),
            ["library_version"] = VisibleText.Typed(library.Version),
            ["rule_count"] = library.RuleCount,
        };
    }

    private static (string Label, string? Value)[] Rows(VehicleCard vehicle, InspectionResult result) =>
    [
        ("Vehicle", vehicle.Name),
        ("Job", vehicle.Job),
        ("Date", vehicle.Date),
        ("Inspector", vehicle.Inspector),
        ("Odometer", vehicle.Odometer),
        ("Lift", vehicle.Lift),
        ("Drive", vehicle.Drive),
        ("Load", vehicle.Load),
        ("Fuel", vehicle.Fuel),
        ("Zero of the measurements", vehicle.Datum),
        (result.Record.IsWhole ? "Whole vehicle inspected, axles" : "Axles inspected", result.Scope.IsEmpty ? null : string.Join(", ", result.Scope)),
    ];
}
