
namespace ClearanceCheck.Sweeping.Tests.Cases;

/// <summary>Many random cases, swept once and sampled once, for all tests that look at them.</summary>
public sealed class RandomSweeps
{
    internal const double ToleranceMm = 0.5;
    internal static readonly SweepSettings Settings = new() { ToleranceMm = ToleranceMm, MaximumCells = 1500 };

    public RandomSweeps()
    {
        for (ulong i = 0; i < (ulong)Long.Times(110); i++) All.Add(Run(RandomCases.Draw(i + 1000, linkages: false), i, 250));
        for (ulong i = 0; i < (ulong)Long.Times(14); i++) All.Add(Run(RandomCases.Draw((8 * i) + 7), i, 40));
    }

    internal List<(SweepCase Case, Extreme Extreme, double Proved, double Sampled)> All { get; } = [];

    private static (SweepCase Case, Extreme Extreme, double Proved, double Sampled) Run(SweepCase pair, ulong seed, int samples)
    {
        var search = new SweepSearch(pair.System, pair.Objective(), Settings);
        Extreme extreme = search.Run();
        return (pair, extreme, search.ProvedBound, new PoseOracle(pair).Least(new SplitMix64(seed), samples).Gap);
    }
}
