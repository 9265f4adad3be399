using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>What the sizes of parts can be at all, and how well they are known.</summary>
internal static class Sizes
{
    public static LengthRange Diameter { get; } = Range(0.5, 1000, "an outside diameter");

    public static LengthRange Thickness { get; } = Range(0.3, 200, "a thickness");

    public static LengthRange Wall { get; } = Range(0.5, 100, "the thickness of a wall");

    public static LengthRange Wire { get; } = Range(1, 60, "the thickness of a spring's wire");

    public static LengthRange Radius { get; } = Range(0, 1500, "a radius");

    public static LengthRange Along { get; } = Range(-5000, 5000, "a place along an axis");

    public static LengthRange TubeLength { get; } = Range(10, 5000, "the length of a tube");

    public static LengthRange StopLength { get; } = Range(1, 2000, "a length of a stop");

    /// <summary>How well a size is known when nobody typed it.</summary>
    public static Within Default { get; } = new(Defaults.SizeMm, true, "a size from a caliper or a maker");

    public static LengthRange Range(double leastMm, double mostMm, string what) =>
        new(Length.FromMillimetres(leastMm), Length.FromMillimetres(mostMm), what);
}
