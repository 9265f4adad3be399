using System.Text;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Attitude;
using ClearanceCheck.Kinematics.Driveline;
using ClearanceCheck.Kinematics.Reach;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Cli.Poses;

/// <summary>A pose as text for people.</summary>
internal static class PoseTable
{
    public static string Write(VehiclePose pose)
    {
        var text = new StringBuilder();
        foreach (PoseAnswer axle in pose.Axles) text.Append(Answer(axle)).Append('\n');
        foreach (string taken in pose.Typed.TakenAsZero) text.Append($"N{taken[1..]}.\n");
        text.Append("\nWheels (travel from ride height, bump positive; camber plus leans out, toe plus is toe-in, steer plus is left)\n");
        foreach (WheelPose wheel in pose.Wheels) text.Append(Wheel(wheel));
        if (pose.SolidAxles.Any()) text.Append("\nAxles (against ride height; tilt plus: front side up, caster up)\n");
        foreach ((string name, AxleAttitude axle) in pose.SolidAxles)
            text.Append($"  {name}: {Mm(axle.ShiftMm)} mm to the left, {Mm(axle.ForwardMm)} mm forward, yaw {Deg(axle.YawRad)}, tilt {Deg(axle.TiltRad)}\n");
        text.Append("\nStops (mm left before each ends the travel)\n");
        foreach ((string name, double reserve) in pose.Axles.SelectMany(a => a.Stops))
            text.Append($"  {VisibleText.Typed(name)}: {Mm(reserve)}{(Math.Abs(reserve) <= ExtremePoses.HeldMm ? " (at this stop)" : reserve < 0 ? " (beyond this stop)" : "")}\n");
        if (pose.Spans.Any()) text.Append("\nShocks and shafts (turn: of a shaft's line against the body at each end, since ride height)\n");
        foreach (SpanPose span in pose.Spans)
            text.Append($"  {VisibleText.Typed(span.Part.Id)}: {Mm(span.Attitude.LengthMm)} mm{(span.IsShaft ? $", turn {Deg(span.Attitude.FirstTurnRad)} and {Deg(span.Attitude.SecondTurnRad)}" : "")}\n");
        if (pose.Joints.Any()) text.Append("\nJoints of shafts (angle in space between the flange and the line of the shaft; 0 is straight on)\n");
        foreach ((string joint, JointBend bend) in pose.Joints) text.Append($"  {VisibleText.Typed(joint)}: {Joint(bend)}\n");
        foreach (SpanPose span in pose.Spans.Where(s => s.Shaft?.Splines is not null)) text.Append(Splines(span, span.Shaft!.Splines!.Value));
        text.Append("\nPoints (x forward, y left, z up; mm)\n");
        foreach ((string path, string body, Vector3d at) in pose.Points) text.Append($"  {VisibleText.Typed(path)}: {Place(at)} on {VisibleText.Typed(body)}\n");
        return text.ToString();
    }

    private static string Wheel(WheelPose wheel)
    {
        WheelAttitude at = wheel.Attitude;
        string fender = at.HubToFenderMm is { } height ? $", hub to fender {LengthFormat.Both(Length.FromMillimetres(height))}" : "";
        string caster = at.CasterRad is { } rad ? $", caster {Deg(rad)}" : "";
        return $"  {wheel.Name}: travel {Mm(wheel.TravelMm)} mm, hub at {Place(at.Hub)}{fender}, camber {Deg(at.CamberRad)}, toe {Deg(at.ToeRad)}, steer {Deg(at.SteerRad)}{caster}\n";
    }

    private static string Joint(JointBend bend) => bend.AngleRad is not { } angle ? "not measured: no point ahead of it in the file"
        : bend.Kind == ShaftJointKind.DoubleCardan ? $"{Deg(angle)}, {Deg(angle / 2)} at each cross" : Deg(angle);

    private static string Splines(SpanPose span, SplineEngagement splines) =>
        $"  {VisibleText.Typed(span.Part.Id)}: splines engaged {Mm(splines.EngagedMm)} mm, {Mm(splines.LeftOutMm)} mm left before they part, {Mm(splines.LeftInMm)} mm before they bottom\n";

    private static string Answer(PoseAnswer axle) => $"{axle.Module.Axle.Name}: " + axle.Word switch
    {
        "solved" => "the axle can stand so.",
        "stopped" => $"the axle can't get there: {string.Join("; ", axle.StoppedBy.Select(VisibleText.Typed))} ends the travel before. Places below are those it would have.",
        "unreachable" => "the links can't reach this pose: it is proved that nothing meets their lengths there.",
        _ => "the motion could not be solved here; that does not prove that the axle can't get there.",
    };

    private static string Place(Vector3d at) => $"[{Mm(at.X)}, {Mm(at.Y)}, {Mm(at.Z)}]";

    private static string Deg(double rad) => NumberFormat.Fixed((rad * Trigonometry.DegreesPerRadian) + 0.0, 2) + " deg";

    private static string Mm(double value) => NumberFormat.Fixed(value + 0.0, 2);
}
