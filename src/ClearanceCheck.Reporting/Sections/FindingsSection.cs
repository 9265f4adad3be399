using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Pages;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>Everything that fails, is too close to call or could not be checked, worst first.</summary>
public sealed class FindingsSection : ReportSection
{
    public override string Name => "findings";

    public override string Title => "What stands against it";

    public override ScriptObject View(ReportContext context) => new()
    {
        ["findings"] = new ScriptArray(context.Open.Select(FindingView.Of)),
        ["conforming"] = context.Conforming.Length,
        ["is_none"] = context.Result.Decision.Kind == DecisionKind.None,
    };
}
