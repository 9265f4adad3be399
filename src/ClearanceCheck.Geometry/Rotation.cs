using System.Globalization;

namespace ClearanceCheck.Geometry;

/// <summary>A rotation as a unit quaternion. The default value is not a rotation; use <see cref="Identity"/>.</summary>
/// <remarks>
/// Only + - x / and square roots are used, so the same input gives the same bits on every machine.
/// Quaternion algebra: from memory, textbook; checked in the tests against the matrix form and against rotation about an axis.
/// </remarks>
public readonly record struct Rotation(double W, double X, double Y, double Z)
{
    public static Rotation Identity => new(1, 0, 0, 0);

    public Rotation Inverse => new(W, -X, -Y, -Z);

    /// <summary>The rotation that applies <paramref name="second"/> first, then <paramref name="first"/>, scaled back to length one.</summary>
    public static Rotation operator *(Rotation first, Rotation second) => Normalized(
        (first.W * second.W) - (first.X * second.X) - (first.Y * second.Y) - (first.Z * second.Z),
        (first.W * second.X) + (first.X * second.W) + (first.Y * second.Z) - (first.Z * second.Y),
        (first.W * second.Y) - (first.X * second.Z) + (first.Y * second.W) + (first.Z * second.X),
        (first.W * second.Z) + (first.X * second.Y) - (first.Y * second.X) + (first.Z * second.W));

    /// <summary>The rotation whose Cayley (Rodrigues) vector is <paramref name="c"/>: its axis, times the tangent of half the angle.</summary>
    public static Rotation FromCayley(Vector3d c) => Normalized(1, c.X, c.Y, c.Z);

    /// <summary>Right-hand rotation about an axis of any length, by an angle in radians.</summary>
    public static Rotation About(Vector3d axis, double angleRad)
    {
        (double sin, double cos) = Trigonometry.SinCos(angleRad / 2);
        Vector3d u = axis.NormalizedOr(Vector3d.UnitZ);
        return Normalized(cos, sin * u.X, sin * u.Y, sin * u.Z);
    }

    /// <summary>The rotation of any quaternion but zero.</summary>
    public static Rotation Normalized(double w, double x, double y, double z)
    {
        double length = Math.Sqrt((w * w) + (x * x) + (y * y) + (z * z));
        return new Rotation(w / length, x / length, y / length, z / length);
    }

    /// <summary>The rotation that takes the unit axes to three vectors of length one, square to each other and right-handed.</summary>
    /// <remarks>From the rotation matrix by its largest diagonal share (S. W. Shepperd's method; textbook, from memory).</remarks>
    public static Rotation FromAxes(Vector3d x, Vector3d y, Vector3d z)
    {
        double trace = x.X + y.Y + z.Z;
        if (trace >= x.X && trace >= y.Y && trace >= z.Z) return Normalized(1 + trace, y.Z - z.Y, z.X - x.Z, x.Y - y.X);
        if (x.X >= y.Y && x.X >= z.Z) return Normalized(y.Z - z.Y, 1 + x.X - y.Y - z.Z, x.Y + y.X, z.X + x.Z);
        return y.Y >= z.Z
            ? Normalized(z.X - x.Z, x.Y + y.X, 1 - x.X + y.Y - z.Z, y.Z + z.Y)
            : Normalized(x.Y - y.X, z.X + x.Z, y.Z + z.Y, 1 - x.X - y.Y + z.Z);
    }

    /// <summary>Turns a vector.</summary>
    public Vector3d Apply(Vector3d v)
    {
        Vector3d q = new(X, Y, Z);
        Vector3d t = 2 * Vector3d.Cross(q, v);
        return v + (W * t) + Vector3d.Cross(q, t);
    }

    /// <summary>Turns a vector back.</summary>
    public Vector3d ApplyInverse(Vector3d v) => Inverse.Apply(v);

    /// <summary>The quaternion's four numbers. The record's own text would write out the inverse, and its inverse, without end.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"Rotation (w {W}, x {X}, y {Y}, z {Z})");

    /// <summary>The rotation vector: axis times angle, radians, angle in 0 to pi.</summary>
    public Vector3d ToRotationVector()
    {
        double sign = W < 0 ? -1 : 1;
        Vector3d q = new(sign * X, sign * Y, sign * Z);
        double sinHalf = q.Length;
        if (sinHalf == 0) return Vector3d.Zero;
        double angle = 2 * Trigonometry.Atan2(sinHalf, sign * W);
        return q * (angle / sinHalf);
    }
}
