using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;

namespace ClearanceCheck.Inspecting.Evidencing;

/// <summary>Coordinates of poses as the result tells them: travels in mm, angles in degrees.</summary>
internal static class CoordinateCards
{
    /// <summary><c>mm</c> or <c>deg</c>.</summary>
    public static string Unit(AxleModule module, int coordinate) => IsAngle(module, coordinate) ? "deg" : "mm";

    /// <summary>A coordinate's value in that unit.</summary>
    public static double Value(AxleModule module, int coordinate, double raw) => IsAngle(module, coordinate) ? raw * Trigonometry.DegreesPerRadian : raw;

    /// <summary>What it is called: "rear left wheel", "front steering"; the bare name for another.</summary>
    public static string Label(AxleModule module, int coordinate)
    {
        AxleCoordinates known = AxleCoordinates.Of(module);
        string axle = module.Axle.Name;
        return coordinate == known.Left ? $"{axle} left wheel"
            : coordinate == known.Right ? $"{axle} right wheel"
            : coordinate == known.Steer ? $"{axle} steering"
            : module.CoordinateNames[coordinate];
    }

    private static bool IsAngle(AxleModule module, int coordinate) => module.Motion.Box.Coordinates[coordinate].IsAngle;
}
