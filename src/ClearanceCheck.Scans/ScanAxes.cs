using System.Diagnostics;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Scans;

/// <summary>The words for the directions of a file's axes.</summary>
public static class ScanAxes
{
    /// <summary>The words, in the order they are offered.</summary>
    public static IReadOnlyList<string> Words { get; } = ["+x", "-x", "+y", "-y", "+z", "-z"];

    /// <summary>The direction that a word stands for, or null.</summary>
    public static ScanAxis? FromWord(string word) => word switch
    {
        "+x" => ScanAxis.PlusX,
        "-x" => ScanAxis.MinusX,
        "+y" => ScanAxis.PlusY,
        "-y" => ScanAxis.MinusY,
        "+z" => ScanAxis.PlusZ,
        "-z" => ScanAxis.MinusZ,
        _ => null,
    };

    /// <summary>The word for a direction.</summary>
    public static string Word(this ScanAxis axis) => Words[(int)axis];

    /// <summary>The unit vector of a direction, in the file's axes.</summary>
    internal static Vector3d Direction(this ScanAxis axis) => axis switch
    {
        ScanAxis.PlusX => Vector3d.UnitX,
        ScanAxis.MinusX => -Vector3d.UnitX,
        ScanAxis.PlusY => Vector3d.UnitY,
        ScanAxis.MinusY => -Vector3d.UnitY,
        ScanAxis.PlusZ => Vector3d.UnitZ,
        ScanAxis.MinusZ => -Vector3d.UnitZ,
        _ => throw new UnreachableException(),
    };
}
