using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Drawings;
using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>May it drive, why, and what to do in which order.</summary>
public sealed class DecisionSection : ReportSection
{
    private const int MostLines = 7;

    public override string Name => "decision";

    public override string Title => "The decision";

    public override ScriptObject View(ReportContext context)
    {
        InspectionResult result = context.Result;
        DecisionCard decision = result.Decision;
        return new ScriptObject
        {
            ["kind"] = MachineWords.Of(decision.Kind),
            ["words"] = ReportWords.Decision(decision.Kind),
            ["sign"] = DecisionSign.Of(decision.Kind),
            ["meaning"] = ReportWords.DecisionMeaning(decision.Kind),
            ["vehicle"] = VisibleText.Typed(result.Vehicle.Name),
            ["not_loaded"] = RuleChangeWords.NotLoaded(result.Library.NotLoaded.Length),
            ["counts"] = Counts(result),
            ["reasons"] = new ScriptArray(decision.Reasons),
            ["actions"] = new ScriptArray(decision.DoThis.Take(MostLines).Select(line => Action(line, context))),
            ["more"] = Math.Max(0, decision.DoThis.Length - MostLines),
        };
    }

    private static ScriptObject Action(ActionLine line, ReportContext context) => new()
    {
        ["text"] = line.Text,
        ["anchor"] = context.Anchors.Of(line.FindingId),
    };

    private static string Counts(InspectionResult result)
    {
        int Count(Verdict verdict) => result.Findings.Count(f => f.Verdict == verdict);
        string[] parts =
        [
            $"{Count(Verdict.Fails)} {(Count(Verdict.Fails) == 1 ? "fails" : "fail")}",
            $"{Count(Verdict.Undecided)} too close to call",
            $"{Count(Verdict.NotEvaluated)} could not be checked",
            $"{Count(Verdict.Conforms)} {(Count(Verdict.Conforms) == 1 ? "meets its limit" : "meet their limits")}",
            $"{result.NotInspected.Length} not inspected",
        ];
        return string.Join(", ", parts);
    }
}
