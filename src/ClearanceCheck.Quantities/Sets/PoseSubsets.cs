using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Subspaces;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Sets;

/// <summary>The faces of an axle's pose space that make a pose set together.</summary>
/// <remarks>
/// A shock at full length and a taut strap are droop stops, a shock that bottoms, a crushed bump stop and a coil turn on turn bump stops.
/// Each belongs to the wheel on whose side it is; one within 100 mm of the centre plane belongs to both. The typed end of a wheel's travel
/// counts as its stop where it can be reached at all: a value found there is not told as if a stop held it.
/// </remarks>
public static class PoseSubsets
{
    // A stop this near the centre plane, mm, ends the travel of both wheels.
    private const double CentreMm = 100;

    public static ImmutableArray<PoseSubset> Of(AxleModule module, Vehicle vehicle, PoseSet set) => set switch
    {
        PoseSet.AllPoses => [PoseSubset.Whole],
        PoseSet.RideHeight => [RideHeight(module)],
        PoseSet.Droop or PoseSet.Bump => [.. Ends(module, vehicle, set == PoseSet.Bump, true).Concat(Ends(module, vehicle, set == PoseSet.Bump, false)).DistinctBy(Key)],
        PoseSet.FullDroop or PoseSet.FullBump => Both(module, vehicle, set == PoseSet.FullBump, set == PoseSet.FullBump),
        _ => [.. Both(module, vehicle, true, false).Concat(Both(module, vehicle, false, true)).DistinctBy(Key)],
    };

    /// <summary>Ride height: both travels at zero and no wind-up, any steering.</summary>
    public static PoseSubset RideHeight(AxleModule module)
    {
        AxleCoordinates known = AxleCoordinates.Of(module);
        return new PoseSubset { Held = [.. new[] { known.Left, known.Right, known.Wrap }.OfType<int>().Select(c => AtZero(module, c))] };
    }

    /// <summary>The wheels straight ahead; the whole space for an axle that is not steered.</summary>
    public static PoseSubset StraightAhead(AxleModule module) =>
        AxleCoordinates.Of(module).Steer is { } steer ? new PoseSubset { Held = [AtZero(module, steer)] } : PoseSubset.Whole;

    /// <summary>Numbers of the stops that shocks make.</summary>
    public static ImmutableArray<int> OfShocks(AxleModule module, Vehicle vehicle) =>
        [.. Enumerable.Range(0, module.Motion.Stops.Length).Where(j => PartOf(vehicle, module.Motion.Stops[j])?.Form is PartForm.Shock)];

    private static HeldCoordinate AtZero(AxleModule module, int coordinate)
    {
        PoseCoordinate c = module.Motion.Box.Coordinates[coordinate];
        return new HeldCoordinate(coordinate, Math.Clamp(0, c.Low, c.High));
    }

    private static ImmutableArray<PoseSubset> Both(AxleModule module, Vehicle vehicle, bool leftIsBump, bool rightIsBump)
    {
        ImmutableArray<PoseSubset> left = Ends(module, vehicle, leftIsBump, true), right = Ends(module, vehicle, rightIsBump, false);
        return [.. left.SelectMany(l => right.Select(r => l.And(r))).OfType<PoseSubset>().DistinctBy(Key)];
    }

    // What can end one wheel's travel.
    private static ImmutableArray<PoseSubset> Ends(AxleModule module, Vehicle vehicle, bool isBump, bool isLeft)
    {
        var ends = ImmutableArray.CreateBuilder<PoseSubset>();
        for (int j = 0; j < module.Motion.Stops.Length; j++)
            if (IsEnd(vehicle, module.Motion.Stops[j], isBump, isLeft)) ends.Add(new PoseSubset { OnStops = [j] });
        AxleCoordinates known = AxleCoordinates.Of(module);
        if ((isLeft ? known.Left : known.Right) is { } travel)
        {
            PoseCoordinate c = module.Motion.Box.Coordinates[travel];
            ends.Add(new PoseSubset { Held = [new HeldCoordinate(travel, isBump ? c.High : c.Low)], EndsAtNoStop = true });
        }

        return ends.ToImmutable();
    }

    private static bool IsEnd(Vehicle vehicle, Stop stop, bool isBump, bool isLeft)
    {
        bool ends = PartOf(vehicle, stop)?.Form switch
        {
            PartForm.Shock => stop is ShortestStop == isBump,
            PartForm.LimitStrap => !isBump,
            PartForm.BumpStop or PartForm.Coil => isBump,
            _ => false,
        };
        Vector3d moving = stop.SecondBody != 0 ? stop.SecondPoint : stop.FirstPoint;
        return ends && (Math.Abs(moving.Y) <= CentreMm || moving.Y > 0 == isLeft);
    }

    private static Part? PartOf(Vehicle vehicle, Stop stop) =>
        vehicle.Parts.FirstOrDefault(p => stop.Name.StartsWith(p.Id + " ", StringComparison.Ordinal) && p.Form is not PartForm.SteeringStop);

    private static string Key(PoseSubset subset) => $"{string.Join(",", subset.OnStops)};{string.Join(",", subset.Held)}";
}
