using System.Globalization;

namespace ClearanceCheck.Geometry;

/// <summary>A rotation about the origin followed by a translation in mm: x goes to R x + t.</summary>
/// <remarks>As the pose of a body it takes the body's own coordinates to those of the frame it is posed in.</remarks>
public readonly record struct RigidMotion(Rotation Rotation, Vector3d Translation)
{
    public static RigidMotion Identity => new(Rotation.Identity, Vector3d.Zero);

    public RigidMotion Inverse => new(Rotation.Inverse, -Rotation.ApplyInverse(Translation));

    /// <summary>Applies <paramref name="second"/> first, then <paramref name="first"/>.</summary>
    public static RigidMotion operator *(RigidMotion first, RigidMotion second) =>
        new(first.Rotation * second.Rotation, first.Apply(second.Translation));

    /// <summary>Rotation and translation. The record's own text would write out the inverse, and its inverse, without end.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Rotation} then shift ({Translation.X}, {Translation.Y}, {Translation.Z})");

    public Vector3d Apply(Vector3d point) => Rotation.Apply(point) + Translation;

    public Vector3d ApplyToDirection(Vector3d direction) => Rotation.Apply(direction);

    public Vector3d ApplyInverseToDirection(Vector3d direction) => Rotation.ApplyInverse(direction);
}
