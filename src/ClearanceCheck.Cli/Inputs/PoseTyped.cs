using System.Collections.Immutable;
using ClearanceCheck.Documents;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Reach;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Units;

namespace ClearanceCheck.Cli.Inputs;

/// <summary>A pose as typed behind <c>--at</c>: <c>rear.left=80mm,rear.right=-60mm</c>, <c>front.steer=20deg</c>, <c>rear=full-droop</c>.</summary>
/// <param name="ByName">Values by coordinate: travel in mm, angles in rad.</param>
/// <param name="Missing">Coordinates that were not typed and count as 0.</param>
internal sealed record PoseTyped(IReadOnlyDictionary<string, double> ByName, IReadOnlyList<PoseCoordinate> Missing)
{
    /// <summary>What is taken for coordinates that were not typed: "not typed and taken as 0 mm, ride height: rear.right".</summary>
    public IEnumerable<string> TakenAsZero
    {
        get
        {
            foreach ((bool isAngle, string zero) in new[] { (false, "0 mm, ride height"), (true, "0 deg, straight ahead") })
            {
                string[] names = [.. Missing.Where(c => c.IsAngle == isAngle).Select(c => c.Name)];
                if (names.Length > 0) yield return $"not typed and taken as {zero}: {string.Join(", ", names)}";
            }
        }
    }

    /// <summary>Reads a pose; all faults at once.</summary>
    /// <param name="text">What was typed; null for ride height.</param>
    /// <param name="motion">The vehicle whose coordinates are meant.</param>
    public static (PoseTyped? Pose, IReadOnlyList<InputFault> Faults) Read(string? text, VehicleMotion motion)
    {
        PoseCoordinate[] known = [.. motion.Modules.SelectMany(m => m.Motion.Box.Coordinates)];
        var values = new SortedDictionary<string, double>(StringComparer.Ordinal);
        var faults = new List<InputFault>();
        foreach (string item in (text ?? "").Split(',', StringSplitOptions.TrimEntries))
            if (item.Length > 0 && ReadItem(item, motion, known, values) is { } fault) faults.Add(fault);
        if (text is not null && values.Count + faults.Count == 0) faults.Add(new InputFault("No pose is typed behind --at.", $"Write for instance --at {Example(known[0])}."));
        return faults.Count > 0 ? (null, faults) : (new PoseTyped(values, [.. known.Where(c => !values.ContainsKey(c.Name))]), faults);
    }

    /// <summary>The coordinates of one module, mm or rad.</summary>
    public double[] Of(AxleModule module) => [.. module.CoordinateNames.Select(n => ByName.TryGetValue(n, out double value) ? value : 0)];

    private static InputFault? ReadItem(string item, VehicleMotion motion, PoseCoordinate[] known, SortedDictionary<string, double> values)
    {
        string shown = VisibleText.Of(item);
        int sign = item.IndexOf('=', StringComparison.Ordinal);
        // A vehicle with one axle needs no axle's name.
        AxleModule? only = motion.Modules.Length == 1 ? motion.Modules[0] : null;
        if (sign < 0)
        {
            return only is not null && ExtremePoses.NamesOf(only).Contains(item)
                ? ReadNamed(item, only, values)
                : new InputFault($"`{shown}` says no coordinate and its travel.", $"Write for instance {Example(known[0])}; a comma stands only between two of them.");
        }

        string typed = item[..sign].Trim(), value = item[(sign + 1)..].Trim();
        if (motion.Modules.FirstOrDefault(m => m.Axle.Name == typed) is { } axle) return ReadNamed(value, axle, values);
        string name = only is null || known.Any(c => c.Name == typed) ? typed : $"{only.Axle.Name}.{typed}";
        if (known.Any(c => c.Name == name)) return ReadValue(known.First(c => c.Name == name), value, values);
        ImmutableArray<string> names = [.. known.Select(c => c.Name)];
        return new InputFault($"There is no coordinate {VisibleText.Of(typed)}.", NearestWord.Find(typed, names) is { } nearest ? $"Did you mean {nearest}?" : $"Known are {string.Join(", ", names)}.");
    }

    private static InputFault? ReadValue(PoseCoordinate coordinate, string text, SortedDictionary<string, double> values)
    {
        ParseFault? fault;
        double value;
        if (coordinate.IsAngle)
        {
            if (!QuantityText.ParseAngle(text).TryGet(out Angle angle, out fault)) return new InputFault($"{coordinate.Name}: {fault.Message}", fault.Help);
            value = angle.Radians;
        }
        else
        {
            if (!LengthText.Parse(text, null).TryGet(out LengthReading length, out fault)) return new InputFault($"{coordinate.Name}: {fault.Message}", fault.Help);
            value = length.Length.Millimetres;
        }

        return Add(values, coordinate.Name, value);
    }

    // A named pose is worked out with the stops as they are, and sets all coordinates of its axle.
    private static InputFault? ReadNamed(string name, AxleModule module, SortedDictionary<string, double> values)
    {
        ImmutableArray<string> names = ExtremePoses.NamesOf(module);
        if (!names.Contains(name))
        {
            string known = $"Known are {string.Join(", ", names)}; a single wheel is typed as {Example(module.Motion.Box.Coordinates[0])}.";
            return new InputFault($"The {module.Axle.Name} axle has no pose named {VisibleText.Of(name)}.", NearestWord.Find(name, names) is { } nearest ? $"Did you mean {nearest}?" : known);
        }

        ExtremePose pose = ExtremePoses.Find(module, name)!;
        InputFault? fault = null;
        for (int d = 0; d < pose.Pose.Length; d++) fault ??= Add(values, module.CoordinateNames[d], pose.Pose[d]);
        return fault;
    }

    private static InputFault? Add(SortedDictionary<string, double> values, string name, double value) =>
        values.TryAdd(name, value) ? null : new InputFault($"The coordinate {name} is typed twice.", "Leave one out; a pose by its name sets all coordinates of its axle.");

    private static string Example(PoseCoordinate coordinate) => $"{coordinate.Name}={(coordinate.IsAngle ? "20deg" : "80mm")}";
}
