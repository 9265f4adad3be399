using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping.Vectors;

/// <summary>Extremes of angles over all reachable poses of a moving system. Values, bounds and the lengths of the settings are in degrees.</summary>
public static class VectorSweep
{
    /// <summary>The largest angle in space between an axis on one body and a vector that moves; <see cref="Extreme.Bound"/> lies above it. A quarter turn stands for all beyond.</summary>
    /// <param name="system">What moves.</param>
    /// <param name="frameBody">The body that carries the axis.</param>
    /// <param name="axis">In its coordinates.</param>
    /// <param name="mark">Where the joint is, in its coordinates.</param>
    /// <param name="vector">What moves against it, mm.</param>
    /// <param name="settings">In degrees where they say mm; the ceiling and the floor are angles.</param>
    public static Extreme LargestBend(IMovingSystem system, int frameBody, Vector3d axis, Vector3d mark, SweptVector vector, SweepSettings settings)
    {
        Extreme least = Sweep.Run(system, new BendObjective(frameBody, axis, mark, vector), Sweep.Negative(settings));
        return least with { Value = -least.Value, Bound = -least.Bound, Basins = [.. least.Basins.Select(b => b with { Value = -b.Value })] };
    }

    /// <summary>The largest angle by which a vector that moves leans out of the plane square to an axis, towards where the axis points; <see cref="Extreme.Bound"/> lies above it.</summary>
    /// <param name="system">What moves.</param>
    /// <param name="frameBody">The body that carries the axis.</param>
    /// <param name="axis">In its coordinates.</param>
    /// <param name="mark">Where the joint is, in its coordinates.</param>
    /// <param name="vector">What moves against it, mm.</param>
    /// <param name="settings">In degrees where they say mm.</param>
    public static Extreme LargestLean(IMovingSystem system, int frameBody, Vector3d axis, Vector3d mark, SweptVector vector, SweepSettings settings)
    {
        Extreme least = Sweep.Run(system, new LeanObjective(frameBody, axis, mark, vector), Sweep.Negative(settings));
        return least with { Value = -least.Value, Bound = -least.Bound, Basins = [.. least.Basins.Select(b => b with { Value = -b.Value })] };
    }

    /// <summary>The least sum of angles in planes that one body carries.</summary>
    /// <param name="system">What moves.</param>
    /// <param name="frameBody">The body that carries the planes.</param>
    /// <param name="angles">What adds up, each with its factor.</param>
    /// <param name="mark">Where the first vector is shown from, in the body's coordinates.</param>
    /// <param name="settings">In degrees where they say mm.</param>
    public static Extreme LeastAngle(IMovingSystem system, int frameBody, ImmutableArray<PlaneAngle> angles, Vector3d mark, SweepSettings settings) =>
        Sweep.Run(system, new PlaneAngleObjective(frameBody, angles, mark), settings);

    /// <summary>The least distance between a point of one body and a point of another, mm.</summary>
    public static Extreme ShortestChord(IMovingSystem system, int firstBody, Vector3d first, int secondBody, Vector3d second, SweepSettings settings) =>
        Sweep.Run(system, new NearObjective(firstBody, first, SweptVector.Between(firstBody, first, secondBody, second)), settings);
}
