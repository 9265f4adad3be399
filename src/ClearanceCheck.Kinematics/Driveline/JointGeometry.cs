using ClearanceCheck.Geometry;

namespace ClearanceCheck.Kinematics.Driveline;

/// <summary>A shaft's joint, in the frame of the body that carries it: its angle is a function of where the body at the shaft's other end stands, and of nothing else.</summary>
/// <param name="Centre">The middle of the joint, mm, in the frame of its own body.</param>
/// <param name="Axis">Along the flange or output it is bolted to, in the frame of its own body; of any length, on the side on which the shaft is.</param>
/// <param name="FarCentre">The middle of the joint at the shaft's other end, mm, in the frame of the body there.</param>
public readonly record struct JointGeometry(Vector3d Centre, Vector3d Axis, Vector3d FarCentre)
{
    /// <summary>The true angle in space between two directions of any length, rad, 0 to pi: exact for small angles too.</summary>
    public static double Between(Vector3d a, Vector3d b) => Trigonometry.Atan2(Vector3d.Cross(a, b).Length, Vector3d.Dot(a, b));

    /// <summary>The joint's angle in space: zero for a shaft that runs straight on, rad.</summary>
    /// <param name="far">The pose of the body at the shaft's other end in the frame of the joint's own body.</param>
    public double AngleRad(RigidMotion far) => Between(Axis, far.Apply(FarCentre) - Centre);
}
