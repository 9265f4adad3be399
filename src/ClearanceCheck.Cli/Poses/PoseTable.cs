using System.Text;
using ClearanceCheck.Geometry;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Units;

namespace ClearanceCheck.Cli.Poses;

/// <summary>A pose as text for people.</summary>
internal static class PoseTable
{
    public static string Write(VehiclePose pose)
    {
        var text = new StringBuilder();
        foreach (PoseAnswer axle in pose.Axles) text.Append(Answer(axle)).Append('\n');
        if (pose.Typed.Missing.Count > 0) text.Append($"Not typed and taken as 0 mm, ride height: {string.Join(", ", pose.Typed.Missing)}.\n");
        text.Append("\nWheels (travel from ride height, bump positive)\n");
        foreach ((string name, Vector3d hub, double travel, double? hubToFender) in pose.Wheels)
            text.Append($"  {name}: travel {Mm(travel)} mm, hub at {Place(hub)}{(hubToFender is { } height ? $", hub to fender {LengthFormat.Both(Length.FromMillimetres(height))}" : "")}\n");
        text.Append("\nStops (mm left before each ends the travel)\n");
        foreach ((string name, double reserve) in pose.Axles.SelectMany(a => a.Stops)) text.Append($"  {VisibleText.Typed(name)}: {Mm(reserve)}\n");
        text.Append("\nPoints (x forward, y left, z up; mm)\n");
        foreach ((string path, string body, Vector3d at) in pose.Points) text.Append($"  {VisibleText.Typed(path)}: {Place(at)} on {VisibleText.Typed(body)}\n");
        return text.ToString();
    }

    private static string Answer(PoseAnswer axle) => $"{axle.Module.Axle.Name}: " + axle.Word switch
    {
        "solved" => "the axle can stand so.",
        "stopped" => $"the axle can't get there: {string.Join("; ", axle.StoppedBy.Select(VisibleText.Typed))} ends the travel before. Places below are those it would have.",
        "unreachable" => "the links can't reach this pose: it is proved that nothing meets their lengths there.",
        _ => "the motion could not be solved here; that does not prove that the axle can't get there.",
    };

    private static string Place(Vector3d at) => $"[{Mm(at.X)}, {Mm(at.Y)}, {Mm(at.Z)}]";

    private static string Mm(double value) => NumberFormat.Fixed(value + 0.0, 2);
}
