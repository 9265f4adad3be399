using System.Collections.Immutable;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics;

/// <summary>One axle in motion: its linkage, its pose box and the stops that cut it.</summary>
/// <param name="Bodies">Names by number; the first is the chassis.</param>
/// <param name="Coordinates">What can be set.</param>
public sealed record AxleModule(Axle Axle, ImmutableArray<string> Bodies, LinkageMotion Motion, AxleCoordinates Coordinates)
{
    /// <summary>Names of the coordinates in reports and commands: <c>rear.left</c>, <c>rear.right</c>.</summary>
    public ImmutableArray<string> CoordinateNames => [.. Motion.Box.Coordinates.Select(c => c.Name)];

    /// <summary>What the typed end of a coordinate's travel is called where it, and no stop, ends a pose.</summary>
    public string EndOfTravel(int coordinate, bool bump) => $"end of the travel looked at, {CoordinateNames[coordinate]} {(bump ? "bump" : "droop")}";

    /// <summary>The name of the body that a link's, shock's or shaft's tube makes: it stays joined at one end and points to the other.</summary>
    public static string FollowerName(string partId, bool atFirst) => $"{partId}/{(atFirst ? "first" : "second")}";

    /// <summary>The wheel whose travel a coordinate is.</summary>
    public Wheel WheelOf(int coordinate) => coordinate == 0 ? Axle.Left : Axle.Right;
}
