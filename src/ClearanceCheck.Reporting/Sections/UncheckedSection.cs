using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>What nobody looked at and what could not be checked: as loud as what fails.</summary>
public sealed class UncheckedSection : ReportSection
{
    public override string Name => "unchecked";

    public override string Title => "Not inspected, could not be checked";

    public override ScriptObject View(ReportContext context)
    {
        InspectionResult result = context.Result;
        return new ScriptObject
        {
            ["not_loaded"] = new ScriptArray(result.Library.NotLoaded),
            ["not_inspected"] = new ScriptArray(result.NotInspected.Select(item => new ScriptObject
            {
                ["what"] = VisibleText.Typed(item.What),
                ["why"] = item.Why,
            })),
            ["could_not"] = new ScriptArray(context.Open.Where(f => f.Finding.Verdict == Verdict.NotEvaluated).Select(f => new ScriptObject
            {
                ["severity"] = ReportWords.Severity(f.Finding.Severity),
                ["title"] = FindingView.TitleWithParts(f.Finding),
                ["missing"] = f.Finding.Missing ?? "",
                ["anchor"] = f.Anchor,
            })),
        };
    }
}
