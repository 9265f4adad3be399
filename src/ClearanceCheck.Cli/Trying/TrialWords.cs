using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Inspecting.Trying;
using ClearanceCheck.Reporting.Wording;

namespace ClearanceCheck.Cli.Trying;

/// <summary>How something is judged, in words for people and for machines.</summary>
internal static class TrialWords
{
    public static string Of(JudgedAs? judged) => judged is null ? "not asked" : $"{MachineWords.Of(judged.Severity)}, {People(judged)}{(judged.IsAccepted ? ", accepted" : "")}";

    /// <summary>The word of the outcome in findings.json.</summary>
    public static string Outcome(JudgedAs judged) => judged switch
    {
        { Verdict: { } verdict } => MachineWords.Of(verdict),
        { Item: { } item } => RecordWords.Of(item),
        _ => RecordWords.Of(judged.Expected!.Value),
    };

    public static string Of(FlipKind kind) => kind switch
    {
        FlipKind.Finding => "finding",
        FlipKind.Item => "item",
        FlipKind.Expected => "expected",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    private static string People(JudgedAs judged) => judged switch
    {
        { Verdict: { } verdict } => ReportWords.Verdict(verdict),
        { Item: ItemOutcome.NotInspected } or { Expected: CoverageOutcome.NotInspected } => "not inspected",
        { Item: ItemOutcome.NotApplicable } => "does not apply",
        _ => Outcome(judged),
    };
}
