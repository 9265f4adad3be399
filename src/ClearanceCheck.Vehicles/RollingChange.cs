namespace ClearanceCheck.Vehicles;

/// <summary>How far an axle's tires roll in a turn, and how far those rolled that were on it before the lift.</summary>
/// <param name="Now">Around the tread, mm.</param>
/// <param name="Before">Around the tread of the tire before, mm.</param>
public sealed record RollingChange(MeasuredLength Now, MeasuredLength Before)
{
    /// <summary>The places of its numbers.</summary>
    public IEnumerable<int> Indices => Now.Indices.Concat(Before.Indices);

    /// <summary>How much farther the tire rolls in a turn than the one before, percent.</summary>
    public double Percent(ReadOnlySpan<double> parameters) => 100 * ((Now.At(parameters) / Before.At(parameters)) - 1);
}
