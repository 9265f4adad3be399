using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>The two gates with their blank lines; the only place where the word of release stands.</summary>
public sealed class GatesSection : ReportSection
{
    public override string Name => "gates";

    public override string Title => "Two gates and signature";

    public override ScriptObject View(ReportContext context) => new()
    {
        ["is_held"] = context.Result.Decision.Kind == DecisionKind.Held,
        ["report_id"] = VisibleText.Typed(context.Result.Provenance.ReportId),
        ["to_do"] = new ScriptArray(context.Open.Select(f => $"{ReportWords.Severity(f.Finding.Severity)}: {FindingView.TitleWithParts(f.Finding)}")),
    };
}
