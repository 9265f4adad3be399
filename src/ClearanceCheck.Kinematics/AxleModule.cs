using System.Collections.Immutable;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics;

/// <summary>One axle in motion: its linkage, its pose box and the stops that cut it.</summary>
/// <param name="Bodies">Names by number; the first is the chassis.</param>
public sealed record AxleModule(Axle Axle, ImmutableArray<string> Bodies, LinkageMotion Motion)
{
    /// <summary>Names of the coordinates in reports and commands: <c>rear.left</c>, <c>rear.right</c>.</summary>
    public ImmutableArray<string> CoordinateNames => [.. Motion.Box.Coordinates.Select(c => c.Name)];

    /// <summary>What the typed end of a coordinate's range is called where it, and no stop, ends a pose.</summary>
    /// <param name="coordinate">Which.</param>
    /// <param name="high">True for its upper end: bump, left, nose down.</param>
    public string EndOfTravel(int coordinate, bool high)
    {
        AxleCoordinates known = AxleCoordinates.Of(this);
        if (coordinate == known.Steer) return $"{Steered} {(high ? "left" : "right")} {(TurnsWheels ? "lock" : "end")}";
        if (coordinate == known.Wrap) return $"{Axle.Name} axle wound up, nose {(high ? "down" : "up")}";
        return $"end of the travel looked at, {CoordinateNames[coordinate]} {(high ? "bump" : "droop")}";
    }

    // Where knuckles hang on balls the coordinate is what moves their rods, and which way the wheels go with it is the linkage's affair.
    private bool TurnsWheels => LayoutCatalogue.Of(Axle).KingpinBody(true) is not null && Axle.Steering?.Joint is null;

    private string Steered => TurnsWheels ? $"{Axle.Name} wheels at their"
        : AxleCoordinates.Of(this).Steer is { } steer && Motion.Box.Coordinates[steer].IsAngle ? $"{Axle.Name} steering arm at its"
        : $"{Axle.Name} rack at its";

    /// <summary>True for a wheel's travel, whose ends are how far somebody looked; false for steering and wind-up, whose ends are real.</summary>
    public bool IsTravel(int coordinate) => AxleCoordinates.Of(this) is var known && (coordinate == known.Left || coordinate == known.Right);

    /// <summary>The name of the body that a link's, shock's or shaft's tube makes: it stays joined at one end and points to the other.</summary>
    public static string FollowerName(string partId, bool atFirst) => $"{partId}/{(atFirst ? "first" : "second")}";
}
