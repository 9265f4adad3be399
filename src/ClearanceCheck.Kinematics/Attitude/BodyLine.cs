using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Kinematics.Attitude;

/// <summary>Places and directions of an axle's bodies in a pose.</summary>
internal static class BodyLine
{
    /// <summary>The place of a body by its name, vehicle frame; what is not the axle's own stands with the chassis.</summary>
    public static RigidMotion Of(AxleModule module, SolvedPose pose, string body) => pose[Math.Max(0, module.Bodies.IndexOf(body))];

    /// <summary>The angle between two directions, rad, 0 to pi: exact for small angles too.</summary>
    public static double Angle(Vector3d a, Vector3d b) => Trigonometry.Atan2(Vector3d.Cross(a, b).Length, Vector3d.Dot(a, b));
}
