using ClearanceCheck.Sweeping;

namespace ClearanceCheck.Quantities.Posed;

/// <summary>A quantity that is a distance, turned about or shifted.</summary>
internal static class Lengths
{
    /// <summary>The extreme with value and bound of every place turned into the quantity's own.</summary>
    public static Extreme From(Extreme chord, Func<double, double> convert) => chord with
    {
        Value = convert(chord.Value),
        Bound = convert(chord.Bound),
        Basins = [.. chord.Basins.Select(b => b with { Value = convert(b.Value) })],
    };
}
