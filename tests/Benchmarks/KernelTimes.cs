using System.Diagnostics;
using System.Globalization;
using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Benchmarks;

/// <summary>Nanoseconds for the gap of one pair of pieces, for every kind of pair, apart and overlapping.</summary>
internal static class KernelTimes
{
    private const ulong Seed = 20_250_312;
    private const int Pairs = 2048;
    private const int Rounds = 5;
    private const double LeastRoundMs = 40;

    // Pairs nearer to touching than this belong to neither set: they take paths of their own.
    private const double TouchingMm = 0.5;

    // Draws until a set is full; a kind of pair that can't fill it is a fault of this program.
    private const int MostDraws = 2_000_000;

    public static int Run()
    {
        List<PairSet> sets = [];
        foreach (string first in PieceSource.Kinds)
            foreach (string second in PieceSource.Kinds.TakeWhile(k => k != first).Append(first))
                foreach (bool apart in new[] { true, false })
                {
                    if (Draw(first, second, apart) is not { } set) return Program.Failed;
                    sets.Add(set);
                }

        List<double>[] times = [.. sets.Select(_ => new List<double>())];
        foreach (PairSet set in sets) Time(set);
        for (int round = 0; round < Rounds; round++)
            for (int i = 0; i < sets.Count; i++) times[i].Add(Time(sets[i]));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Pairs} pairs of each kind, one thread, median of {Rounds} rounds in turn, ns for the gap of a pair"));
        for (int i = 0; i < sets.Count; i++)
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{sets[i].Name,-36}{Figures.Middle(times[i]),12:F0}"));
        return 0;
    }

    private static PairSet? Draw(string first, string second, bool apart)
    {
        var source = new PieceSource(new SplitMix64(Seed));
        var pairs = new List<(Corners First, Corners Second)>(Pairs);
        string name = $"{second} and {first}, {(apart ? "apart" : "overlapping")}";
        for (int draw = 0; draw < MostDraws && pairs.Count < Pairs; draw++)
        {
            Corners a = source.Next(first), b = source.Next(second);
            double gap = SignedGap.Measure(a.Piece, b.Piece).Gap;
            if (apart ? gap > TouchingMm : gap < -TouchingMm - Radii(a.Piece, b.Piece)) pairs.Add((a, b));
        }

        if (pairs.Count == Pairs) return new PairSet(name, pairs);
        Console.Error.WriteLine($"{name}: only {pairs.Count} pairs found.");
        return null;
    }

    // Overlapping means the hulls, not only the radii around them; but two segments never do.
    private static double Radii(Piece first, Piece second) =>
        first.Corners.Length <= 2 && second.Corners.Length <= 2 ? 0 : first.Radius + second.Radius;

    // Nanoseconds for a pair, over as many passes as make a time that can be measured.
    private static double Time(PairSet set)
    {
        var clock = Stopwatch.StartNew();
        double sum = 0;
        int passes = 0;
        do
        {
            foreach ((Corners first, Corners second) in set.Pairs) sum += SignedGap.Measure(first.Piece, second.Piece).Gap;
            passes++;
        }
        while (clock.Elapsed.TotalMilliseconds < LeastRoundMs);
        double nanoseconds = clock.Elapsed.TotalNanoseconds / ((double)passes * set.Pairs.Count);
        // Uses the sum, so that nothing is optimised away.
        return double.IsNaN(sum) ? double.NaN : nanoseconds;
    }
}
