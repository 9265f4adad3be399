using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Kinematics.Reach;

/// <summary>Follows straight paths from ride height through the stops.</summary>
public static class StopPaths
{
    /// <summary>How far beyond the first end a path is followed, mm.</summary>
    public const double BeyondMm = 30;

    /// <summary>The same for steering, rad: 5 degrees.</summary>
    public const double BeyondRad = 5 / Trigonometry.DegreesPerRadian;

    private const double MarchMm = 2;
    private const double MarchRad = 0.5 / Trigonometry.DegreesPerRadian;
    private const int Halvings = 50;

    private static readonly ImmutableArray<(string Name, int Left, int Right, int Steer)> Ways =
    [
        ("both-down", -1, -1, 0),
        ("both-up", 1, 1, 0),
        ("left-up-right-down", 1, -1, 0),
        ("left-down-right-up", -1, 1, 0),
        ("left-down", -1, 0, 0),
        ("right-down", 0, -1, 0),
        ("left-up", 1, 0, 0),
        ("right-up", 0, 1, 0),
        ("steer-left", 0, 0, 1),
        ("steer-right", 0, 0, -1),
    ];

    /// <summary>All paths that an axle has.</summary>
    public static ImmutableArray<StopPath> Of(AxleModule module) => Of(module.Axle.Name, module.Motion);

    /// <summary>All paths of anything that moves as an axle does; none when ride height can't be solved.</summary>
    public static ImmutableArray<StopPath> Of(string axle, IMovingSystem system)
    {
        AxleCoordinates coordinates = AxleCoordinates.Of(axle, system.Box);
        return [.. Ways.Select(way => Follow(way.Name, system, Direction(way.Left, way.Right, way.Steer))).OfType<StopPath>()];

        double[]? Direction(int left, int right, int steer)
        {
            var direction = new double[system.Box.Dimensions];
            foreach ((int way, int? at) in new[] { (left, coordinates.Left), (right, coordinates.Right), (steer, coordinates.Steer) })
            {
                if (way == 0) continue;
                if (at is not { } d) return null;
                direction[d] = way;
            }

            return direction;
        }
    }

    private static StopPath? Follow(string name, IMovingSystem system, double[]? direction)
    {
        if (direction is null || Reserves(0) is not { } ride) return null;
        bool isAngle = Enumerable.Range(0, direction.Length).Any(d => direction[d] != 0 && system.Box.Coordinates[d].IsAngle);
        double march = isAngle ? MarchRad : MarchMm, end = EndOfRange(system.Box, direction), last = end + (isAngle ? BeyondRad : BeyondMm);
        var crossings = new List<StopCrossing>();
        for (int j = 0; j < ride.Length; j++)
            if (ride[j] < 0) crossings.Add(new StopCrossing(system.Stops[j].Name, 0, -ride[j]));
        double at = 0;
        double[] before = ride;
        while (at < last)
        {
            double next = Math.Min(last, at + march);
            if (Reserves(next) is not { } after) break;
            for (int j = 0; j < after.Length; j++)
                if (before[j] >= 0 && after[j] < 0 && !crossings.Exists(c => c.Stop == system.Stops[j].Name)) crossings.Add(new StopCrossing(system.Stops[j].Name, Root(j, at, next), 0));
            if (crossings.Count > 0) last = Math.Min(last, crossings.Min(c => c.At) + (isAngle ? BeyondRad : BeyondMm));
            (at, before) = (next, after);
        }

        return new StopPath(name, isAngle, [.. crossings.OrderBy(c => c.At).ThenBy(c => c.Stop, StringComparer.Ordinal)], end, at);

        double[]? Reserves(double along)
        {
            double[] pose = [.. direction.Select(way => along * way)];
            SolvedPose solved = system.At((ReadOnlySpan<double>)pose);
            return solved.IsSolved ? StopSlopes.ReservesAt(system, solved) : null;
        }

        double Root(int stop, double low, double high)
        {
            for (int k = 0; k < Halvings; k++)
            {
                double middle = (low + high) / 2;
                if (Reserves(middle) is { } there && there[stop] >= 0) low = middle;
                else high = middle;
            }

            return low;
        }
    }

    // How far the path stays inside all ranges.
    private static double EndOfRange(PoseBox box, double[] direction)
    {
        double end = double.PositiveInfinity;
        for (int d = 0; d < direction.Length; d++)
        {
            if (direction[d] > 0) end = Math.Min(end, box.Coordinates[d].High);
            if (direction[d] < 0) end = Math.Min(end, -box.Coordinates[d].Low);
        }

        return end;
    }
}
