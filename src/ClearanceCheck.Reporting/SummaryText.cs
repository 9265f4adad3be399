using System.Globalization;
using System.Text;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Reporting;

/// <summary>What the command prints: the decision, what stands against it, what to do, the counts.</summary>
public static class SummaryText
{
    private const string Plain = "\e[0m";

    /// <summary>The summary, each line ended by <c>\n</c>; with colour, severities and the decision stand in terminal colours and the words stay.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The result holds a number that is not finite.</exception>
    public static string Write(InspectionResult result, bool colour)
    {
        StringBuilder text = new();
        text.AppendLine(CultureInfo.InvariantCulture, $"{Coloured(ReportWords.Decision(result.Decision.Kind).ToUpperInvariant(), DecisionColour(result.Decision.Kind), colour)}  {VisibleText.Typed(result.Vehicle.Name)}");
        text.AppendLine(ReportWords.DecisionMeaning(result.Decision.Kind));
        if (result.Library.NotLoaded.Length > 0) text.AppendLine(RuleChangeWords.NotLoaded(result.Library.NotLoaded.Length));
        Section(text, "Why", result.Decision.Reasons.Select(VisibleText.Sentence));
        Section(text, "Do this, in this order", result.Decision.DoThis.Select((line, index) => string.Create(CultureInfo.InvariantCulture, $"{index + 1}. {VisibleText.Sentence(line.Text)}")));
        Section(text, "What stands against it", result.Findings.Where(f => f.Verdict != Verdict.Conforms).Select(f => Line(f, colour)));
        Section(text, "Rules that could not be loaded", result.Library.NotLoaded.Select(VisibleText.Sentence));
        Section(text, "Rules that the shop loosened or switched off", result.Library.Changes.Select(change => VisibleText.Sentence(RuleChangeWords.Of(change))));
        Section(text, "Not inspected", result.NotInspected.Select(n => $"{VisibleText.Typed(n.What)}: {VisibleText.Sentence(n.Why)}"));
        text.AppendLine().AppendLine(Counts(result));
        text.AppendLine(CultureInfo.InvariantCulture, $"Report {VisibleText.Typed(result.Provenance.ReportId)}, rules {VisibleText.Typed(result.Library.Name)} {VisibleText.Typed(result.Library.Version)}");
        return text.ToString().ReplaceLineEndings("\n");
    }

    private static void Section(StringBuilder text, string title, IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        if (all.Length == 0) return;
        text.AppendLine().AppendLine(title + ":");
        foreach (string line in all) text.Append("  ").AppendLine(line);
    }

    private static string Line(Finding finding, bool colour)
    {
        string parts = string.Join(" / ", finding.Parts.Select(p => VisibleText.Typed(p.Name)));
        string figures = finding.Evidence is { } evidence
            ? $"{Figures.Value(evidence.Value, finding.Quantity, finding.Limit)} give or take {Figures.GiveOrTake(evidence.GiveOrTake, finding.Quantity.Unit)}, limit {Figures.Limit(finding.Limit, finding.Quantity, evidence.Value)}"
            : $"limit {Figures.Limit(finding.Limit, finding.Quantity, null)}";
        string severity = Coloured(ReportWords.Severity(finding.Severity).PadRight(7), SeverityColour(finding.Severity), colour);
        return $"{severity}  {VisibleText.Typed(finding.Title)} ({parts}): {figures}; {VisibleText.Sentence(ReportWords.VerdictSentence(finding))}{(finding.Accepted is null ? "" : " " + VisibleText.Sentence(ReportWords.Accepted(finding.Accepted)))}";
    }

    private static string Counts(InspectionResult result)
    {
        int Count(Verdict verdict) => result.Findings.Count(f => f.Verdict == verdict);
        return string.Create(CultureInfo.InvariantCulture,
            $"{result.Findings.Length} findings{(result.Findings.Any(f => f.Accepted is { Holds: true }) ? $" ({result.Findings.Count(f => f.Accepted is { Holds: true })} accepted)" : "")}: {Count(Verdict.Fails)} fail, {Count(Verdict.Undecided)} too close to call, {Count(Verdict.NotEvaluated)} could not be checked, {Count(Verdict.Conforms)} meet the limit; {result.MatchedNothing.Length} {(result.MatchedNothing.Length == 1 ? "rule" : "rules")} found nothing to judge");
    }

    private static string Coloured(string words, string code, bool colour) => colour ? $"\e[{code}m{words}{Plain}" : words;

    private static string DecisionColour(DecisionKind kind) => kind == DecisionKind.Held ? "1;97;41" : "1;7";

    private static string SeverityColour(Severity severity) => severity switch
    {
        Severity.Danger => "1;97;41",
        Severity.Warning => "1;30;48;5;208",
        Severity.Caution => "1;30;103",
        _ => "1;97;44",
    };
}
