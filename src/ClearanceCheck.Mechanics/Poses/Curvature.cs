namespace ClearanceCheck.Mechanics.Poses;

/// <summary>
/// Bound on the second derivative, in one coordinate over a cell, of every point of a set on a moving body, in the frame of another:
/// a box for the vector, mm per coordinate unit squared, and a bound on its length, which may be tighter.
/// </summary>
public readonly record struct Curvature(double LowX, double HighX, double LowY, double HighY, double LowZ, double HighZ, double Length)
{
    public static Curvature None => default;

    public static Curvature Ball(double length) => new(-length, length, -length, length, -length, length, length);

    public static Curvature Hull(in Curvature a, in Curvature b) => new(
        Math.Min(a.LowX, b.LowX), Math.Max(a.HighX, b.HighX),
        Math.Min(a.LowY, b.LowY), Math.Max(a.HighY, b.HighY),
        Math.Min(a.LowZ, b.LowZ), Math.Max(a.HighZ, b.HighZ),
        Math.Max(a.Length, b.Length));

    /// <summary>The most by which the second derivative of n.x can lie below zero, as a number that is zero or more.</summary>
    public double Along(Geometry.Vector3d n)
    {
        double lowest = Least(n.X, LowX, HighX) + Least(n.Y, LowY, HighY) + Least(n.Z, LowZ, HighZ);
        return Math.Min(Length, Math.Max(0, -lowest));
    }

    private static double Least(double factor, double low, double high) => factor >= 0 ? factor * low : factor * high;
}
