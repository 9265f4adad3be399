using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.OverCentres;

/// <summary>An arm that turns about a line and holds the end of a rod.</summary>
/// <param name="Body">The number of its body.</param>
/// <param name="Pivot">A point of the line, in the body's coordinates, mm.</param>
/// <param name="Line">Along the line, of any length.</param>
internal readonly record struct TurningArm(int Body, Vector3d Pivot, Vector3d Line)
{
    /// <summary>True for a body that is such an arm in some layout or linkage: a pitman or idler arm, a knuckle, an arm of an anti-roll bar.</summary>
    public static bool IsOne(string body)
    {
        string own = body[(body.LastIndexOf('/') + 1)..];
        return own is "pitman-arm" or "idler-arm" || own.StartsWith("knuckle-", StringComparison.Ordinal) || own.StartsWith("anti-roll-bar-", StringComparison.Ordinal);
    }

    /// <summary>The arm that a body is; null where the line it turns about is not known.</summary>
    public static TurningArm? Of(AxleModule module, string body, ReadOnlySpan<double> parameters)
    {
        string own = body[(body.LastIndexOf('/') + 1)..];
        (string From, string To)? line = own switch
        {
            "pitman-arm" => ("pitman-pivot", "pitman-axis"),
            "idler-arm" => ("idler-pivot", "idler-axis"),
            _ when own.StartsWith("anti-roll-bar-", StringComparison.Ordinal) => ("bar-pivot-right", "bar-pivot-left"),
            _ => LayoutCatalogue.Of(module.Axle).KingpinOf(module.Axle, own.EndsWith("left", StringComparison.Ordinal)) is var (lower, upper, _) ? (lower, upper) : null,
        };
        if (line is not { } points || !module.Axle.Points.TryGetValue(points.From, out MeasuredPoint from) || !module.Axle.Points.TryGetValue(points.To, out MeasuredPoint to)) return null;
        Vector3d pivot = from.At(parameters);
        return new TurningArm(module.Bodies.IndexOf(body), pivot, to.At(parameters) - pivot);
    }

    /// <summary>From the line to a point, square to the line.</summary>
    public Vector3d Reach(Vector3d point)
    {
        Vector3d along = Line.NormalizedOr(Vector3d.UnitZ), arm = point - Pivot;
        return arm - (Vector3d.Dot(arm, along) * along);
    }
}
