using System.Collections.Immutable;

namespace ClearanceCheck.Rules.Checklists;

/// <summary>In what one item or expectation asks less than another. What can't be compared counts as less.</summary>
internal static class ChecklistComparison
{
    /// <summary>A phrase for each way in which the second item asks less than the first.</summary>
    public static IEnumerable<string> Looser(ChecklistItem before, ChecklistItem after)
    {
        if (after.Severity < before.Severity) yield return SeverityWords.Lowered(before.Severity, after.Severity);
        if (after.Ask != before.Ask) yield return "something else is asked";
        // What is looked at before the drive and what shows after it are two things: neither stands for the other.
        if (after.Gate != before.Gate) yield return $"no longer asked {(before.Gate == ChecklistGate.BeforeFirstDrive ? "before" : "after")} the first drive";
        if (!before.Units.IsEmpty && after.Units.IsEmpty) yield return "no value is asked for";
        if (before.NeedsMark && !after.NeedsMark) yield return "no mark is asked for";
        if (AppliesLess(before.AppliesTo, after.AppliesTo)) yield return "fewer vehicles are asked";
    }

    /// <summary>A phrase for each way in which the second expectation asks less than the first.</summary>
    public static IEnumerable<string> Looser(CoverageRow before, CoverageRow after)
    {
        if (after.Severity < before.Severity) yield return SeverityWords.Lowered(before.Severity, after.Severity);
        if (after.Expectation.For < before.Expectation.For) yield return "fewer places are looked at";
        if (after.Expectation.Count < before.Expectation.Count) yield return FormattableString.Invariant($"{after.Expectation.Count} instead of {before.Expectation.Count} are enough");
        if (after.Expectation.Kinds.Except(before.Expectation.Kinds, StringComparer.Ordinal).Any()) yield return "other kinds of parts count too";
        if (after.Expectation.Where.Except(before.Expectation.Where, StringComparer.Ordinal).Any()) yield return "fewer axles are looked at";
    }

    private static bool AppliesLess(ItemCondition before, ItemCondition after) =>
        IsNarrower(before.Kinds, after.Kinds) || IsNarrower(before.Axles, after.Axles) || IsNarrower(before.Fitted, after.Fitted);

    // A key that is not given lets every vehicle through; of a key that is, any word does.
    private static bool IsNarrower(ImmutableArray<string> before, ImmutableArray<string> after) =>
        !after.IsEmpty && (before.IsEmpty || before.Except(after, StringComparer.Ordinal).Any());
}
