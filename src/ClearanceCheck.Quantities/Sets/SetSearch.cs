using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Sweeping.Subspaces;

namespace ClearanceCheck.Quantities.Sets;

/// <summary>Searches the faces that make a pose set one after the other, and keeps the worst.</summary>
internal static class SetSearch
{
    /// <summary>Searches a pose set.</summary>
    /// <param name="request">What is asked, and over which set.</param>
    /// <param name="module">What moves; null when nothing does.</param>
    /// <param name="isLeast">True when the least is the worst.</param>
    /// <param name="reach">Places within this of the worst are kept.</param>
    /// <param name="search">The search over a moving system.</param>
    /// <param name="also">Held besides.</param>
    public static SearchedSet Run(
        MeasureRequest request, AxleModule module, bool isLeast, double reach, Func<IMovingSystem, Extreme> search, PoseSubset? also = null)
    {
        var found = new List<(Extreme Extreme, PoseSubset Subset)>();
        foreach (PoseSubset face in PoseSubsets.Of(module, request.Motion.Vehicle, request.Over))
        {
            if ((also is null ? face : face.And(also)) is not { } subset) continue;
            Extreme extreme = subset.IsWhole ? search(module.Motion) : Within(module, request, subset, search);
            if (!extreme.IsProvedEmpty) found.Add((extreme, subset));
        }

        return found.Count == 0
            ? new SearchedSet(new Extreme { Value = double.NaN, Bound = double.NaN, Grade = Grade.Proven, Basins = [], Cells = 0, IsProvedEmpty = true }, [])
            : Worst(found, isLeast, reach);
    }

    private static Extreme Within(AxleModule module, MeasureRequest request, PoseSubset subset, Func<IMovingSystem, Extreme> search)
    {
        PoseSubspace space = subset.Space(module, request.Motion.Parameters);
        Extreme extreme = search(space);
        return extreme with { Basins = [.. extreme.Basins.Select(b => b.Pose.Length == space.Box.Dimensions ? b with { Pose = space.Full(b.Pose) } : b)] };
    }

    private static SearchedSet Worst(List<(Extreme Extreme, PoseSubset Subset)> found, bool isLeast, double reach)
    {
        if (found.Count == 1) return new SearchedSet(found[0].Extreme, [.. found[0].Extreme.Basins.Select(_ => found[0].Subset)]);
        int sign = isLeast ? 1 : -1;
        double worst = found.Min(f => double.IsNaN(f.Extreme.Value) ? double.PositiveInfinity : sign * f.Extreme.Value);
        (Basin Basin, PoseSubset Subset)[] basins =
        [
            .. found.SelectMany(f => f.Extreme.Basins.Select(b => (Basin: b, f.Subset)))
                .Where(b => sign * b.Basin.Value <= worst + reach).OrderBy(b => sign * b.Basin.Value),
        ];
        var all = new Extreme
        {
            Value = double.IsInfinity(worst) ? double.NaN : sign * worst,
            // A face in which no pose was found, and which is not proved empty, leaves the set without a bound.
            Bound = sign * found.Min(f => double.IsNaN(f.Extreme.Bound) ? double.NegativeInfinity : sign * f.Extreme.Bound),
            Grade = found.Max(f => f.Extreme.Grade),
            Basins = [.. basins.Select(b => b.Basin)],
            Cells = found.Sum(f => f.Extreme.Cells),
            RefusedAtRoot = found.All(f => f.Extreme.RefusedAtRoot),
            UnsolvedRegions = found.Sum(f => f.Extreme.UnsolvedRegions),
            BudgetSpent = found.Any(f => f.Extreme.BudgetSpent),
        };
        return new SearchedSet(all, [.. basins.Select(b => b.Subset)]);
    }
}
