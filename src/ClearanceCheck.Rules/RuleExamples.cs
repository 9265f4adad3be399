using System.Collections.Immutable;
using ClearanceCheck.Quantities;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Rules;

/// <summary>Runs the examples of a rule, and finds what of the rule they leave open.</summary>
public static class RuleExamples
{
    /// <summary>Give or take of an example is this many of its standard uncertainties.</summary>
    public const double CoverageFactor = MeasureRequest.UsualCoverageFactor;

    /// <summary>A limit is pinned when moving it by this much shows, mm or percent. A hair over the tenth that people write, for the rounding of 6.4 - 0.1.</summary>
    public const double LimitStep = 0.1 * (1 + 1e-9);

    private const string NoWord = "-";

    /// <summary>What a rule makes of an example; the value is taken as its own bound.</summary>
    public static ExampleOutcome Outcome(Rule rule, RuleExample example)
    {
        bool isCovered = (example.Part is null || rule.Part.Covers(example.Part)) && (example.To is null || rule.To?.Covers(example.To) != false);
        HashSet<string> facts = [.. example.Facts];
        if (!isCovered || !rule.OnlyWhen.All(facts.Contains)) return ExampleOutcome.NotCovered;
        return LimitOf(rule.LimitFor(facts).Limit, example) switch
        {
            LimitForPart.NotCovered => ExampleOutcome.NotCovered,
            LimitForPart.Known known => Outcome(rule.Judge(known.Limit, example.Value, example.Value, CoverageFactor * example.Uncertainty)),
            _ => ExampleOutcome.NotEvaluated,
        };
    }

    /// <summary>What a limit comes to for the part of an example, whose properties are exact.</summary>
    public static LimitForPart LimitOf(RuleLimit limit, RuleExample example) =>
        limit.For(word => example.Part is { } part && part.Properties.TryGetValue(word, out double value) ? (value, 0) : null);

    private static ExampleOutcome Outcome(ConformityOutcome outcome) => outcome switch
    {
        ConformityOutcome.Conforms => ExampleOutcome.Conforms,
        ConformityOutcome.Fails => ExampleOutcome.Fails,
        _ => ExampleOutcome.Undecided,
    };

    /// <summary>True when every example comes out as it says.</summary>
    public static bool AllHold(Rule rule) => rule.Examples.All(e => Outcome(rule, e) == e.Expect);

    /// <summary>What could be changed in a rule without any example noticing, a phrase each; empty when everything is pinned.</summary>
    public static ImmutableArray<string> Unpinned(Rule rule) => [.. Changes(rule).Where(c => AllHold(c.Changed)).Select(c => c.What)];

    private static IEnumerable<(string What, Rule Changed)> Changes(Rule rule)
    {
        foreach ((string way, RuleLimit moved) in LimitMoves.Of(rule.Limit)) yield return ($"the limit, {way}", rule with { Limit = moved });
        if (rule.Floor is { } floor)
        {
            yield return ("the floor, moved up", rule with { Floor = floor + LimitStep });
            yield return ("the floor, moved down", rule with { Floor = floor - LimitStep });
        }

        for (int i = 0; i < rule.OnlyWhen.Length; i++)
            yield return ($"the fact {rule.OnlyWhen[i]} of only-when, dropped", rule with { OnlyWhen = rule.OnlyWhen.RemoveAt(i) });
        foreach ((string What, Rule Changed) change in CaseChanges(rule)) yield return change;
        foreach ((string what, PartSelector changed) in SelectorChanges(rule.Part)) yield return ($"{what} of part", rule with { Part = changed });
        if (rule.To is null) yield break;
        foreach ((string what, PartSelector changed) in SelectorChanges(rule.To)) yield return ($"{what} of to", rule with { To = changed });
    }

    private static IEnumerable<(string What, Rule Changed)> CaseChanges(Rule rule)
    {
        for (int i = 0; i < rule.Cases.Length; i++)
        {
            RuleCase special = rule.Cases[i];
            yield return ($"case {i + 1}, dropped", rule with { Cases = rule.Cases.RemoveAt(i) });
            foreach ((string way, RuleLimit moved) in LimitMoves.Of(special.Limit))
                yield return ($"the limit of case {i + 1}, {way}", rule with { Cases = rule.Cases.SetItem(i, special with { Limit = moved }) });
            for (int f = 0; f < special.When.Length; f++)
            {
                RuleCase wider = special with { When = special.When.RemoveAt(f) };
                yield return ($"the fact {special.When[f]} of case {i + 1}, dropped", rule with { Cases = rule.Cases.SetItem(i, wider) });
            }
        }
    }

    private static IEnumerable<(string What, PartSelector Changed)> SelectorChanges(PartSelector selector)
    {
        foreach ((string what, ImmutableArray<string> words) in ListChanges("kind", selector.Kinds)) yield return (what, selector with { Kinds = words });
        foreach ((string what, ImmutableArray<string> words) in ListChanges("group", selector.Groups)) yield return (what, selector with { Groups = words });
        foreach ((string what, ImmutableArray<string> words) in ListChanges("id", selector.Ids)) yield return (what, selector with { Ids = words });
    }

    private static IEnumerable<(string What, ImmutableArray<string> Words)> ListChanges(string key, ImmutableArray<string> words)
    {
        // "Any part" is what a selector without the key says too: there is nothing to pin.
        if (words.IsEmpty || words is [PartKinds.AnyGroup]) yield break;
        yield return ($"the key {key}, dropped", []);
        // Taking the last word away would drop the key, so a word gives way to one that nothing has.
        foreach (string word in words) yield return ($"the word {word}, dropped from {key}", words.Replace(word, NoWord));
    }
}
