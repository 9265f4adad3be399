using System.Text.Json;
using ClearanceCheck.Cli.Outputs;
using ClearanceCheck.Geometry;

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
            for (int d = 0; d < axle.Pose.Length; d++) JsonText.Number(json, axle.Module.CoordinateNames[d], axle.Pose[d]);
        json.WriteEndObject();
        JsonText.Texts(json, "takenAsZero", pose.Typed.Missing);
        WriteBodies(json, pose);
        WritePoints(json, pose);
        WriteWheels(json, pose);
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
        foreach ((string name, Vector3d hub, double travel, double? hubToFender) in pose.Wheels)
        {
            json.WriteStartObject(name);
            json.WritePropertyName("hub");
            JsonText.Point(json, hub);
            JsonText.Number(json, "travel", travel);
            JsonText.Number(json, "hubToFender", hubToFender);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }
}
