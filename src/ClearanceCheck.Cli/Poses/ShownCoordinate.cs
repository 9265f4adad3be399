using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Cli.Poses;

/// <summary>A coordinate of a pose as it is shown: travels in mm, angles in degrees.</summary>
/// <param name="Unit"><c>mm</c> or <c>deg</c>.</param>
internal sealed record ShownCoordinate(string Name, double Value, string Unit)
{
    /// <summary>Turns mm or rad into what is shown.</summary>
    public static ShownCoordinate Of(PoseCoordinate coordinate, double value) => coordinate.IsAngle
        ? new ShownCoordinate(coordinate.Name, value * Trigonometry.DegreesPerRadian, "deg")
        : new ShownCoordinate(coordinate.Name, value, "mm");
}
