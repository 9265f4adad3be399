using System.Text.Json;
using ClearanceCheck.Cli.Outputs;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Attitude;
using ClearanceCheck.Kinematics.Driveline;

namespace ClearanceCheck.Cli.Poses;

/// <summary>A pose as machine output; its schema is <c>pose</c>.</summary>
internal static class PoseJson
{
    private const int Format = 1;

    public static string Write(VehiclePose pose) => JsonText.Write(json =>
    {
        json.WriteStartObject();
        json.WriteNumber("format", Format);
        json.WriteString("answer", pose.Word);
        JsonText.Texts(json, "stoppedBy", pose.Axles.SelectMany(a => a.StoppedBy));
        json.WriteStartObject("pose");
        foreach (PoseAnswer axle in pose.Axles)
            foreach (ShownCoordinate at in axle.Module.Motion.Box.Coordinates.Zip(axle.Pose, ShownCoordinate.Of)) JsonText.Number(json, at.Name, at.Value);
        json.WriteEndObject();
        JsonText.Texts(json, "takenAsZero", pose.Typed.Missing.Select(c => c.Name));
        WriteBodies(json, pose);
        WritePoints(json, pose);
        WriteWheels(json, pose);
        WriteAxles(json, pose);
        WriteSpans(json, pose);
        json.WriteStartObject("stops");
        foreach ((string name, double reserve) in pose.Axles.SelectMany(a => a.Stops)) JsonText.Number(json, name, reserve);
        json.WriteEndObject();
        json.WriteEndObject();
    });

    private static void WriteBodies(Utf8JsonWriter json, VehiclePose pose)
    {
        json.WriteStartObject("bodies");
        foreach ((string name, RigidMotion at) in pose.Bodies)
        {
            json.WriteStartObject(name);
            json.WritePropertyName("translation");
            JsonText.Point(json, at.Translation);
            json.WritePropertyName("rotation");
            // Of the two quaternions that say the same rotation, the one with a positive first number.
            int sign = at.Rotation.W < 0 ? -1 : 1;
            JsonText.Numbers(json, sign * at.Rotation.W, sign * at.Rotation.X, sign * at.Rotation.Y, sign * at.Rotation.Z);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WritePoints(Utf8JsonWriter json, VehiclePose pose)
    {
        json.WriteStartObject("points");
        foreach ((string path, _, Vector3d at) in pose.Points)
        {
            json.WritePropertyName(path);
            JsonText.Point(json, at);
        }

        json.WriteEndObject();
    }

    private static void WriteWheels(Utf8JsonWriter json, VehiclePose pose)
    {
        json.WriteStartObject("wheels");
        foreach (WheelPose wheel in pose.Wheels)
        {
            json.WriteStartObject(wheel.Name);
            json.WritePropertyName("hub");
            JsonText.Point(json, wheel.Attitude.Hub);
            json.WritePropertyName("axis");
            JsonText.Point(json, wheel.Attitude.Axis);
            JsonText.Number(json, "travel", wheel.TravelMm);
            JsonText.Number(json, "hubToFender", wheel.Attitude.HubToFenderMm);
            JsonText.Number(json, "camber", Degrees(wheel.Attitude.CamberRad));
            JsonText.Number(json, "toe", Degrees(wheel.Attitude.ToeRad));
            JsonText.Number(json, "steer", Degrees(wheel.Attitude.SteerRad));
            JsonText.Number(json, "caster", Degrees(wheel.Attitude.CasterRad));
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteAxles(Utf8JsonWriter json, VehiclePose pose)
    {
        json.WriteStartObject("axles");
        foreach ((string axle, AxleAttitude attitude) in pose.SolidAxles)
        {
            json.WriteStartObject(axle);
            JsonText.Number(json, "shift", attitude.ShiftMm);
            JsonText.Number(json, "forward", attitude.ForwardMm);
            JsonText.Number(json, "yaw", Degrees(attitude.YawRad));
            JsonText.Number(json, "tilt", Degrees(attitude.TiltRad));
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteSpans(Utf8JsonWriter json, VehiclePose pose)
    {
        json.WriteStartObject("lengths");
        foreach (SpanPose span in pose.Spans) JsonText.Number(json, span.Part.Id, span.Attitude.LengthMm);
        json.WriteEndObject();
        json.WriteStartObject("turns");
        foreach (SpanPose span in pose.Spans.Where(s => s.IsShaft))
        {
            json.WriteStartObject(span.Part.Id);
            JsonText.Number(json, "first", Degrees(span.Attitude.FirstTurnRad));
            JsonText.Number(json, "second", Degrees(span.Attitude.SecondTurnRad));
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteStartObject("joints");
        foreach ((string joint, JointBend bend) in pose.Joints) JsonText.Number(json, joint, Degrees(bend.AngleRad));
        json.WriteEndObject();
        json.WriteStartObject("shafts");
        foreach (SpanPose span in pose.Spans) WriteShaft(json, span);
        json.WriteEndObject();
    }

    private static void WriteShaft(Utf8JsonWriter json, SpanPose span)
    {
        if (span.Shaft is not { } shaft) return;
        json.WriteStartObject(span.Part.Id);
        JsonText.Number(json, "slip", shaft.SlipMm);
        JsonText.Number(json, "engaged", shaft.Splines?.EngagedMm);
        JsonText.Number(json, "leftOut", shaft.Splines?.LeftOutMm);
        JsonText.Number(json, "leftIn", shaft.Splines?.LeftInMm);
        JsonText.Number(json, "equivalent", Degrees(shaft.EquivalentRad));
        json.WriteEndObject();
    }

    private static double? Degrees(double? rad) => rad * Trigonometry.DegreesPerRadian;
}
