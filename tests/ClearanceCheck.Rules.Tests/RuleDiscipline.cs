namespace ClearanceCheck.Rules.Tests;

/// <summary>What a rule of the base library owes its users, as a list of what is missing.</summary>
internal static class RuleDiscipline
{
    /// <summary>Outcomes that every rule shows by an example.</summary>
    private static readonly ExampleOutcome[] Shown = [ExampleOutcome.Conforms, ExampleOutcome.Fails, ExampleOutcome.Undecided, ExampleOutcome.NotCovered];

    public static IEnumerable<string> Faults(Rule rule) => [.. Unfilled(rule), .. SourceFaults(rule), .. OutcomesWithoutExample(rule)];

    private static IEnumerable<string> Unfilled(Rule rule)
    {
        if (string.IsNullOrWhiteSpace(rule.Title) || string.Equals(rule.Title, rule.Id.Replace('-', ' '), StringComparison.OrdinalIgnoreCase)) yield return "a title of its own";
        if (string.IsNullOrWhiteSpace(rule.Consequence)) yield return "consequence";
        if (string.IsNullOrWhiteSpace(rule.Advice)) yield return "advice";
        if (string.IsNullOrWhiteSpace(rule.HandCheck)) yield return "hand-check";
        if (!rule.Recheck.Contains(rule.Quantity)) yield return "recheck names its quantity";
        if (rule.Examples.Length < 5) yield return "five examples";
        if (rule.Origins.All(o => o.Field != "over")) yield return "over";
    }

    private static IEnumerable<string> SourceFaults(Rule rule)
    {
        (string basis, string known, string text) = (rule.Source.Basis, rule.Source.Known, rule.Source.Text);
        if (string.IsNullOrWhiteSpace(text)) yield return "source text";
        if (basis is not ("published" or "common-practice" or "plain-fact")) yield return "a basis that base rules rest on";
        if (basis == "published" && known is not ("read" or "second-hand")) yield return "a published source was read, by us or by another";
        if (basis == "published" && !text.Contains(known, StringComparison.Ordinal)) yield return "the text says how the source is known";
        if (basis == "plain-fact" && known != "none") yield return "a plain fact has no source";
        if (basis == "common-practice" && known is not ("none" or "from-memory")) yield return "what was read is published";
        if (known == "from-memory" && !text.Contains("from memory", StringComparison.Ordinal)) yield return "the text says that it is from memory";
        if (basis == "common-practice" && rule.Severity == Severity.Danger) yield return "danger on a guess";
    }

    private static IEnumerable<string> OutcomesWithoutExample(Rule rule) =>
        Shown.Where(o => rule.Examples.All(e => e.Expect != o)).Select(o => $"an example that is {o}");
}
