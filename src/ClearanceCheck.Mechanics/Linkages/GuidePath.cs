using System.Collections.Immutable;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Where a body was measured to go as two travels change: a polynomial of their mean and one of their difference, for each of four figures.</summary>
/// <remarks>
/// Figures: the way along x and along y, mm, and the y and z parts of the Cayley vector of its turn. Each polynomial goes through all measured
/// positions (Newton's interpolation; textbook, from memory), so it is smooth, and between them it is a guess.
/// </remarks>
public sealed class GuidePath
{
    private const double UnitMm = 100;
    private readonly int first;
    private readonly int second;
    private readonly ImmutableArray<ImmutableArray<double>> byMean;
    private readonly ImmutableArray<ImmutableArray<double>> byDifference;

    private GuidePath(int first, int second, ImmutableArray<ImmutableArray<double>> byMean, ImmutableArray<ImmutableArray<double>> byDifference) =>
        (this.first, this.second, this.byMean, this.byDifference) = (first, second, byMean, byDifference);

    /// <summary>The path through measured positions.</summary>
    /// <param name="first">The coordinate of the first travel.</param>
    /// <param name="second">The coordinate of the second travel.</param>
    /// <param name="positions">Both travels, mm, and the four figures there. Those with both travels alike tell of the mean; the others, less that, of the difference.</param>
    /// <param name="alikeMm">Travels that differ by no more than this are alike.</param>
    public static GuidePath Through(int first, int second, IReadOnlyList<(double First, double Second, ImmutableArray<double> Figures)> positions, double alikeMm)
    {
        (double First, double Second, ImmutableArray<double> Figures)[] level = [.. positions.Where(p => Math.Abs(p.First - p.Second) <= alikeMm)];
        (double First, double Second, ImmutableArray<double> Figures)[] tilted = [.. positions.Where(p => Math.Abs(p.First - p.Second) > alikeMm)];
        ImmutableArray<ImmutableArray<double>> mean =
            [.. Enumerable.Range(0, 4).Select(f => Interpolate([.. level.Select(p => ((p.First + p.Second) / 2 / UnitMm, p.Figures[f]))]))];
        ImmutableArray<ImmutableArray<double>> difference =
        [
            .. Enumerable.Range(0, 4).Select(f => Interpolate(
                [(0, 0), .. tilted.Select(p => ((p.First - p.Second) / UnitMm, p.Figures[f] - Value(mean[f], (p.First + p.Second) / 2 / UnitMm)))])),
        ];
        return new GuidePath(first, second, mean, difference);
    }

    /// <summary>The same path in a pose that numbers its coordinates otherwise; null where one of the two travels is not in it.</summary>
    internal GuidePath? Renumbered(Func<int, int> coordinate) =>
        coordinate(first) is >= 0 and var one && coordinate(second) is >= 0 and var other ? new GuidePath(one, other, byMean, byDifference) : null;

    /// <summary>One of the four figures in a pose.</summary>
    internal T Evaluate<T>(int figure, ReadOnlySpan<T> settings)
        where T : unmanaged, IReal<T>
    {
        T mean = (settings[first] + settings[second]) * T.From(0.5 / UnitMm), difference = (settings[first] - settings[second]) * T.From(1 / UnitMm);
        return Horner(byMean[figure], mean) + Horner(byDifference[figure], difference);
    }

    private static T Horner<T>(ImmutableArray<double> terms, T at)
        where T : unmanaged, IReal<T>
    {
        T sum = default;
        for (int i = terms.Length - 1; i >= 0; i--) sum = T.From(terms[i]) + (at * sum);
        return sum;
    }

    private static double Value(ImmutableArray<double> terms, double at) => Horner(terms, new Real(at)).Value;

    // Newton's divided differences, multiplied out; of two positions at one place the first counts.
    private static ImmutableArray<double> Interpolate(IReadOnlyList<(double At, double Value)> given)
    {
        (double At, double Value)[] nodes = [.. given.DistinctBy(n => n.At)];
        int n = nodes.Length;
        double[] divided = [.. nodes.Select(p => p.Value)];
        for (int order = 1; order < n; order++)
            for (int i = n - 1; i >= order; i--) divided[i] = (divided[i] - divided[i - 1]) / (nodes[i].At - nodes[i - order].At);
        var terms = new double[n];
        for (int i = n - 1; i >= 0; i--)
        {
            for (int k = n - 1; k > 0; k--) terms[k] = terms[k - 1] - (terms[k] * nodes[i].At);
            terms[0] = divided[i] - (terms[0] * nodes[i].At);
        }

        return [.. terms];
    }
}
