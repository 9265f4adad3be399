using System.Collections.Immutable;

namespace ClearanceCheck.Rules;

/// <summary>A limit changed a little in every way that an example should notice.</summary>
internal static class LimitMoves
{
    // What no file says of a part.
    private const string NoProperty = "-";

    public static IEnumerable<(string Way, RuleLimit Moved)> Of(RuleLimit limit)
    {
        if (limit.OfPart is PartLimit.Own own) return [("on another property", RuleLimit.By(own with { Property = NoProperty }))];
        if (limit.OfPart is PartLimit.Steps steps) return OfSteps(steps);
        return limit.Sides.Length == 1 ? OfSide("moved", limit, limit) : [.. OfSide("its lower side moved", limit, limit.Sides[0]), .. OfSide("its upper side moved", limit, limit.Sides[1])];
    }

    private static IEnumerable<(string Way, RuleLimit Moved)> OfSide(string what, RuleLimit limit, RuleLimit side)
    {
        foreach ((string way, double by) in Ways)
            yield return ($"{what} {way}", limit with { AtLeast = side.AtLeast is null ? limit.AtLeast : limit.AtLeast + by, AtMost = side.AtMost is null ? limit.AtMost : limit.AtMost + by });
    }

    private static IEnumerable<(string Way, RuleLimit Moved)> OfSteps(PartLimit.Steps steps)
    {
        yield return ("on another property", RuleLimit.By(steps with { Property = NoProperty }));
        for (int i = 0; i < steps.Table.Length; i++)
        {
            LimitStep step = steps.Table[i];
            foreach ((string way, double by) in Ways)
            {
                yield return ($"step {i + 1} moved {way}", RuleLimit.By(steps with { Table = steps.Table.SetItem(i, step with { Limit = step.Limit + by }) }));
                // No part is smaller than nothing: a first step from zero on can't be told from one below it.
                if (step.From > 0) yield return ($"the size of step {i + 1} moved {way}", RuleLimit.By(steps with { Table = steps.Table.SetItem(i, step with { From = step.From + by }) }));
            }
        }
    }

    private static ImmutableArray<(string Way, double By)> Ways => [("up", RuleExamples.LimitStep), ("down", -RuleExamples.LimitStep)];
}
