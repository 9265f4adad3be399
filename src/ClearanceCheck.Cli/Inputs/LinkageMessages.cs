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
                $"A link of the axle {axle} is missing: with both wheels held at a height, {names} can still move.",
                "Type every link, track bar and joint that holds it to the chassis; two that lie on one line or have the same ends hold it only once."),
            LinkageFaultKind.SettingWithoutFreedom => Diagnostic.Error(
                "linkage.link-superfluous",
                Place(axle, fault, places),
                $"A link of the axle {axle} is superfluous: its links and joints already decide the {names}, so that wheel could not move.",
                "Take out the link or joint that is not on the vehicle, or measure again the points of two links that hold against each other."),
            LinkageFaultKind.NoLength => Diagnostic.Error(
                "linkage.no-length",
                Place(axle, fault, places),
                $"The link {names} of the axle {axle} has no length: both its ends are typed as the same point.",
                "Measure both ends."),
            _ => throw new UnreachableException(),
        };
    }

    // The nearest place known: the joint of a free layout, the frame end of a link, else the axle.
    private static SourceSpan Place(string axle, LinkageFault fault, IReadOnlyDictionary<string, SourceSpan> places)
    {
        foreach (string name in fault.Names)
            foreach (string path in new[] { $"axles/{axle}/joints/{name}", $"axles/{axle}/points/{name}-frame" })
                if (places.TryGetValue(path, out SourceSpan exact)) return exact;
        return places[$"axles/{axle}"];
    }
}
