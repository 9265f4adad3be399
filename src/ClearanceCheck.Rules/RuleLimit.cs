using System.Collections.Immutable;

namespace ClearanceCheck.Rules;

/// <summary>A limit in the quantity's unit: one side, two sides, or one that hangs on a property of the part.</summary>
/// <param name="AtLeast">The smallest value that is right; null where there is none, or the part sets it.</param>
/// <param name="AtMost">The largest value that is right; null where there is none, or the part sets it.</param>
public sealed record RuleLimit(double? AtLeast, double? AtMost)
{
    /// <summary>What of the part sets the limit; null for a limit that is the same for all. Then neither side is set.</summary>
    public PartLimit? OfPart { get; init; }

    /// <summary>The number of a limit with one side; of one with two sides the lower one.</summary>
    /// <exception cref="InvalidOperationException">The part sets the limit: see <see cref="For"/>.</exception>
    public double Number => AtLeast ?? AtMost ?? throw new InvalidOperationException("The part sets this limit.");

    // A record would tell every property, and one of them may not be asked for.
    public override string ToString() => $"at least {AtLeast}, at most {AtMost}, of the part {OfPart}";

    /// <summary>Its sides, each a limit of its own; empty where the part sets it.</summary>
    public ImmutableArray<RuleLimit> Sides => (AtLeast, AtMost) switch
    {
        (null, null) => [],
        (_, null) or (null, _) => [this],
        _ => [new RuleLimit(AtLeast, null), new RuleLimit(null, AtMost)],
    };

    /// <summary>A limit with two sides.</summary>
    public static RuleLimit Between(double least, double most) => new(least, most);

    /// <summary>A limit that hangs on a property of the part.</summary>
    public static RuleLimit By(PartLimit part) => new(null, null) { OfPart = part };

    /// <summary>The limit for one part.</summary>
    /// <param name="property">Gives a property of the part with its half-width, or null where the file does not say it.</param>
    public LimitForPart For(Func<string, (double Value, double HalfWidth)?> property)
    {
        if (OfPart is null) return new LimitForPart.Known(this);
        return property(OfPart.Property) is { } read ? OfPart.For(read.Value, read.HalfWidth) : new LimitForPart.Missing(OfPart.Property);
    }
}
