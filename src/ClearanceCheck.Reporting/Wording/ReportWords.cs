using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Rules;
using ClearanceCheck.Sweeping;

namespace ClearanceCheck.Reporting.Wording;

/// <summary>The words of the report for each outcome; the machine words beside them stand in <see cref="MachineWords"/>.</summary>
public static class ReportWords
{
    public static string Decision(DecisionKind kind) => kind switch
    {
        DecisionKind.Held => "Held",
        DecisionKind.Conditions => "First drive with conditions",
        DecisionKind.Clear => "Nothing stands against a first slow drive",
        DecisionKind.None => "No decision: nothing found against it in the part inspected",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>What the decision means for the one who holds the key.</summary>
    public static string DecisionMeaning(DecisionKind kind) => kind switch
    {
        DecisionKind.Held => "Do not drive this vehicle. Do the lines below, measure again, inspect again.",
        DecisionKind.Conditions => "Not yet a drive. The lines below come first; then one slow drive on closed ground, and only with the first gate signed.",
        DecisionKind.Clear => "Holds for these tires, these springs and this load. Void after any change. The first gate must still be signed.",
        DecisionKind.None => "Part of the vehicle was not inspected, so this report cannot say that it may drive.",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    public static string Severity(Severity severity) => severity switch
    {
        Rules.Severity.Danger => "DANGER",
        Rules.Severity.Warning => "WARNING",
        Rules.Severity.Caution => "CAUTION",
        Rules.Severity.Notice => "NOTICE",
        _ => throw new ArgumentOutOfRangeException(nameof(severity)),
    };

    /// <summary>What the word of a severity stands for here.</summary>
    public static string SeverityMeaning(Severity severity) => severity switch
    {
        Rules.Severity.Danger => "loss of brakes, steering or a wheel, or fire",
        Rules.Severity.Warning => "damage that leads to loss of brakes, steering or a wheel, or to fire",
        Rules.Severity.Caution => "a breakdown or minor harm",
        Rules.Severity.Notice => "wear, noise, cost, or something to know",
        _ => throw new ArgumentOutOfRangeException(nameof(severity)),
    };

    public static string Verdict(Verdict verdict) => verdict switch
    {
        Inspecting.Results.Verdict.Conforms => "meets the limit",
        Inspecting.Results.Verdict.Fails => "fails",
        Inspecting.Results.Verdict.Undecided => "too close to call",
        Inspecting.Results.Verdict.NotEvaluated => "could not be checked",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict)),
    };

    /// <summary>The verdict of a finding; one that somebody took the word for has words of its own.</summary>
    public static string Verdict(Finding finding) => finding.Accepted is { Holds: true } ? $"{Verdict(finding.Verdict)}, accepted" : Verdict(finding.Verdict);

    /// <summary>Who took the word for a finding, until when and why, or why that does not count; empty where nobody did.</summary>
    public static string Accepted(AcceptedCard? accepted) => accepted switch
    {
        null => "",
        { Holds: true } => $"Accepted down to {accepted.Floor} by {accepted.By} until {accepted.Until}: {accepted.Reason}",
        _ => $"Accepted by {accepted.By}, which does not count: {accepted.Void}.",
    };

    /// <summary>The verdict with what would decide it: "too close to call: measure the rear hose again".</summary>
    public static string VerdictSentence(Finding finding) =>
        string.IsNullOrWhiteSpace(finding.Missing) ? Verdict(finding) : Verdict(finding) + ": " + finding.Missing;

    public static string Grade(Grade grade) => grade switch
    {
        Sweeping.Grade.Proven => "proven: no pose of this model goes past it",
        Sweeping.Grade.Checked => "checked: the solver was asked everywhere and its answer doubled for safety, but it is not a proof",
        Sweeping.Grade.Sampled => "sampled: only single poses were looked at, with an allowance for what lies between",
        _ => throw new ArgumentOutOfRangeException(nameof(grade)),
    };

    /// <summary>What a value rests on where that is more than the measured points; empty where it is not.</summary>
    public static string Basis(FindingBasis basis) => basis switch
    {
        FindingBasis.Points => "",
        FindingBasis.Reading => "From the gap as it was read, and how the points say it changes from there.",
        FindingBasis.ReadingAndTravel => "From the reading and the travel alone.",
        _ => throw new ArgumentOutOfRangeException(nameof(basis)),
    };

    /// <summary>Where the limit comes from; a limit without a source says so.</summary>
    public static string Source(SourceCard source)
    {
        string lead = source.Basis switch
        {
            "common-practice" when source.Known == "none" => "Common practice, no source",
            "common-practice" => "Common practice",
            "plain-fact" => "Plain fact, needs no source",
            "published" => "Published",
            "shop" => "The shop's own rule",
            _ => source.Basis,
        };
        string known = source.Known switch
        {
            "read" => ", read in the source",
            "second-hand" => ", known at second hand",
            "from-memory" => ", from memory, not looked up",
            _ => "",
        };
        if (string.IsNullOrWhiteSpace(source.Text)) return lead + known + ".";
        // Many an author says the same words once more.
        return source.Text.StartsWith(lead + known, StringComparison.Ordinal) ? source.Text : $"{lead}{known}: {source.Text}";
    }

    /// <summary>An id of the files as plain words: <c>brake-line</c> reads "brake line".</summary>
    public static string Plain(string id) => id.Replace('-', ' ');
}
