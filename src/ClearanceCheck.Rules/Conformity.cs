namespace ClearanceCheck.Rules;

/// <summary>Whether a limit is met, missed or straddled by a value with its bound and its give or take.</summary>
/// <remarks>
/// The rule of ISO 14253-1 and JCGM 106 (known second-hand: abstracts were read): met only when the whole interval clears the limit,
/// missed only when the whole interval misses it. The bound's distance and the give or take are added, never combined in quadrature.
/// At the limit counts as met.
/// </remarks>
public static class Conformity
{
    /// <summary>Judges one place.</summary>
    /// <param name="limit">The limit. Of one with two sides both are judged with the same value and bound: for a value that is known in one pose.</param>
    /// <param name="value">The worst value found.</param>
    /// <param name="bound">What no pose passes, on the worse side of the value.</param>
    /// <param name="giveOrTake">k times the standard uncertainty, zero or more.</param>
    /// <exception cref="ArgumentException">A number that is not finite: NaN compares false with everything and would pass.</exception>
    public static ConformityOutcome Judge(RuleLimit limit, double value, double bound, double giveOrTake)
    {
        if (!double.IsFinite(value) || !double.IsFinite(bound) || !(giveOrTake >= 0) || !double.IsFinite(giveOrTake))
            throw new ArgumentException("A verdict needs finite numbers.", nameof(value));
        if (limit.Sides is not [var side]) return Gravest(Judge(limit.Sides[0], value, bound, giveOrTake), Judge(limit.Sides[1], value, bound, giveOrTake));
        return JudgeSide(side, value, bound, giveOrTake);
    }

    /// <summary>Judges one place against a limit that holds a margin already: the value and its bound alone decide on the limit, the give or take only on the floor below it.</summary>
    /// <remarks>The simple acceptance of JCGM 106 with a guard against what the margin can't hold. A value that misses the limit fails; one that meets it conforms only when the whole interval meets the floor.</remarks>
    /// <param name="limit">A limit with one side.</param>
    /// <param name="floor">On the looser side of the limit.</param>
    /// <inheritdoc cref="Judge"/>
    public static ConformityOutcome JudgeSimply(RuleLimit limit, double floor, double value, double bound, double giveOrTake)
    {
        RuleLimit lower = limit.AtLeast is null ? new RuleLimit(null, floor) : new RuleLimit(floor, null);
        ConformityOutcome plain = Judge(limit, value, bound, 0), guarded = Judge(lower, value, bound, giveOrTake);
        if (plain != ConformityOutcome.Conforms) return plain;
        return guarded == ConformityOutcome.Conforms ? plain : ConformityOutcome.Undecided;
    }

    private static ConformityOutcome JudgeSide(RuleLimit limit, double value, double bound, double giveOrTake)
    {
        double sign = limit.AtLeast is null ? -1 : 1;
        double margin = sign * (value - limit.Number), worst = Math.Min(margin, sign * (bound - limit.Number));
        if (worst - giveOrTake >= 0) return ConformityOutcome.Conforms;
        return margin + giveOrTake < 0 ? ConformityOutcome.Fails : ConformityOutcome.Undecided;
    }

    /// <summary>The gravest of several places' outcomes: a miss, then a straddle.</summary>
    public static ConformityOutcome Gravest(ConformityOutcome a, ConformityOutcome b) => a > b ? a : b;
}
