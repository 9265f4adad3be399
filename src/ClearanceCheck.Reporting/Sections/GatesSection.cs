using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Rules.Checklists;
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
        ["temporary"] = new ScriptArray(context.Result.Record.Temporary.Select(t => $"{VisibleText.Typed(t.What)} (until {VisibleText.Typed(t.Until)}: {VisibleText.Typed(t.MustNot)})")),
        ["audit_open"] = context.Result.Record.Pivots.Any(p => p.Outcome != PivotOutcome.AtRideHeight),
        ["before"] = Lines(context.Result.Record, ChecklistGate.BeforeFirstDrive),
        ["after"] = Lines(context.Result.Record, ChecklistGate.AfterFirstDrive),
        ["pivots"] = new ScriptArray(context.Result.Record.Pivots.Select(p => VisibleText.Typed(p.Words))),
    };

    // What has its answer stands in the checklist; a gate asks for the rest, and once more for what was found wrong.
    private static ScriptArray Lines(RecordCard record, ChecklistGate gate) => new(record.Items
        .Where(i => i.Gate == gate && (i.Outcome is ItemOutcome.Fails or ItemOutcome.NotInspected))
        .Select(i => $"{VisibleText.Typed(i.Title)}{(i.Units.IsEmpty ? "" : $" ({string.Join(" or ", i.Units)})")}"));
}
