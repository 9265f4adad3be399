using System.Collections.Immutable;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping;

/// <summary>Best-first branch and bound over the pose space of one pair: strictly sequential, so the same bits on any number of threads.</summary>
internal sealed class SweepSearch
{
    private readonly IMovingSystem system;
    private readonly ISweepObjective objective;
    private readonly SweepSettings settings;
    private readonly ReachableSpace space;
    private readonly CellLoader loader;
    private readonly BasinCollection basins;
    private readonly PriorityQueue<Cell, (double Bound, long Id)> queue = new();
    private readonly CellOutcome outcome = new();
    private readonly double[] stopLoss = new double[PoseBox.MaximumDimensions];
    private double settled = double.PositiveInfinity;
    private long nextId;
    private int cells;
    private int unsolved;
    private bool contradicted;

    public SweepSearch(IMovingSystem system, ISweepObjective objective, SweepSettings settings)
    {
        (this.system, this.objective, this.settings) = (system, objective, settings);
        space = new ReachableSpace(system);
        loader = new CellLoader(system, objective);
        basins = new BasinCollection(system, new LocalDescent(system, space, objective, settings), objective, space, settings);
    }

    /// <summary>What the cells alone prove, before the value found is allowed to lower it: for tests of the proof.</summary>
    internal double ProvedBound { get; private set; } = double.NegativeInfinity;

    // A bound from here on settles a feature: it can't come nearer to the least value than the tolerance, or no rule asks.
    private double Threshold => Math.Min(basins.Best - settings.ToleranceMm, settings.CeilingMm);

    public Extreme Run()
    {
        var root = new Cell(DyadicCell.Whole(system.Box.Dimensions), double.NegativeInfinity, objective.Root);
        bool refused = IsRefused(root);
        basins.LookAtGrid(coarse: refused && settings.LooksOnceBeyondCeiling);
        if (refused) return Result(basins.BestOfGrid(), refused: true, spent: false);
        basins.DescendFromGrid();
        Enqueue(root);
        // Below the floor one cell is still looked at, for a bound.
        while (queue.TryPeek(out Cell? cell, out _) && cell.Bound < Threshold && !IsSpent && (cells == 0 || !(basins.Best <= settings.FloorMm)))
        {
            queue.Dequeue();
            Process(cell);
        }

        bool spent = IsSpent && queue.TryPeek(out Cell? next, out _) && next.Bound < Threshold;
        return Result(basins.Finish(), refused: false, spent);
    }

    private bool IsSpent => cells >= settings.MaximumCells || objective.Work >= settings.MaximumWork;

    // Most pairs end here, before anything is spent on finding their least value.
    private bool IsRefused(Cell root)
    {
        if (double.IsPositiveInfinity(settings.CeilingMm) || loader.Load(root.Place) != LoadResult.Loaded) return false;
        outcome.Clear();
        objective.Examine(loader.Geometry, root.Open, settings.CeilingMm, outcome);
        if (outcome.Open.Count > 0) return false;
        (settled, cells) = (outcome.Settled, 1);
        return true;
    }

    private Extreme Result(ImmutableArray<Basin> found, bool refused, bool spent)
    {
        ProvedBound = queue.TryPeek(out Cell? next, out _) ? Math.Min(settled, next.Bound) : settled;
        bool isNothing = found.IsEmpty || (double.IsPositiveInfinity(ProvedBound) && unsolved > 0);
        contradicted |= !found.IsEmpty && IsContradiction(found[0].Value, ProvedBound) && Reserve(found[0]) >= 0;
        return new Extreme
        {
            Value = found.IsEmpty ? double.NaN : found[0].Value,
            Bound = isNothing || contradicted ? double.NegativeInfinity : Math.Min(ProvedBound, found[0].Value),
            Grade = contradicted ? Grade.Sampled : loader.Weakest == CurvatureBasis.Enclosed ? Grade.Proven : Grade.Checked,
            Basins = found,
            Cells = cells,
            RefusedAtRoot = refused && !isNothing && !contradicted,
            UnsolvedRegions = unsolved,
            IsProvedEmpty = found.IsEmpty && unsolved == 0 && double.IsPositiveInfinity(ProvedBound),
            BudgetSpent = spent,
        };
    }

    private void Process(Cell cell)
    {
        cells++;
        switch (loader.Load(cell.Place))
        {
            case LoadResult.OutOfReach:
                return;
            case LoadResult.Unsolved:
                HalveUnsolved(cell);
                return;
        }

        outcome.Clear();
        double threshold = Threshold;
        objective.Examine(loader.Geometry, cell.Open, threshold, outcome);
        if (outcome.CentreValue < basins.Best + settings.ReachMm) OfferCentre(cell);
        settled = Math.Min(settled, Math.Max(outcome.Settled, cell.Bound));
        if (outcome.Open.Count == 0) return;

        double bound = Math.Max(outcome.Bound, cell.Bound);
        int split = Split(cell.Place, threshold - outcome.Bound);
        if (split < 0)
        {
            settled = Math.Min(settled, bound);
            return;
        }

        ImmutableArray<OpenFeature> open = [.. outcome.Open];
        (DyadicCell low, DyadicCell high) = cell.Place.Halves(split);
        Enqueue(new Cell(low, bound, open));
        Enqueue(new Cell(high, bound, open));
    }

    private void Enqueue(Cell cell) => queue.Enqueue(cell, (cell.Bound, nextId++));

    private void OfferCentre(Cell cell)
    {
        double reserve = loader.Geometry.CentreReserve;
        contradicted |= reserve >= 0 && IsContradiction(outcome.CentreValue, cell.Bound);
        basins.Offer(cell.Place, loader.Geometry.Widths, outcome.CentreValue, reserve >= -settings.StopGiveMm);
    }

    // A pose below what was proved of it: the curvature was wrong, and no bound of this search can be trusted.
    private bool IsContradiction(double value, double bound) => objective.IsExact(value) && value < bound - (2 * CellGeometry.SlackMm);

    private double Reserve(Basin basin)
    {
        SolvedPose at = system.At(basin.Pose.AsSpan());
        return at.IsSolved ? space.LeastReserve(at) : double.NegativeInfinity;
    }

    // A cell whose motion is not known is never dropped: it is halved, and at the smallest size it is counted and reported.
    private void HalveUnsolved(Cell cell)
    {
        int widest = -1;
        double share = 0;
        for (int k = 0; k < system.Box.Dimensions; k++)
        {
            PoseCoordinate c = system.Box.Coordinates[k];
            double smallest = c.IsAngle ? settings.SmallestUnsolvedMm / 500 : settings.SmallestUnsolvedMm;
            double size = cell.Place.Width(k, system.Box) / smallest;
            if (size > 1 && size > share && cell.Place.Size[k] >= 4) (widest, share) = (k, size);
        }

        if (widest < 0)
        {
            unsolved++;
            if (cell.Bound > double.NegativeInfinity) settled = Math.Min(settled, cell.Bound);
            return;
        }

        (DyadicCell low, DyadicCell high) = cell.Place.Halves(widest);
        Enqueue(cell with { Place = low });
        Enqueue(cell with { Place = high });
    }

    // The coordinate that costs the bound most. Where all of them together don't make up what is missing, it is missing elsewhere: in
    // what the multipliers gave away, so look at the objective alone; or the centre itself lies below the threshold, beyond a stop,
    // so look at what says least about the stops it passed.
    private int Split(in DyadicCell place, double missing)
    {
        int d = system.Box.Dimensions;
        if (Total(outcome.Loss) >= missing) return Largest(place, outcome.Loss);
        loader.Geometry.StopLosses(stopLoss.AsSpan(0, d));
        for (int k = 0; k < d; k++) stopLoss[k] += outcome.PlainLoss[k];
        int split = Largest(place, stopLoss);
        return split >= 0 && stopLoss[split] > 1e-3 * Math.Min(missing, settings.ToleranceMm) ? split : Widest(place);
    }

    private static double Total(double[] loss) => loss[0] + loss[1] + loss[2] + loss[3];

    private int Largest(in DyadicCell place, ReadOnlySpan<double> loss)
    {
        int largest = -1;
        for (int k = 0; k < system.Box.Dimensions; k++)
            if (place.Size[k] >= 4 && (largest < 0 || loss[k] > loss[largest])) largest = k;
        return largest;
    }

    private int Widest(in DyadicCell place)
    {
        int widest = -1;
        for (int k = 0; k < system.Box.Dimensions; k++)
            if (place.Size[k] >= 4 && (widest < 0 || place.Size[k] > place.Size[widest])) widest = k;
        return widest;
    }

    private sealed record Cell(DyadicCell Place, double Bound, ImmutableArray<OpenFeature> Open);
}
