namespace ClearanceCheck.Rules;

/// <summary>Whether one limit lets more pass than another. What can't be compared counts as letting more pass.</summary>
internal static class LimitComparison
{
    public static bool IsLooser(RuleLimit before, RuleLimit after) => (before.OfPart, after.OfPart) switch
    {
        (null, null) => SidesAreLooser(before, after),
        (PartLimit.Steps a, PartLimit.Steps b) when a.Property == b.Property => a.Table.Concat(b.Table).Any(step => AtSize(a, b, step.From)),
        (PartLimit.Steps a, null) => after.AtLeast is not { } least || least < a.Table.Max(s => s.Limit),
        (null, PartLimit.Steps b) => before.AtMost is not null || b.Table[0].From > 0 || b.Table.Min(s => s.Limit) < before.AtLeast,
        (PartLimit.Own a, PartLimit.Own b) => a.Property != b.Property,
        _ => true,
    };

    private static bool SidesAreLooser(RuleLimit before, RuleLimit after) =>
        (before.AtLeast is { } least && !(after.AtLeast >= least)) || (before.AtMost is { } most && !(after.AtMost <= most));

    // Between two steps nothing changes, so that the sizes at which either table steps are enough.
    private static bool AtSize(PartLimit.Steps before, PartLimit.Steps after, double size) =>
        before.For(size, 0) is LimitForPart.Known own && (after.For(size, 0) is not LimitForPart.Known other || SidesAreLooser(own.Limit, other.Limit));
}
