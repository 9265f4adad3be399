using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>Rules that found nothing to judge, each with the reason.</summary>
public sealed class UnmatchedSection : ReportSection
{
    public override string Name => "unmatched";

    public override string Title => "Rules that found nothing to judge";

    public override ScriptObject? View(ReportContext context) => context.Result.MatchedNothing.IsEmpty
        ? null
        : new ScriptObject
        {
            ["rules"] = new ScriptArray(context.Result.MatchedNothing.Select(rule => new ScriptObject
            {
                ["title"] = VisibleText.Typed(rule.Title),
                ["rule"] = VisibleText.Typed(rule.Rule),
                ["reason"] = rule.Reason,
            })),
        };
}
