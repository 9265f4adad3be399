using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Rules;
using ClearanceCheck.Sweeping;

namespace ClearanceCheck.Reporting.Wording;

/// <summary>The words of <c>findings.json</c> for each outcome, both ways; never changed, since old reports are read back.</summary>
public static class MachineWords
{
    public static string Of(DecisionKind kind) => kind switch
    {
        DecisionKind.Held => "held",
        DecisionKind.Conditions => "conditions",
        DecisionKind.Clear => "clear",
        DecisionKind.None => "none",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    public static string Of(Severity severity) => severity switch
    {
        Severity.Danger => "danger",
        Severity.Warning => "warning",
        Severity.Caution => "caution",
        Severity.Notice => "notice",
        _ => throw new ArgumentOutOfRangeException(nameof(severity)),
    };

    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Conforms => "conforms",
        Verdict.Fails => "fails",
        Verdict.Undecided => "undecided",
        Verdict.NotEvaluated => "not-evaluated",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict)),
    };

    public static string Of(Grade grade) => grade switch
    {
        Grade.Proven => "proven",
        Grade.Checked => "checked",
        Grade.Sampled => "sampled",
        _ => throw new ArgumentOutOfRangeException(nameof(grade)),
    };

    public static string Of(FindingBasis basis) => basis switch
    {
        FindingBasis.Points => "points",
        FindingBasis.Reading => "reading",
        FindingBasis.ReadingAndTravel => "reading-and-travel",
        _ => throw new ArgumentOutOfRangeException(nameof(basis)),
    };

    /// <summary>The value that a word stands for; null for a word that is none of them.</summary>
    public static T? Parse<T>(string word, Func<T, string> of)
        where T : struct, Enum
    {
        foreach (T value in Enum.GetValues<T>())
            if (of(value) == word) return value;
        return null;
    }
}
