namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>A vector of 31-digit numbers.</summary>
internal readonly record struct PreciseVector(DoubleDouble X, DoubleDouble Y, DoubleDouble Z)
{
    public static implicit operator PreciseVector(Vector3d v) => new(v.X, v.Y, v.Z);

    public static PreciseVector operator +(PreciseVector a, PreciseVector b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static PreciseVector operator -(PreciseVector a, PreciseVector b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static PreciseVector operator *(PreciseVector a, DoubleDouble s) => new(a.X * s, a.Y * s, a.Z * s);

    public static DoubleDouble Dot(PreciseVector a, PreciseVector b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    public static PreciseVector Cross(PreciseVector a, PreciseVector b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));

    public DoubleDouble LengthSquared => Dot(this, this);
}
