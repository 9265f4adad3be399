using ClearanceCheck.Documents;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Units;

namespace ClearanceCheck.Cli.Inputs;

/// <summary>A pose as typed behind <c>--at</c>: <c>rear.left=80mm,rear.right=-60mm</c>.</summary>
/// <param name="ByName">Travel by coordinate, mm.</param>
/// <param name="Missing">Coordinates that were not typed and count as 0.</param>
internal sealed record PoseTyped(IReadOnlyDictionary<string, double> ByName, IReadOnlyList<string> Missing)
{
    /// <summary>Reads a pose; all faults at once.</summary>
    /// <param name="text">What was typed; null for ride height.</param>
    /// <param name="motion">The vehicle whose coordinates are meant.</param>
    public static (PoseTyped? Pose, IReadOnlyList<InputFault> Faults) Read(string? text, VehicleMotion motion)
    {
        string[] known = [.. motion.Modules.SelectMany(m => m.CoordinateNames)];
        var values = new SortedDictionary<string, double>(StringComparer.Ordinal);
        var faults = new List<InputFault>();
        foreach (string item in (text ?? "").Split(',', StringSplitOptions.TrimEntries))
            if (item.Length > 0 && ReadItem(item, known, values) is { } fault) faults.Add(fault);
        if (text is not null && values.Count + faults.Count == 0) faults.Add(new InputFault("No pose is typed behind --at.", $"Write for instance --at {known[0]}=80mm."));
        return faults.Count > 0 ? (null, faults) : (new PoseTyped(values, [.. known.Where(n => !values.ContainsKey(n))]), faults);
    }

    /// <summary>The coordinates of one module, mm or rad.</summary>
    public double[] Of(AxleModule module) => [.. module.CoordinateNames.Select(n => ByName.TryGetValue(n, out double value) ? value : 0)];

    private static InputFault? ReadItem(string item, string[] known, SortedDictionary<string, double> values)
    {
        string shown = VisibleText.Of(item);
        int sign = item.IndexOf('=', StringComparison.Ordinal);
        if (sign < 0) return new InputFault($"`{shown}` says no coordinate and its travel.", $"Write for instance {known[0]}=80mm; a comma stands only between two of them.");
        string typed = item[..sign].Trim();
        // A vehicle with one axle needs no axle's name.
        string name = known.Contains(typed) || known.Length > 2 ? typed : known.FirstOrDefault(n => n.EndsWith("." + typed, StringComparison.Ordinal)) ?? typed;
        if (!known.Contains(name))
            return new InputFault($"There is no coordinate {VisibleText.Of(typed)}.", NearestWord.Find(typed, known) is { } nearest ? $"Did you mean {nearest}?" : $"Known are {string.Join(", ", known)}.");
        if (!LengthText.Parse(item[(sign + 1)..].Trim(), null).TryGet(out LengthReading length, out ParseFault? fault)) return new InputFault($"{name}: {fault.Message}", fault.Help);
        return values.TryAdd(name, length.Length.Millimetres) ? null : new InputFault($"The coordinate {name} is typed twice.", "Leave one out.");
    }
}
