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
}
