using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>A solved pose with its factored equations: poses beside it are found without factoring again.</summary>
public sealed class PoseStart
{
    internal PoseStart(RigidMotion[] bodies, double[] loads, double[] settings, SquareMatrix factor, double[] slope) =>
        (Bodies, Loads, Settings, Factor, Slope) = (bodies, loads, settings, factor, slope);

    internal RigidMotion[] Bodies { get; }

    internal double[] Loads { get; }

    internal double[] Settings { get; }

    internal SquareMatrix Factor { get; }

    /// <summary>How the unknowns change with each coordinate, unknown by unknown.</summary>
    internal double[] Slope { get; }
}
