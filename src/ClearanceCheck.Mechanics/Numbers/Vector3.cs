using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Numbers;

/// <summary>A vector of any kind of number; frame and unit as its user says.</summary>
public readonly record struct Vector3<T>(T X, T Y, T Z)
    where T : unmanaged, IReal<T>
{
    public static Vector3<T> From(Vector3d v) => new(T.From(v.X), T.From(v.Y), T.From(v.Z));

    public static Vector3<T> operator +(Vector3<T> a, Vector3<T> b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Vector3<T> operator -(Vector3<T> a, Vector3<T> b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Vector3<T> operator -(Vector3<T> a) => new(-a.X, -a.Y, -a.Z);

    public static Vector3<T> operator *(Vector3<T> a, T s) => new(a.X * s, a.Y * s, a.Z * s);

    public static T Dot(Vector3<T> a, Vector3<T> b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    public static Vector3<T> Cross(Vector3<T> a, Vector3<T> b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));

    public T LengthSquared => T.Square(X) + T.Square(Y) + T.Square(Z);

    /// <summary>Turns <paramref name="v"/> by the rotation whose Cayley vector is <paramref name="c"/> (axis times tangent of half the angle).</summary>
    /// <remarks>R v = v + 2 / (1 + c.c) (c x v + c x (c x v)): rational, so intervals and derivatives go through it. From memory, textbook.</remarks>
    public static Vector3<T> TurnByCayley(Vector3<T> c, Vector3<T> v)
    {
        Vector3<T> cv = Cross(c, v);
        T factor = T.From(2) / (T.From(1) + c.LengthSquared);
        return v + ((cv + Cross(c, cv)) * factor);
    }
}
