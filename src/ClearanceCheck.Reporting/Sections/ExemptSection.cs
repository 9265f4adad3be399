using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>Places where two parts are meant to touch and were not judged.</summary>
public sealed class ExemptSection : ReportSection
{
    public override string Name => "exempt";

    public override string Title => "Meant to touch, not judged";

    public override ScriptObject? View(ReportContext context) => context.Result.Exempt.IsEmpty
        ? null
        : new ScriptObject { ["zones"] = new ScriptArray(context.Result.Exempt.Select(Zone)) };

    private static ScriptObject Zone(ExemptZone zone) => new()
    {
        ["parts"] = string.Join(" and ", zone.Parts.Select(VisibleText.Typed)),
        ["around"] = VisibleText.Typed(zone.Around),
        ["radius"] = zone.RadiusMm is { } radius ? "within " + Figures.Plain(radius, "mm") : "anywhere",
        ["why"] = zone.Why,
    };
}
