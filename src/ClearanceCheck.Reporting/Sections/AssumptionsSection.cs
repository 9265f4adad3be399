using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>Values that nobody typed.</summary>
public sealed class AssumptionsSection : ReportSection
{
    public override string Name => "assumptions";

    public override string Title => "Assumed, not measured";

    public override ScriptObject View(ReportContext context) => new()
    {
        ["rows"] = new ScriptArray(context.Result.Assumptions.Select(assumption => new ScriptObject
        {
            ["path"] = VisibleText.Typed(assumption.Path),
            ["text"] = assumption.Text,
        })),
    };
}
