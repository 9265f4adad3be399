using System.Collections.Immutable;

namespace ClearanceCheck.Rules;

/// <summary>A limit that a property of the part sets. A closed family.</summary>
/// <param name="Property">A word of <see cref="Vehicles.PartProperties"/>.</param>
public abstract record PartLimit(string Property)
{
    /// <summary>The limit for a value of the property that may lie anywhere within its half-width: the strictest of those that could be right.</summary>
    public abstract LimitForPart For(double value, double halfWidth);

    /// <summary>At least so much from each size on; nothing lies between the steps, and nothing is asked below the first.</summary>
    /// <param name="Table">Ordered by size.</param>
    public sealed record Steps(string Property, ImmutableArray<LimitStep> Table) : PartLimit(Property)
    {
        public override LimitForPart For(double value, double halfWidth)
        {
            double low = value - halfWidth, high = value + halfWidth;
            // A step applies to sizes from its own on up to the next one's.
            ImmutableArray<LimitStep> reached = [.. Table.Where((step, i) => step.From <= high && (i + 1 == Table.Length || Table[i + 1].From > low))];
            return reached.IsEmpty ? new LimitForPart.NotCovered(Property, value, Table[0].From) : new LimitForPart.Known(new RuleLimit(reached.Max(s => s.Limit), null));
        }

        public bool Equals(Steps? other) => other is not null && Property == other.Property && Table.SequenceEqual(other.Table);

        public override int GetHashCode() => HashCode.Combine(Property, Table.Length);
    }

    /// <summary>At most what the part itself can take.</summary>
    public sealed record Own(string Property) : PartLimit(Property)
    {
        public override LimitForPart For(double value, double halfWidth) => new LimitForPart.Known(new RuleLimit(null, value - halfWidth));
    }
}

/// <summary>A step of a table.</summary>
/// <param name="From">The size from which on it applies, in the property's unit.</param>
/// <param name="Limit">In the quantity's unit.</param>
public readonly record struct LimitStep(double From, double Limit);
