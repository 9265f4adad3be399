using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Rules.Checklists;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>What only a person can see: items with their boxes, the tightening audit, what a whole vehicle has, temporary states.</summary>
public sealed class ChecklistSection : ReportSection
{
    public override string Name => "checklist";

    public override string Title => "Checklist";

    public override ScriptObject? View(ReportContext context)
    {
        RecordCard record = context.Result.Record;
        if (record.Items.IsEmpty && record.Coverage.IsEmpty && record.Pivots.IsEmpty && record.Temporary.IsEmpty) return null;
        return new ScriptObject
        {
            ["meaning"] = record.IsWhole
                ? "The whole vehicle is in scope: a danger that nobody looked at holds it."
                : "Part of the vehicle is in scope: what is not inspected is listed and counts neither for nor against it.",
            ["families"] = new ScriptArray(ChecklistWords.Families.Where(f => record.Items.Any(i => i.Family == f)).Select(f => new ScriptObject
            {
                ["name"] = char.ToUpperInvariant(f[0]) + ReportWords.Plain(f)[1..],
                ["items"] = new ScriptArray(record.Items.Where(i => i.Family == f).Select(Item)),
            })),
            ["pivots"] = new ScriptArray(record.Pivots.Select(Pivot)),
            ["coverage"] = new ScriptArray(record.Coverage.Select(Row)),
            ["temporary"] = new ScriptArray(record.Temporary.Select(t => new ScriptObject
            {
                ["what"] = VisibleText.Typed(t.What),
                ["must_not"] = VisibleText.Typed(t.MustNot),
                ["until"] = VisibleText.Typed(t.Until),
                ["by"] = VisibleText.Typed(t.By),
            })),
        };
    }

    private static ScriptObject Item(ItemCard item)
    {
        string[] answer = [.. new[] { item.Value, item.Mark, item.By, item.Note }.OfType<string>().Select(VisibleText.Typed)];
        ScriptObject view = Box(item.Outcome is ItemOutcome.Ok or ItemOutcome.NotApplicable, item.Outcome == ItemOutcome.Fails);
        view["id"] = VisibleText.Typed(item.Id);
        view["title"] = VisibleText.Typed(item.Title);
        view["ask"] = VisibleText.Typed(item.Ask);
        view["severity"] = ReportWords.Severity(item.Severity);
        view["outcome"] = RecordWords.Of(item.Outcome);
        view["state"] = RecordWords.Say(item.Outcome) + (item.Gate == ChecklistGate.AfterFirstDrive && item.Outcome == ItemOutcome.NotInspected ? ", asked after the first drive" : "");
        view["answer"] = answer.Length == 0 ? null : string.Join(", ", answer);
        view["because"] = item.Because is { } because ? VisibleText.Typed(because) : null;
        view["wants"] = Wants(item);
        view["consequence"] = VisibleText.Typed(item.Consequence);
        view["source"] = VisibleText.Typed(ReportWords.Source(item.Source));
        return view;
    }

    private static string? Wants(ItemCard item) => (item.Units.IsEmpty, item.NeedsMark) switch
    {
        (false, true) => $"Write the value ({string.Join(" or ", item.Units)}), the mark and initials.",
        (false, false) => $"Write the value ({string.Join(" or ", item.Units)}) and initials.",
        (true, true) => "Write the mark and initials.",
        _ => null,
    };

    private static ScriptObject Pivot(PivotCard pivot)
    {
        ScriptObject view = Box(pivot.Outcome == PivotOutcome.AtRideHeight, pivot.Outcome == PivotOutcome.Hanging);
        view["words"] = VisibleText.Typed(pivot.Words);
        view["state"] = RecordWords.Say(pivot.Outcome);
        view["by"] = pivot.By is null ? null : string.Join(", ", new[] { pivot.By, pivot.Mark }.OfType<string>().Select(VisibleText.Typed));
        return view;
    }

    private static ScriptObject Row(CoverageCard row)
    {
        ScriptObject view = Box(row.Outcome != CoverageOutcome.NotInspected, false);
        view["id"] = VisibleText.Typed(row.Id);
        view["title"] = VisibleText.Typed(row.Title);
        view["severity"] = ReportWords.Severity(row.Severity);
        view["state"] = RecordWords.Say(row.Outcome);
        view["said"] = row.Outcome switch
        {
            CoverageOutcome.Absent when row.Reason is { } reason => VisibleText.Typed(reason),
            _ when row.Parts.IsEmpty => null,
            _ => VisibleText.Typed(string.Join(", ", row.Parts)),
        };
        view["consequence"] = VisibleText.Typed(row.Consequence);
        return view;
    }

    // A box carries a letter, not a colour: it has to be read on a grey print.
    private static ScriptObject Box(bool isDone, bool isWrong) => new()
    {
        ["is_open"] = !isDone,
        ["box"] = isDone ? "x" : isWrong ? "!" : "",
        ["box_label"] = isDone ? "ticked box" : isWrong ? "box marked as not right" : "empty tick box",
    };
}
