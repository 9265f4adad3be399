using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Rules.Checklists;

namespace ClearanceCheck.Reporting.Wording;

/// <summary>The words of the record: for machines, never changed since old reports are read back, and for people.</summary>
public static class RecordWords
{
    public static string Of(ItemOutcome outcome) => outcome switch
    {
        ItemOutcome.Ok => "ok",
        ItemOutcome.Fails => "fails",
        ItemOutcome.NotInspected => "not-inspected",
        ItemOutcome.NotApplicable => "not-applicable",
        _ => throw new ArgumentOutOfRangeException(nameof(outcome)),
    };

    public static string Of(CoverageOutcome outcome) => outcome switch
    {
        CoverageOutcome.Present => "present",
        CoverageOutcome.Absent => "absent",
        CoverageOutcome.NotInspected => "not-inspected",
        _ => throw new ArgumentOutOfRangeException(nameof(outcome)),
    };

    public static string Of(PivotOutcome outcome) => outcome switch
    {
        PivotOutcome.AtRideHeight => "at-ride-height",
        PivotOutcome.Hanging => "hanging",
        PivotOutcome.Open => "open",
        _ => throw new ArgumentOutOfRangeException(nameof(outcome)),
    };

    public static string Of(ChecklistGate gate) => gate switch
    {
        ChecklistGate.BeforeFirstDrive => ChecklistWords.BeforeFirstDrive,
        ChecklistGate.AfterFirstDrive => ChecklistWords.AfterFirstDrive,
        _ => throw new ArgumentOutOfRangeException(nameof(gate)),
    };

    public static string Say(ItemOutcome outcome) => outcome switch
    {
        ItemOutcome.Ok => "in order",
        ItemOutcome.Fails => "not right",
        ItemOutcome.NotInspected => "not inspected",
        ItemOutcome.NotApplicable => "does not apply",
        _ => throw new ArgumentOutOfRangeException(nameof(outcome)),
    };

    public static string Say(CoverageOutcome outcome) => outcome switch
    {
        CoverageOutcome.Present => "in the file",
        CoverageOutcome.Absent => "declared absent",
        CoverageOutcome.NotInspected => "not inspected",
        _ => throw new ArgumentOutOfRangeException(nameof(outcome)),
    };

    public static string Say(PivotOutcome outcome) => outcome switch
    {
        PivotOutcome.AtRideHeight => "tightened at ride height",
        PivotOutcome.Hanging => "tightened while hanging: loosen it and tighten it at ride height",
        PivotOutcome.Open => "open",
        _ => throw new ArgumentOutOfRangeException(nameof(outcome)),
    };
}
