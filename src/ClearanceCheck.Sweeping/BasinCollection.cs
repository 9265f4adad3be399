using System.Collections.Immutable;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping;

/// <summary>The local minima found so far, and the places from which more may be found.</summary>
internal sealed class BasinCollection(
    IMovingSystem system, LocalDescent descent, ISweepObjective objective, ReachableSpace space, SweepSettings settings)
{
    // Two minima nearer than this share of every range are one.
    private const double SameShare = 0.01;
    private const int GridDescents = 4;
    private const int LateDescents = 6;
    private const int MaximumCandidates = 400;

    // Centres beyond a stop that were looked at in a row without a better value, after which no more are.
    private const int MaximumFruitless = 100;
    private const double SameContactMm = 0.02;

    private readonly List<Basin> found = [];
    private readonly List<Candidate> grid = [];
    private readonly List<Candidate> candidates = [];
    private int fruitless;

    /// <summary>The least value of any reachable pose so far.</summary>
    public double Best { get; private set; } = double.PositiveInfinity;

    /// <summary>A first look on a coarse grid of poses that all pairs share.</summary>
    /// <param name="coarse">True for the ends and the middle of each coordinate alone.</param>
    public void LookAtGrid(bool coarse)
    {
        int d = system.Box.Dimensions, count = d <= 2 && !coarse ? 5 : 3, total = 1;
        for (int k = 0; k < d; k++) total *= count;
        double[] steps = [.. Enumerable.Range(0, d).Select(k => system.Box.Range(k) / (2 * (count - 1)))];
        for (int node = 0; node < total; node++)
        {
            DyadicPose at = default;
            for (int k = 0, rest = node; k < d; k++, rest /= count) at = at.With(k, DyadicPose.Denominator / (count - 1) * (rest % count));
            if (Start(at, out Witness witness) is { } start) grid.Add(new Candidate(start.Value, start.Pose, steps, witness));
        }

        grid.Sort(Candidate.Compare);
    }

    /// <summary>The best pose of the grid as it is.</summary>
    public ImmutableArray<Basin> BestOfGrid() => grid.Count == 0 ? [] : [new Basin(grid[0].Value, [.. grid[0].Pose], grid[0].Witness)];

    /// <summary>Goes down from the best poses of the grid: finds most basins before the search begins.</summary>
    public void DescendFromGrid()
    {
        int descents = 0;
        foreach (Candidate start in grid)
        {
            if (descents >= GridDescents || start.Value > Best + settings.ReachMm) candidates.Add(start);
            else if (Descend(start.Pose, start.Steps)) descents++;
        }
    }

    /// <summary>A cell's centre with a promising value, reachable or beyond a stop.</summary>
    public void Offer(in DyadicCell cell, ReadOnlySpan<double> widths, double value, bool reachable)
    {
        bool isCandidate = reachable && candidates.Count < MaximumCandidates;
        bool isBetter = value < Best && (reachable || fruitless < MaximumFruitless);
        if (!isCandidate && !isBetter) return;
        var pose = new double[widths.Length];
        system.Box.Values(cell.Center(pose.Length), pose);
        double[] steps = widths.ToArray();
        for (int k = 0; k < steps.Length; k++) steps[k] /= 4;
        if (isBetter && IsBetter(pose, reachable) && Descend(pose, steps)) return;
        if (isCandidate) candidates.Add(new Candidate(value, pose, steps, default));
    }

    /// <summary>Looks from the remaining promising places, and returns all minima within reach of the best, the best first.</summary>
    public ImmutableArray<Basin> Finish()
    {
        candidates.Sort(Candidate.Compare);
        int late = 0;
        foreach (Candidate candidate in candidates)
        {
            if (candidate.Value > Best + settings.ReachMm || late >= LateDescents) break;
            if (!IsKnown(candidate.Pose, 10) && Descend(candidate.Pose, candidate.Steps)) late++;
        }

        Polish();
        found.Sort((a, b) => Candidate.Compare(a.Value, a.Pose.AsSpan(), b.Value, b.Pose.AsSpan()));
        return [.. found.Where(b => b.Value <= Best + settings.ReachMm)];
    }

    // Only the best is reported to the last digit.
    private void Polish()
    {
        int least = found.FindIndex(b => b.Value == Best);
        if (least < 0) return;
        Basin polished = descent.Polish(found[least]);
        found.RemoveAll(b => IsSame(b, polished.Pose.AsSpan(), 1) || IsSameContact(b, polished) || b.Value == Best);
        found.Add(polished);
        Best = polished.Value;
    }

    private (double Value, double[] Pose)? Start(in DyadicPose at, out Witness witness)
    {
        witness = default;
        SolvedPose pose = system.At(at);
        if (!pose.IsSolved) return null;
        var values = new double[system.Box.Dimensions];
        system.Box.Values(at, values);
        double value = space.LeastReserve(pose) < -settings.StopGiveMm
            ? descent.Try(values, out witness)
            : objective.Evaluate(pose, out witness);
        return double.IsFinite(value) ? (value, values) : null;
    }

    // A centre beyond a stop counts with what it becomes on the stop.
    private bool IsBetter(double[] pose, bool reachable)
    {
        if (reachable || descent.Try(pose, out _) < Best)
        {
            fruitless = 0;
            return true;
        }

        fruitless++;
        return false;
    }

    // True when a descent was made and led somewhere, known or new.
    private bool Descend(double[] pose, double[] steps)
    {
        if (descent.From(pose, steps) is not { } basin) return false;
        Best = Math.Min(Best, basin.Value);
        int same = found.FindIndex(b => IsSame(b, basin.Pose.AsSpan(), 1) || IsSameContact(b, basin));
        if (same < 0) found.Add(basin);
        else if (basin.Value < found[same].Value) found[same] = basin;
        return true;
    }

    private bool IsKnown(double[] pose, double factor) => found.Exists(b => IsSame(b, pose, factor));

    private bool IsSame(Basin basin, ReadOnlySpan<double> pose, double factor)
    {
        for (int k = 0; k < pose.Length; k++)
            if (Math.Abs(basin.Pose[k] - pose[k]) > factor * SameShare * system.Box.Range(k)) return false;
        return true;
    }

    // The same places of both parts at the same gap: a valley along which nothing changes is one basin.
    private static bool IsSameContact(Basin a, Basin b) =>
        Math.Abs(a.Value - b.Value) < SameContactMm
        && (a.Witness.OnFirst - b.Witness.OnFirst).Length < SameContactMm && (a.Witness.OnSecond - b.Witness.OnSecond).Length < SameContactMm;

    private sealed record Candidate(double Value, double[] Pose, double[] Steps, Witness Witness)
    {
        public static int Compare(Candidate a, Candidate b) => Compare(a.Value, a.Pose, b.Value, b.Pose);

        public static int Compare(double value, ReadOnlySpan<double> pose, double otherValue, ReadOnlySpan<double> otherPose)
        {
            int order = value.CompareTo(otherValue);
            for (int k = 0; order == 0 && k < pose.Length; k++) order = pose[k].CompareTo(otherPose[k]);
            return order;
        }
    }
}
