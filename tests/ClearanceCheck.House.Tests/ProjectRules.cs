using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace ClearanceCheck.House.Tests;

/// <summary>What projects may say; each rule lists what breaks it.</summary>
internal static partial class ProjectRules
{
    /// <summary>Rooms that a room may refer to; data moves one way.</summary>
    public static IReadOnlyDictionary<string, string[]> Rooms { get; } = new Dictionary<string, string[]>
    {
        ["Units"] = [],
        ["Documents"] = ["Units"],
        ["Geometry"] = [],
        ["Scans"] = ["Units", "Documents", "Geometry"],
        ["Mechanics"] = ["Geometry"],
        ["Sweeping"] = ["Geometry", "Mechanics"],
        ["Vehicles"] = ["Units", "Geometry"],
        ["Kinematics"] = ["Units", "Geometry", "Mechanics", "Vehicles"],
        ["Files"] = ["Units", "Documents", "Geometry", "Scans", "Mechanics", "Vehicles", "Kinematics"],
        ["Quantities"] = ["Units", "Geometry", "Mechanics", "Sweeping", "Vehicles", "Kinematics"],
        ["Rules"] = ["Units", "Documents", "Vehicles", "Quantities"],
        ["Inspecting"] = ["Units", "Geometry", "Mechanics", "Sweeping", "Vehicles", "Kinematics", "Quantities", "Rules"],
        ["Reporting"] = ["Units", "Geometry", "Sweeping", "Rules", "Inspecting"],
        ["Cli"] = ["Units", "Documents", "Geometry", "Scans", "Mechanics", "Sweeping", "Vehicles", "Kinematics", "Files", "Quantities", "Rules", "Inspecting", "Reporting"],
    };

    /// <summary>Project paths that stand on one side only.</summary>
    public static IEnumerable<string> NotInBoth(IEnumerable<string> projects, string solution)
    {
        HashSet<string> listed = [.. SolutionEntry().Matches(solution).Select(m => m.Groups[1].Value.Replace('\\', '/'))];
        listed.SymmetricExceptWith(projects);
        return listed.Order(StringComparer.Ordinal);
    }

    /// <summary>Rooms that a project refers to against the table, or does not refer to though the table says so.</summary>
    public static IEnumerable<string> WrongReferences(string room, XDocument project)
    {
        if (!Rooms.TryGetValue(room, out string[]? allowed)) return [$"{room} is not in the table"];
        HashSet<string> found = [.. project.Descendants("ProjectReference").Select(r => RoomOf((string?)r.Attribute("Include") ?? ""))];
        found.SymmetricExceptWith(allowed);
        return found.Order(StringComparer.Ordinal).Select(other => $"{room} - {other}");
    }

    /// <summary>Versions of packages outside the one file that holds them.</summary>
    public static IEnumerable<string> Versions(XDocument project) =>
        project.Descendants()
            .Where(e => e.Name.LocalName is "PackageReference" or "PackageVersion" or "GlobalPackageReference")
            .Where(e => e.Name.LocalName != "PackageReference" || e.Attributes().Concat<object>(e.Elements()).Select(Name).Any(n => n.StartsWith("Version", StringComparison.Ordinal)))
            .Select(e => e.ToString());

    public static string RoomOf(string path) => Path.GetFileNameWithoutExtension(path.Replace('\\', '/')).Replace("ClearanceCheck.", "", StringComparison.Ordinal);

    private static string Name(object node) => node is XAttribute attribute ? attribute.Name.LocalName : ((XElement)node).Name.LocalName;

    [GeneratedRegex("""= "[^"]*", "([^"]*\.csproj)",""")]
    private static partial Regex SolutionEntry();
}
