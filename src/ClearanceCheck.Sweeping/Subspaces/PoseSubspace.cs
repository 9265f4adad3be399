using System.Collections.Concurrent;
using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping.Subspaces;

/// <summary>A moving system with some coordinates kept and other stops: its poses are poses of the whole, and so are its bounds.</summary>
/// <remarks>
/// Its box holds the coordinates that are left, with their whole ranges, so a cell is a cell of the whole box as thin as its numbers go
/// around what is kept. A curvature bound over that holds over the slice.
/// </remarks>
public sealed class PoseSubspace : IMovingSystem
{
    private readonly IMovingSystem whole;
    private readonly int[] free;
    private readonly HeldCoordinate[] held;
    private readonly int[] numerators;
    private readonly bool isShared;
    private readonly ConcurrentDictionary<DyadicPose, SolvedPose> kept = new();

    /// <param name="whole">The system.</param>
    /// <param name="held">Coordinates that are kept.</param>
    /// <param name="stops">What cuts the poses that are left.</param>
    public PoseSubspace(IMovingSystem whole, ImmutableArray<HeldCoordinate> held, ImmutableArray<Stop> stops)
    {
        (this.whole, this.held, Stops) = (whole, [.. held], stops);
        free = [.. Enumerable.Range(0, whole.Box.Dimensions).Where(d => held.All(h => h.Coordinate != d))];
        Box = new PoseBox(free.Select(d => whole.Box.Coordinates[d]));
        double[] places = [.. held.Select(h => (h.Value - whole.Box.Coordinates[h.Coordinate].Low) / whole.Box.Range(h.Coordinate) * DyadicPose.Denominator)];
        numerators = [.. places.Select(p => (int)Math.Clamp(Math.Round(p), 0, DyadicPose.Denominator))];
        // What is kept at a pose that cells share is solved once for all.
        isShared = held.Select((h, i) => whole.Box.ValueAt(h.Coordinate, numerators[i]) == h.Value).All(same => same);
    }

    public PoseBox Box { get; }

    public ImmutableArray<Stop> Stops { get; }

    public long Solves => kept.Count;

    public SolvedPose At(in DyadicPose pose)
    {
        if (isShared) return whole.At(Shared(pose));
        return kept.TryGetValue(pose, out SolvedPose? found) ? found : kept.GetOrAdd(pose, Solve(pose));
    }

    public SolvedPose At(ReadOnlySpan<double> pose)
    {
        Span<double> full = stackalloc double[whole.Box.Dimensions];
        Fill(pose, full);
        return whole.At(full);
    }

    /// <summary>A pose of the whole system, mm or rad.</summary>
    public ImmutableArray<double> Full(ImmutableArray<double> pose)
    {
        var full = new double[whole.Box.Dimensions];
        Fill(pose.AsSpan(), full);
        return [.. full];
    }

    public bool IsUnreachable(in DyadicCell cell) => whole.IsUnreachable(InWhole(cell));

    public IReadOnlyList<DyadicCell> CurvatureRegions(in DyadicCell cell) => whole.CurvatureRegions(InWhole(cell));

    public CurvatureBasis Curvatures(in DyadicCell cell, int frameBody, int body, ReadOnlySpan<Vector3d> anchors, Span<Curvature> perCoordinate)
    {
        Span<Curvature> all = stackalloc Curvature[whole.Box.Dimensions];
        CurvatureBasis basis = whole.Curvatures(IsOfWhole(cell) ? cell : InWhole(cell), frameBody, body, anchors, all);
        for (int k = 0; k < free.Length; k++) perCoordinate[k] = all[free[k]];
        return basis;
    }

    // A region is a cell of the whole box; it alone reaches into more coordinates than are left.
    private bool IsOfWhole(in DyadicCell cell) => held.Length == 0 || cell.Size[free.Length] > 0;

    private void Fill(ReadOnlySpan<double> pose, Span<double> full)
    {
        for (int k = 0; k < free.Length; k++) full[free[k]] = pose[k];
        foreach (HeldCoordinate h in held) full[h.Coordinate] = h.Value;
    }

    private DyadicPose Shared(in DyadicPose pose)
    {
        DyadicPose full = default;
        for (int k = 0; k < free.Length; k++) full = full.With(free[k], pose[k]);
        for (int i = 0; i < held.Length; i++) full = full.With(held[i].Coordinate, numerators[i]);
        return full;
    }

    private SolvedPose Solve(in DyadicPose pose)
    {
        Span<double> values = stackalloc double[free.Length];
        Box.Values(pose, values);
        return At(values);
    }

    private DyadicCell InWhole(in DyadicCell cell)
    {
        DyadicPose low = default, size = default;
        for (int k = 0; k < free.Length; k++) (low, size) = (low.With(free[k], cell.Low[k]), size.With(free[k], cell.Size[k]));
        for (int i = 0; i < held.Length; i++)
        {
            int first = Math.Max(0, numerators[i] - 1), last = Math.Min(DyadicPose.Denominator, numerators[i] + 1);
            (low, size) = (low.With(held[i].Coordinate, first), size.With(held[i].Coordinate, last - first));
        }

        return new DyadicCell(low, size);
    }
}
