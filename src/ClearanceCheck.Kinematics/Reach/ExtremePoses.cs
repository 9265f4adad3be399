using System.Collections.Immutable;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Kinematics.Reach;

/// <summary>The named poses of an axle, found with its stops where they really are: a hub may go further than the stop inboard of it.</summary>
/// <remarks>For a person's eyes and hands: no bound rests on them.</remarks>
public static class ExtremePoses
{
    public const string RideHeight = "ride-height";

    /// <summary>A stop this near holds a pose, mm.</summary>
    public const double HeldMm = 0.05;

    // At a lock the wheels still hang, or stand, as far as they go there: so much weight that the steering comes first.
    private const double AlsoTravel = 0.05;

    private const string LockLeft = "lock-left";
    private const string LockRight = "lock-right";

    // Name, left travel and right travel: which way each goes; what has no way is held at ride height.
    private static readonly ImmutableArray<(string Name, int Left, int Right)> Travels =
    [
        (RideHeight, 0, 0),
        ("full-droop", -1, -1),
        ("left-droop", -1, 0),
        ("right-droop", 0, -1),
        ("articulated-left-up", 1, -1),
        ("articulated-right-up", -1, 1),
        ("left-bump", 1, 0),
        ("right-bump", 0, 1),
        ("full-bump", 1, 1),
    ];

    // Poses from which the steering is also turned to both locks; wheels at one side only are left out, nobody drives there.
    private static readonly ImmutableHashSet<string> SteeredFrom = [RideHeight, "full-droop", "full-bump", "articulated-left-up", "articulated-right-up"];

    /// <summary>The names that an axle has, in the order of its table.</summary>
    public static ImmutableArray<string> NamesOf(AxleModule module) => [.. Wanted(AxleCoordinates.Of(module)).Select(w => w.Name)];

    /// <summary>All named poses of an axle, in the order of its table.</summary>
    public static ImmutableArray<ExtremePose> Of(AxleModule module) => Of(module.Axle.Name, module.Motion);

    /// <summary>All named poses of anything that moves as an axle does.</summary>
    /// <param name="axle">Its name, with which its coordinates' names begin.</param>
    /// <param name="system">Its motion.</param>
    public static ImmutableArray<ExtremePose> Of(string axle, IMovingSystem system)
    {
        var found = new Dictionary<string, ExtremePose>(StringComparer.Ordinal);
        AxleCoordinates coordinates = AxleCoordinates.Of(axle, system.Box);
        foreach (Wish wish in Wanted(coordinates)) found[wish.Name] = Find(wish, coordinates, system, found);
        return [.. found.Values];
    }

    /// <summary>One named pose; null when the axle has none of this name.</summary>
    public static ExtremePose? Find(AxleModule module, string name)
    {
        var found = new Dictionary<string, ExtremePose>(StringComparer.Ordinal);
        AxleCoordinates coordinates = AxleCoordinates.Of(module);
        ImmutableArray<Wish> wanted = [.. Wanted(coordinates)];
        foreach (Wish wish in wanted.Where(w => w.Name == name || wanted.Any(own => own.Name == name && own.From == w.Name)))
            found[wish.Name] = Find(wish, coordinates, module.Motion, found);
        return found.GetValueOrDefault(name);
    }

    private static IEnumerable<Wish> Wanted(AxleCoordinates coordinates)
    {
        foreach ((string name, int left, int right) in Travels)
        {
            if ((left != 0 && coordinates.Left is null) || (right != 0 && coordinates.Right is null)) continue;
            yield return new Wish(name, left, right, 0, null);
            if (coordinates.Steer is null || !SteeredFrom.Contains(name)) continue;
            string before = name == RideHeight ? "" : name + "-";
            yield return new Wish(before + LockLeft, left * AlsoTravel, right * AlsoTravel, 1, name);
            yield return new Wish(before + LockRight, left * AlsoTravel, right * AlsoTravel, -1, name);
        }
    }

    private static ExtremePose Find(Wish wish, AxleCoordinates coordinates, IMovingSystem system, Dictionary<string, ExtremePose> found)
    {
        var start = new double[system.Box.Dimensions];
        var direction = new double[start.Length];
        for (int d = 0; d < start.Length; d++) start[d] = Math.Clamp(0, system.Box.Coordinates[d].Low, system.Box.Coordinates[d].High);
        if (wish.From is { } from) found[from].Pose.CopyTo(start);
        if (coordinates.Left is { } left) direction[left] = wish.Left;
        if (coordinates.Right is { } right) direction[right] = wish.Right;
        if (coordinates.Steer is { } steer) direction[steer] = wish.Steer;
        bool[] isFree = [.. direction.Select(way => way != 0)];
        (double[] pose, SolvedPose solved) = new ExtremeSearch(system).From(start, direction, isFree);
        return new ExtremePose(wish.Name, [.. pose], solved, solved.IsSolved ? [.. Holds(system, coordinates, pose, solved, isFree)] : [], solved.IsSolved ? Passed(system, solved) : []);
    }

    private static ImmutableArray<PassedStop> Passed(IMovingSystem system, SolvedPose solved) =>
        [.. Reserves(system, solved).Where(s => s.Reserve < -ExtremeSearch.MetMm).Select(s => new PassedStop(s.Name, -s.Reserve))];

    private static IEnumerable<PoseHold> Holds(IMovingSystem system, AxleCoordinates coordinates, double[] pose, SolvedPose solved, bool[] isFree)
    {
        bool isHeld = !isFree.Contains(true);
        foreach ((string name, double reserve) in Reserves(system, solved))
        {
            if (Math.Abs(reserve) > HeldMm) continue;
            isHeld = true;
            yield return new PoseHold(PoseHoldKind.Stop, name, reserve);
        }

        for (int d = 0; d < pose.Length; d++)
        {
            PoseCoordinate c = system.Box.Coordinates[d];
            if (!isFree[d] || (pose[d] < c.High && pose[d] > c.Low)) continue;
            isHeld = true;
            yield return End(coordinates, c, d, pose[d] >= c.High);
        }

        if (!isHeld) yield return new PoseHold(PoseHoldKind.Links, "the links", 0);
    }

    private static PoseHold End(AxleCoordinates coordinates, PoseCoordinate c, int d, bool isHigh)
    {
        if (d == coordinates.Steer) return new PoseHold(PoseHoldKind.Lock, $"steering lock {(isHigh ? "left" : "right")}", 0);
        return d == coordinates.Left || d == coordinates.Right
            ? new PoseHold(PoseHoldKind.EndOfTravel, $"end of the travel looked at, {c.Name} {(isHigh ? "bump" : "droop")}", 0)
            : new PoseHold(PoseHoldKind.EndOfRange, $"end of the range of {c.Name}", 0);
    }

    private static IEnumerable<(string Name, double Reserve)> Reserves(IMovingSystem system, SolvedPose solved) =>
        system.Stops.Zip(StopSlopes.ReservesAt(system, solved), (stop, reserve) => (stop.Name, reserve));

    // From: the pose it starts at; null for ride height.
    private sealed record Wish(string Name, double Left, double Right, double Steer, string? From);
}
