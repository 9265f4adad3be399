namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>A vector of numbers of either precision.</summary>
internal readonly record struct RealVector<T>(T X, T Y, T Z)
    where T : struct, IReal<T>
{
    public T LengthSquared => Dot(this, this);

    public static RealVector<T> operator +(RealVector<T> a, RealVector<T> b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static RealVector<T> operator -(RealVector<T> a, RealVector<T> b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static RealVector<T> operator *(RealVector<T> a, T s) => new(a.X * s, a.Y * s, a.Z * s);

    /// <summary>The difference of two points given as doubles, as exact as the numbers allow.</summary>
    public static RealVector<T> Between(Vector3d origin, Vector3d point) => new(
        T.Of(point.X) - T.Of(origin.X), T.Of(point.Y) - T.Of(origin.Y), T.Of(point.Z) - T.Of(origin.Z));

    public static T Dot(RealVector<T> a, RealVector<T> b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    public static RealVector<T> Cross(RealVector<T> a, RealVector<T> b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));
}
