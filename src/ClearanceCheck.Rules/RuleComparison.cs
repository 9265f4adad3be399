using System.Collections.Immutable;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Rules.Checklists;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Rules;

/// <summary>In what one rule asks less than another on the same quantity. What can't be compared counts as less.</summary>
internal static class RuleComparison
{
    private const int MostFacts = 10;

    private const string AnyOther = "";

    /// <summary>A phrase for each way in which the second rule asks less than the first; empty when it asks at least as much in every case.</summary>
    public static IEnumerable<string> Looser(Rule before, Rule after, Quantity quantity)
    {
        if (after.Severity < before.Severity) yield return SeverityWords.Lowered(before.Severity, after.Severity);
        if (SelectsLess(before.Part, after.Part) || (before.To is not null && (after.To is null || SelectsLess(before.To, after.To)))) yield return "fewer parts are looked at";
        if (after.Over != PoseSet.AllPoses && after.Over != before.Over) yield return "fewer poses are looked at";
        foreach (string phrase in LimitsAreLooser(before, after, quantity)) yield return phrase;
        if (after.Floor is { } floor && (before.Floor is not { } own || IsWorse(floor, own, after.Limit))) yield return "the give or take counts for less";
        if (AcceptsMore(before, after)) yield return "more may be accepted";
    }

    private static bool SelectsLess(PartSelector before, PartSelector after)
    {
        string[] ids = [.. before.Ids, .. after.Ids, AnyOther];
        return PartKinds.All.Any(kind => ids.Any(id => Selects(before, kind, id) && !Selects(after, kind, id)));
    }

    private static bool Selects(PartSelector selector, PartKind kind, string id) => selector.CouldSelect(kind) && (selector.Ids.IsEmpty || selector.Ids.Contains(id));

    // Every combination of the facts that either rule names: each may ask for another limit.
    private static IEnumerable<string> LimitsAreLooser(Rule before, Rule after, Quantity quantity)
    {
        ImmutableArray<string> facts = [.. new[] { before, after }.SelectMany(r => r.OnlyWhen.Concat(r.Cases.SelectMany(c => c.When))).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        if (facts.Length > MostFacts) return ["too many facts to compare"];
        var phrases = new List<string>();
        for (int chosen = 0; chosen < 1 << facts.Length; chosen++)
        {
            HashSet<string> hold = [.. facts.Where((_, i) => (chosen & (1 << i)) != 0)];
            if (!before.OnlyWhen.All(hold.Contains)) continue;
            if (!after.OnlyWhen.All(hold.Contains)) phrases.Add("it applies in fewer cases");
            else if (LimitComparison.IsLooser(before.LimitFor(hold).Limit, after.LimitFor(hold).Limit))
                phrases.Add($"{QuantityWords.Limit(after.LimitFor(hold).Limit, quantity)} instead of {QuantityWords.Limit(before.LimitFor(hold).Limit, quantity)}");
        }

        return phrases.Distinct(StringComparer.Ordinal);
    }

    private static bool AcceptsMore(Rule before, Rule after)
    {
        if (after.Accept is not { } accept) return false;
        return before.Accept is not { } own || accept.Days > own.Days || IsWorse(accept.Floor, own.Floor, after.Limit);
    }

    private static bool IsWorse(double value, double than, RuleLimit limit) => limit.AtLeast is null && limit.OfPart is not PartLimit.Steps ? value > than : value < than;
}
