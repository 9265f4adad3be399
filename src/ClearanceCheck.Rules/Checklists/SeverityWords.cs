namespace ClearanceCheck.Rules.Checklists;

/// <summary>The words of the severities in files.</summary>
internal static class SeverityWords
{
    public static IReadOnlyDictionary<string, Severity> All { get; } = new Dictionary<string, Severity>(StringComparer.Ordinal)
    {
        ["danger"] = Severity.Danger,
        ["warning"] = Severity.Warning,
        ["caution"] = Severity.Caution,
        ["notice"] = Severity.Notice,
    };

    public static string Lowered(Severity before, Severity after) => $"severity lowered from {Word(before)} to {Word(after)}";

    public static string Word(Severity severity) => All.First(w => w.Value == severity).Key;
}
