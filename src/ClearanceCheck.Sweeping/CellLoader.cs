using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping;

/// <summary>Fills a <see cref="CellGeometry"/> for the cells of one search.</summary>
internal sealed class CellLoader
{
    private readonly IMovingSystem system;
    private readonly ISweepObjective objective;
    private readonly CurvatureCache[] curvatures;
    private readonly CurvatureCache[] stopCurvatures;
    private readonly Curvature[] stopBounds;
    private readonly SolvedPose[] corners;

    public CellLoader(IMovingSystem system, ISweepObjective objective)
    {
        (this.system, this.objective) = (system, objective);
        Geometry = new CellGeometry(system.Box.Dimensions, system.Stops.Length, objective.Tracks.Count);
        curvatures = [.. objective.Tracks.Select(t => new CurvatureCache(system, objective.FrameBody, t.Body, t.Anchors))];
        stopCurvatures = [.. system.Stops.Select(s => new CurvatureCache(system, s.FirstBody, s.SecondBody, [s.SecondPoint]))];
        stopBounds = new Curvature[system.Box.Dimensions];
        corners = new SolvedPose[Geometry.CornerCount];
    }

    public CellGeometry Geometry { get; }

    /// <summary>The weakest basis of any curvature used so far.</summary>
    public CurvatureBasis Weakest { get; private set; } = CurvatureBasis.Enclosed;

    public LoadResult Load(in DyadicCell place)
    {
        int d = system.Box.Dimensions;
        if (system.IsUnreachable(place)) return LoadResult.OutOfReach;
        for (int k = 0; k < d; k++) Geometry.Widths[k] = place.Width(k, system.Box);
        for (int c = 0; c < corners.Length; c++)
        {
            corners[c] = system.At(place.Corner(c, d));
            for (int t = 0; t < Geometry.Tracks.Length; t++)
                if (!TryRelative(corners[c], t, out Geometry.Tracks[t].Corners[c])) return LoadResult.Unsolved;
        }

        SolvedPose centre = system.At(place.Center(d));
        for (int t = 0; t < Geometry.Tracks.Length; t++)
        {
            if (!TryRelative(centre, t, out RigidMotion relative)) return LoadResult.Unsolved;
            Geometry.Tracks[t].Centre = relative;
        }

        LoadResult stops = LoadStops(place, centre);
        if (stops != LoadResult.Loaded) return stops;
        for (int t = 0; t < curvatures.Length; t++)
            if (!Bound(curvatures[t], place, Geometry.Tracks[t].Curvatures)) return LoadResult.Unsolved;
        return LoadResult.Loaded;
    }

    // A pose with a number that is none counts as not solved: comparisons with it would settle anything.
    private bool TryRelative(SolvedPose pose, int track, out RigidMotion relative)
    {
        relative = pose.IsSolved ? pose.Relative(objective.FrameBody, objective.Tracks[track].Body) : default;
        return pose.IsSolved && relative.Translation.IsFinite
            && double.IsFinite(relative.Rotation.W + relative.Rotation.X + relative.Rotation.Y + relative.Rotation.Z);
    }

    private bool Bound(CurvatureCache cache, in DyadicCell place, Span<Curvature> bounds)
    {
        CurvatureBasis basis = cache.Get(place, bounds);
        if (basis == CurvatureBasis.Unknown) return false;
        foreach (ref readonly Curvature b in bounds)
            if (!double.IsFinite(b.Length + (b.HighX - b.LowX) + (b.HighY - b.LowY) + (b.HighZ - b.LowZ))) return false;
        if (basis > Weakest) Weakest = basis;
        return true;
    }

    private LoadResult LoadStops(in DyadicCell place, SolvedPose centre)
    {
        Geometry.CentreReserve = double.PositiveInfinity;
        for (int j = 0; j < system.Stops.Length; j++)
        {
            if (!Bound(stopCurvatures[j], place, stopBounds)) return LoadResult.Unsolved;
            if (LoadStop(j, system.Stops[j], centre) < -CellGeometry.SlackMm) return LoadResult.OutOfReach;
        }

        return LoadResult.Loaded;
    }

    // The most that the stop's reserve can be anywhere in the cell.
    private double LoadStop(int j, Stop stop, SolvedPose centre)
    {
        RigidMotion at = centre.Relative(stop.FirstBody, stop.SecondBody);
        Geometry.StopReserves[j] = stop.Reserve(at);
        Geometry.CentreReserve = Math.Min(Geometry.CentreReserve, Geometry.StopReserves[j]);
        Vector3d direction = stop.EstimateDirection(at);
        double most = double.NegativeInfinity;
        for (int c = 0; c < corners.Length; c++)
        {
            double estimate = stop.CornerEstimate(corners[c].Relative(stop.FirstBody, stop.SecondBody), direction);
            Geometry.StopCorners[(j * corners.Length) + c] = estimate;
            most = Math.Max(most, estimate);
        }

        for (int k = 0; k < Geometry.Dimensions; k++)
        {
            double remainder = stop.EstimateCurvature(stopBounds[k], direction) * Geometry.Widths[k] * Geometry.Widths[k] / 8;
            Geometry.StopRemainders[(j * Geometry.Dimensions) + k] = remainder;
            most += remainder;
        }

        return most;
    }
}
