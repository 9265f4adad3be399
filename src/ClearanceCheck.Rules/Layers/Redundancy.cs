using ClearanceCheck.Rules.Loading;

namespace ClearanceCheck.Rules.Layers;

/// <summary>Rules that can never say more than another rule does.</summary>
internal static class Redundancy
{
    /// <summary>A note for each rule that another covers entirely; of two that are alike the later is named.</summary>
    public static IEnumerable<Documents.Diagnostic> Notes(LayeredRules counting, RuleReader reader)
    {
        List<CountingRule> rules = [.. counting.Rules];
        for (int i = 0; i < rules.Count; i++)
        {
            CountingRule rule = rules[i];
            int by = rules.FindIndex(other => other != rule && Covers(other.Rule, rule.Rule, reader));
            if (by < 0 || (by > i && Covers(rule.Rule, rules[by].Rule, reader))) continue;
            yield return OverlayMessages.CoveredBy(rule.Key, rules[by].Key);
        }
    }

    private static bool Covers(Rule other, Rule rule, RuleReader reader) =>
        other.Quantity == rule.Quantity && !RuleComparison.Looser(rule, other, reader.Quantity(rule)).Any();
}
