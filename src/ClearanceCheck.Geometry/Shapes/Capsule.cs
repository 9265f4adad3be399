namespace ClearanceCheck.Geometry.Shapes;

/// <summary>All points within a radius of a segment, mm. A zero length is a ball.</summary>
public readonly record struct Capsule(Vector3d From, Vector3d To, double Radius)
{
    /// <summary>The largest n.x over the capsule; <paramref name="direction"/> is a unit vector.</summary>
    public double Support(Vector3d direction) =>
        Math.Max(Vector3d.Dot(direction, From), Vector3d.Dot(direction, To)) + Radius;

    public Capsule Moved(in RigidMotion motion) => new(motion.Apply(From), motion.Apply(To), Radius);
}
