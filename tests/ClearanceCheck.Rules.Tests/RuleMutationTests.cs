using System.Collections.Immutable;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Rules.Tests;

/// <summary>Breaks every limit, case, fact and selector of the base library in every way that a slip of the pen could, and wants an example to say so.</summary>
public sealed class RuleMutationTests
{
    private static readonly ImmutableArray<string> AllKinds = [.. PartKinds.All.Select(k => k.Id)];

    public static TheoryData<string> Ids => [.. Libraries.Base.Rules.Select(r => r.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_slip_in_a_base_rule_makes_an_example_fail(string id)
    {
        Rule rule = Libraries.Base.Rules.Single(r => r.Id == id);
        RuleExamples.AllHold(rule).ShouldBeTrue();

        List<(string Slip, Rule Broken)> slips = [.. Slips(rule)];

        slips.Count.ShouldBeGreaterThan(7);
        slips.Where(s => RuleExamples.AllHold(s.Broken)).Select(s => s.Slip).ShouldBeEmpty();
    }

    private static IEnumerable<(string Slip, Rule Broken)> Slips(Rule rule)
    {
        foreach ((string slip, RuleLimit limit) in Limits(rule.Limit)) yield return ($"limit {slip}", rule with { Limit = limit });
        foreach ((string slip, ImmutableArray<string> facts) in Facts(rule.OnlyWhen)) yield return ($"only-when {slip}", rule with { OnlyWhen = facts });
        for (int i = 0; i < rule.Cases.Length; i++)
        {
            RuleCase special = rule.Cases[i];
            yield return ($"case {i} away", rule with { Cases = rule.Cases.RemoveAt(i) });
            foreach ((string slip, RuleLimit limit) in Limits(special.Limit))
                yield return ($"case {i} limit {slip}", rule with { Cases = rule.Cases.SetItem(i, special with { Limit = limit }) });
            foreach ((string slip, ImmutableArray<string> when) in Facts(special.When))
                yield return ($"case {i} when {slip}", rule with { Cases = rule.Cases.SetItem(i, special with { When = when }) });
        }

        foreach ((string slip, PartSelector part) in Selectors(rule.Part)) yield return ($"part {slip}", rule with { Part = part });
        if (rule.To is null) yield break;
        foreach ((string slip, PartSelector to) in Selectors(rule.To)) yield return ($"to {slip}", rule with { To = to });
    }

    private static IEnumerable<(string Slip, RuleLimit Broken)> Limits(RuleLimit limit)
    {
        if (limit.OfPart is PartLimit.Own)
        {
            foreach (string property in PartProperties.All.Select(p => p.Id).Where(p => p != limit.OfPart.Property)) yield return ($"own {property}", RuleLimit.By(new PartLimit.Own(property)));
            foreach (double fixedAngle in new[] { 0.0, 25, 180 }) yield return ($"{fixedAngle} for all", new RuleLimit(null, fixedAngle));
            yield break;
        }

        double number = limit.Number;
        foreach (double other in new[] { number * 10, number / 10, -number, 0, number * 25.4, number / 25.4, number + 0.11, number - 0.11 }.Where(n => n != number))
            yield return ($"{other}", limit.AtLeast is null ? new RuleLimit(null, other) : new RuleLimit(other, null));
        yield return ("other side", new RuleLimit(limit.AtMost, limit.AtLeast));
    }

    private static IEnumerable<(string Slip, ImmutableArray<string> Broken)> Facts(ImmutableArray<string> facts)
    {
        foreach (string fact in facts)
        {
            yield return ($"{fact} away", facts.Remove(fact));
            foreach (string other in RuleFacts.All.Except(facts)) yield return ($"{fact} for {other}", facts.Replace(fact, other));
        }
    }

    private static IEnumerable<(string Slip, PartSelector Broken)> Selectors(PartSelector selector)
    {
        foreach ((string slip, ImmutableArray<string> words) in Words(selector.Kinds, AllKinds)) yield return ($"kind {slip}", selector with { Kinds = words });
        foreach ((string slip, ImmutableArray<string> words) in Words(selector.Groups, PartKinds.Groups)) yield return ($"group {slip}", selector with { Groups = words });
    }

    private static IEnumerable<(string Slip, ImmutableArray<string> Broken)> Words(ImmutableArray<string> words, ImmutableArray<string> all)
    {
        // "Any part" is what no key at all says too.
        if (words.IsEmpty || words is [PartKinds.AnyGroup]) yield break;
        yield return ("key away", []);
        foreach (string word in words)
        {
            if (words.Length > 1) yield return ($"{word} away", words.Remove(word));
            foreach (string other in all.Except(words)) yield return ($"{other} for {word}", words.Replace(word, other));
        }
    }
}
