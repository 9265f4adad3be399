using System.Collections.Immutable;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>The points of a layout that may turn in rubber: they are tightened while the vehicle stands at ride height, never hanging.</summary>
/// <remarks>
/// Balls of a steering linkage and of wishbones are none. A link whose ends are balls has no rubber to twist; the audit asks all the same, since the
/// file does not say what is in the eye, and a tightened ball does no harm.
/// </remarks>
public static class BushedPivots
{
    private static readonly string[] Ends = ["-frame", "-axle", "-axle-front", "-axle-rear", "-pivot", "-front", "-rear", "-spring"];

    private static readonly string[] Links = ["lower-link", "upper-link", "track-bar", "radius-arm", "lower-arm", "upper-arm", "beam-pivot", "spring-eye", "shackle"];

    /// <summary>The pivots that the axle's file has, by their points' names in the layout's order.</summary>
    public static ImmutableArray<LayoutPoint> Of(Axle axle) => LayoutCatalogue.Find(axle.Layout) is { } layout
        ? [.. layout.Points.Where(p => IsBushed(p.Name) && axle.Points.ContainsKey(p.Name))]
        : [];

    private static bool IsBushed(string name) =>
        Array.Exists(Links, l => name.StartsWith(l, StringComparison.Ordinal))
        && (name.StartsWith("beam-pivot", StringComparison.Ordinal) || Array.Exists(Ends, e => name.EndsWith(e, StringComparison.Ordinal)));
}
