using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Views;

namespace ClearanceCheck.Sweeping.Tests.Cases;

/// <summary>Looks for poses of random cells, large and small, that lie below the cell's bound, or that can be reached in a dropped cell.</summary>
internal sealed class CellProbe
{
    private const double RoundingMm = 1e-7;

    /// <summary>Cells in which a pose contradicts what was proved.</summary>
    public int Broken { get; private set; }

    /// <summary>Cells that were looked at.</summary>
    public int Cells { get; private set; }

    /// <summary>Cells that were dropped as out of reach.</summary>
    public int Dropped { get; private set; }

    /// <summary>Takes one corner of each cell for its neighbour, as a forgotten corner would.</summary>
    public bool ForgetsCorner { get; init; }

    /// <param name="truth">The case as it is.</param>
    /// <param name="asked">What the bound is taken from: the same motion, or one broken on purpose.</param>
    /// <param name="seed">Draws the cells.</param>
    /// <param name="cells">How many; every other one about a bottom of the gap.</param>
    public void Look(SweepCase truth, IMovingSystem asked, ulong seed, int cells)
    {
        var oracle = new PoseOracle(truth);
        var random = new SplitMix64(seed ^ 0xCE11);
        for (int i = 0; i < cells; i++)
        {
            DyadicCell? cell = i % 2 == 0
                ? CellAim.Anywhere(random, truth.System.Box.Dimensions)
                : CellAim.AtBottom(random, truth.System.Box, pose => oracle.GapBeyondStops(pose), 4);
            if (cell is { } found) Look(truth, asked, oracle, random, found);
        }
    }

    /// <summary>Looks at cells in which each stop is open in the middle of one coordinate and shut at its ends.</summary>
    /// <param name="truth">The case; its stops' limits are moved.</param>
    /// <param name="asked">What the motion with moved stops becomes.</param>
    /// <param name="seed">Draws the cells.</param>
    public void LookAtStops(SweepCase truth, Func<IMovingSystem, IMovingSystem> asked, ulong seed)
    {
        var random = new SplitMix64(seed ^ 0x5709);
        foreach (Stop stop in truth.System.Stops)
            for (int i = 0; i < 3; i++)
            {
                double Reserve(double[] pose) => stop.Reserve(truth.System.At(pose.AsSpan()).Relative(stop.FirstBody, stop.SecondBody));
                if (CellAim.AtBottom(random, truth.System.Box, pose => -Reserve(pose), 10) is not { } cell) continue;
                (double[] low, double[] high) = CellAim.Corners(truth.System.Box, cell);
                double ends = Math.Max(Reserve(low), Reserve(high));
                double middle = Reserve([.. low.Zip(high, (a, b) => (a + b) / 2)]);
                if (middle - ends < 0.01) continue;
                SweepCase moved = truth.With(RandomCases.With(truth.System, [RandomCases.Shifted(stop, middle - (0.3 * (middle - ends)))]));
                Look(moved, asked(moved.System), new PoseOracle(moved), random, cell);
            }
    }

    private void Look(SweepCase truth, IMovingSystem asked, PoseOracle oracle, SplitMix64 random, in DyadicCell cell)
    {
        GapObjective objective = truth.Objective();
        var loader = new CellLoader(asked, objective);
        LoadResult loaded = loader.Load(cell);
        if (loaded == LoadResult.Unsolved) return;
        Cells++;
        double bound = double.PositiveInfinity;
        if (loaded == LoadResult.Loaded) bound = BoundOf(loader.Geometry, objective, random);
        else Dropped++;
        (double[] low, double[] high) = CellAim.Corners(oracle.Box, cell);
        if (oracle.Least(random, 10, low, high, 4e-3).Gap < bound - RoundingMm) Broken++;
    }

    private double BoundOf(CellGeometry geometry, GapObjective objective, SplitMix64 random)
    {
        if (ForgetsCorner)
        {
            int corner = random.Below(geometry.CornerCount);
            foreach (TrackMotion track in geometry.Tracks) track.Corners[corner] = track.Corners[corner ^ 1];
        }

        double threshold = random.Below(2) == 0 ? double.PositiveInfinity : objective.Evaluate([.. geometry.Tracks.Select(t => t.Centre)], out _) - random.In(0, 5);
        var outcome = new CellOutcome();
        outcome.Clear();
        objective.Examine(geometry, objective.Root, threshold, outcome);
        return Math.Min(outcome.Bound, outcome.Settled);
    }
}
