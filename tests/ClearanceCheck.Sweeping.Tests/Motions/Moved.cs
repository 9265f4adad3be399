using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Tests.Cases;

namespace ClearanceCheck.Sweeping.Tests.Motions;

/// <summary>A whole case carried by a rigid motion, or mirrored left to right.</summary>
internal sealed class Moved(RigidMotion by, bool mirrored)
{
    public SweepCase Case(SweepCase pair)
    {
        var system = (FormulaMotion)pair.System;
        var moved = new FormulaMotion(
            system.Box, [.. system.Bodies.Select(b => (b.Parent, b.Moves.Select(Move).ToImmutableArray()))], [.. system.Stops.Select(Stop)]);
        return pair with { System = moved, First = Solid(pair.First), Second = Solid(pair.Second) };
    }

    public Vector3d Point(Vector3d p) => by.Apply(Mirror(p));

    private Vector3d Mirror(Vector3d v) => mirrored ? v with { Y = -v.Y } : v;

    private Vector3d Direction(Vector3d v) => by.ApplyToDirection(Mirror(v));

    // An axis of turning keeps its sense under a rigid motion and loses it in a mirror.
    private Move Move(Move move) => move switch
    {
        Move.Turn turn => turn with { Point = Point(turn.Point), Axis = mirrored ? -Direction(turn.Axis) : Direction(turn.Axis) },
        Move.Slide slide => slide with { Along = Direction(slide.Along) },
        _ => throw new NotSupportedException(),
    };

    private Stop Stop(Stop stop) => stop switch
    {
        HeightStop height => height with { FirstPoint = Point(stop.FirstPoint), SecondPoint = Point(stop.SecondPoint), Axis = Direction(height.Axis) },
        _ => stop with { FirstPoint = Point(stop.FirstPoint), SecondPoint = Point(stop.SecondPoint) },
    };

    private Solid Solid(Solid solid) => solid switch
    {
        CapsuleChain chain => new CapsuleChain(chain.Points.Select(Point), chain.RadiusMm),
        Revolved revolved => new Revolved(Point(revolved.Origin), Direction(revolved.Axis), revolved.Sections, revolved.FacetMm),
        _ => throw new NotSupportedException(),
    };
}
