using System.Globalization;
using ClearanceCheck.Inspecting.Evidencing;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting;

/// <summary>Poses, readings and lengths in words that a mechanic can set and find.</summary>
internal static class Words
{
    /// <summary>A coordinate of a pose: "hub to fender rear left 512 mm (20-3/16 in), 88 mm into bump", "front steering 31 deg to the left".</summary>
    /// <param name="module">The axle.</param>
    /// <param name="coordinate">Which.</param>
    /// <param name="value">Travel in mm, bump plus, or an angle in rad, left plus.</param>
    /// <param name="parameters">The parameter values that the axle was made with.</param>
    public static string Coordinate(AxleModule module, int coordinate, double value, ReadOnlySpan<double> parameters)
    {
        AxleCoordinates known = AxleCoordinates.Of(module);
        if (coordinate != known.Left && coordinate != known.Right) return Other(module, coordinate, value, coordinate == known.Steer);
        (bool isLeft, double travelMm) = (coordinate == known.Left, value);
        string side = $"{module.Axle.Name} {(isLeft ? "left" : "right")}";
        double whole = Math.Round(travelMm, MidpointRounding.AwayFromZero);
        string travel = whole == 0 ? "at ride height" : $"{Millimetres(Math.Abs(whole))} mm {(whole > 0 ? "into bump" : "into droop")}";
        if ((isLeft ? module.Axle.Left : module.Axle.Right).HubToFenderRide is not { } ride) return $"{side} wheel {travel}";
        return $"hub to fender {side} {Length(ride.At(parameters) - travelMm)}, {travel}";
    }

    private static string Other(AxleModule module, int coordinate, double value, bool isSteering)
    {
        double shown = CoordinateCards.Value(module, coordinate, value);
        string label = CoordinateCards.Label(module, coordinate), unit = CoordinateCards.Unit(module, coordinate);
        if (!isSteering) return $"{label} {NumberFormat.UpTo(shown, 1)} {unit}";
        string angle = NumberFormat.UpTo(Math.Abs(shown), 1);
        return angle == "0" ? $"{label} straight ahead" : $"{label} {angle} {unit} to the {(shown > 0 ? "left" : "right")}";
    }

    /// <summary>A reading's path in words: "point 3 of the path of Rear line".</summary>
    public static string Reading(Vehicle vehicle, string path)
    {
        string[] steps = path.Split('/');
        return steps switch
        {
            ["parts", var id, "path", var number] => $"point {number} of the path of {PartName(vehicle, id)}",
            ["parts", var id, .. var rest] => $"{Plain(string.Join(' ', rest))} of {PartName(vehicle, id)}",
            ["axles", var axle, "points", var point] => $"{Plain(point)} of the {axle} axle",
            ["axles", var axle, .. var rest] => $"{Plain(string.Join(' ', rest))} of the {axle} axle",
            ["states", var state, "hub-to-fender", var corner] => $"hub to fender {Plain(corner)} ({state})",
            _ => path,
        };
    }

    /// <summary>A stop by the name of its part: "Left rear shock at full length".</summary>
    public static string Stop(Vehicle vehicle, string name)
    {
        Part? part = vehicle.Parts.FirstOrDefault(p => name.StartsWith(p.Id + " ", StringComparison.Ordinal));
        return part is null ? name : part.Name + name[part.Id.Length..];
    }

    public static string Length(double millimetres) => LengthFormat.Both(Units.Length.FromMillimetres(millimetres));

    private static string Millimetres(double whole) => whole.ToString("0", CultureInfo.InvariantCulture);

    private static string PartName(Vehicle vehicle, string id) => vehicle.Parts.FirstOrDefault(p => p.Id == id)?.Name ?? id;

    private static string Plain(string words) => words.Replace('-', ' ');
}
