namespace ClearanceCheck.Geometry;

/// <summary>A point, displacement or direction in three dimensions: millimetres, or none for a direction.</summary>
/// <remarks>Frame: that of the body it belongs to, or the vehicle frame (x forward, y left, z up, right-handed).</remarks>
public readonly record struct Vector3d(double X, double Y, double Z)
{
    // Shorter vectors lose digits when their components are squared.
    private const double SafelySquared = 1e-140;

    public static Vector3d Zero => default;
    public static Vector3d UnitX => new(1, 0, 0);
    public static Vector3d UnitY => new(0, 1, 0);
    public static Vector3d UnitZ => new(0, 0, 1);

    public static Vector3d operator +(Vector3d a, Vector3d b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);
    public static Vector3d operator -(Vector3d a, Vector3d b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);
    public static Vector3d operator -(Vector3d a) => new(-a.X, -a.Y, -a.Z);
    public static Vector3d operator *(Vector3d a, double s) => new(a.X * s, a.Y * s, a.Z * s);
    public static Vector3d operator *(double s, Vector3d a) => a * s;
    public static Vector3d operator /(Vector3d a, double s) => new(a.X / s, a.Y / s, a.Z / s);

    public static double Dot(Vector3d a, Vector3d b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    public static Vector3d Cross(Vector3d a, Vector3d b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));

    public static Vector3d Lerp(Vector3d a, Vector3d b, double t) => a + ((b - a) * t);

    public double LengthSquared => Dot(this, this);
    public double Length => Math.Sqrt(LengthSquared);
    public bool IsFinite => double.IsFinite(X) && double.IsFinite(Y) && double.IsFinite(Z);

    /// <summary>The component along axis 0, 1 or 2.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The axis is none of these.</exception>
    public double this[int axis] => axis switch
    {
        0 => X,
        1 => Y,
        2 => Z,
        _ => throw new ArgumentOutOfRangeException(nameof(axis)),
    };

    /// <summary>The unit vector along this one; <paramref name="fallback"/> where this one has no length.</summary>
    public Vector3d NormalizedOr(Vector3d fallback)
    {
        double length = Length;
        if (length > SafelySquared && double.IsFinite(length)) return this / length;
        // Squares of the components underflow or overflow: bring the largest to one first.
        double largest = Math.Max(Math.Abs(X), Math.Max(Math.Abs(Y), Math.Abs(Z)));
        if (!(largest > 0) || !double.IsFinite(largest)) return fallback;
        Vector3d scaled = this / largest;
        return scaled / scaled.Length;
    }

    /// <summary>A unit vector square to this one, which need not be a unit vector; x for the zero vector.</summary>
    public Vector3d AnyPerpendicular()
    {
        Vector3d smallest = Math.Abs(X) <= Math.Abs(Y) && Math.Abs(X) <= Math.Abs(Z) ? UnitX
            : Math.Abs(Y) <= Math.Abs(Z) ? UnitY : UnitZ;
        return Cross(this, smallest).NormalizedOr(UnitX);
    }
}
