using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>How far the suspension and the steering go, and what ends them.</summary>
public sealed class ReachSection : ReportSection
{
    public override string Name => "reach";

    public override string Title => "How far it travels";

    public override ScriptObject? View(ReportContext context) => context.Result.Reach.IsEmpty
        ? null
        : new ScriptObject { ["rows"] = new ScriptArray(context.Result.Reach.Select(Row)) };

    private static ScriptObject Row(ReachCard reach) => new()
    {
        ["label"] = VisibleText.Typed(reach.Label),
        ["lowest"] = Figures.Plain(reach.Lowest, reach.Unit),
        ["highest"] = Figures.Plain(reach.Highest, reach.Unit),
        ["ends_lowest"] = VisibleText.Typed(reach.EndsLowest),
        ["ends_highest"] = VisibleText.Typed(reach.EndsHighest),
    };
}
