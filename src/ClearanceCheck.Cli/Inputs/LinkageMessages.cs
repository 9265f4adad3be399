using System.Diagnostics;
using ClearanceCheck.Documents;
using ClearanceCheck.Mechanics.Linkages;

namespace ClearanceCheck.Cli.Inputs;

/// <summary>Why an axle does not move as it should, in words, with its place in the inspection file.</summary>
internal static class LinkageMessages
{
    public static Diagnostic Of(string axle, LinkageFault fault, IReadOnlyDictionary<string, SourceSpan> places)
    {
        string names = string.Join(" and ", fault.Names);
        return fault.Kind switch
        {
            LinkageFaultKind.Loose => Diagnostic.Error(
                "linkage.link-missing",
                Place(axle, fault, places),
                $"A link of the axle {axle} is missing: with both wheels held at a height{(places.ContainsKey($"axles/{axle}/steering") ? " and the steering held" : "")}, {names} can still move.",
                "Type every link, track bar and joint that holds it to the chassis; two that lie on one line or have the same ends hold it only once."),
            LinkageFaultKind.SettingWithoutFreedom => NoFreedom(axle, names, places),
            LinkageFaultKind.NoLength => Diagnostic.Error(
                "linkage.no-length",
                Place(axle, fault, places),
                $"The joint {names} of the axle {axle} has no length: two of its points are typed as the same one.",
                "Measure both again."),
            _ => throw new UnreachableException(),
        };
    }

    // A setting by the name that the axle's module gives it.
    private static Diagnostic NoFreedom(string axle, string setting, IReadOnlyDictionary<string, SourceSpan> places) => setting switch
    {
        "steering" => Diagnostic.Error(
            "linkage.steering-held",
            places.TryGetValue($"axles/{axle}/steering", out SourceSpan steering) ? steering : places[$"axles/{axle}"],
            $"The steering of the axle {axle} can't move: its links and joints already hold what it would turn.",
            "Take out the rod or joint that is not on the vehicle; of a free layout, the steering moves the second body of the joint that `turns` names."),
        "axle wrap" => Diagnostic.Error(
            "linkage.wrap-held",
            places.TryGetValue($"axles/{axle}/axle-wrap", out SourceSpan wrap) ? wrap : places[$"axles/{axle}"],
            $"The axle {axle} can't wind up: its links and joints already decide how it is turned.",
            "Write `axle-wrap: none`, or take out the link or joint that is not on the vehicle."),
        _ => Diagnostic.Error(
            "linkage.link-superfluous",
            places[$"axles/{axle}"],
            $"A link of the axle {axle} is superfluous: its links and joints already decide the {setting}, so that wheel could not move.",
            "Take out the link or joint that is not on the vehicle, or measure again the points of two links that hold against each other."),
    };

    // The nearest place known: the joint of a free layout, the first point that is named after the joint, else the axle.
    private static SourceSpan Place(string axle, LinkageFault fault, IReadOnlyDictionary<string, SourceSpan> places)
    {
        foreach (string name in fault.Names)
        {
            if (places.TryGetValue($"axles/{axle}/joints/{name}", out SourceSpan exact)) return exact;
            string start = $"axles/{axle}/points/{name}-";
            if (places.Keys.Where(p => p.StartsWith(start, StringComparison.Ordinal)).Order(StringComparer.Ordinal).FirstOrDefault() is { } first) return places[first];
        }

        return places[$"axles/{axle}"];
    }
}
