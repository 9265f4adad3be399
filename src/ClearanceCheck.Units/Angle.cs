namespace ClearanceCheck.Units;

/// <summary>A signed angle, held in radians.</summary>
public readonly record struct Angle : IComparable<Angle>
{
    private const double RadiansPerDegree = Math.PI / 180;

    private readonly double rad;

    private Angle(double rad) => this.rad = rad;

    /// <summary>The angle in radians.</summary>
    public double Radians => rad;

    /// <summary>The angle in degrees, within two roundings of the value it was made from.</summary>
    public double Degrees => rad / RadiansPerDegree;

    /// <summary>Makes an angle from radians.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Angle FromRadians(double rad) => new(Finite.OrThrow(rad, nameof(rad)));

    /// <summary>Makes an angle from degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Angle FromDegrees(double degrees) => new(Finite.OrThrow(degrees, nameof(degrees)) * RadiansPerDegree);

    public static bool operator <(Angle left, Angle right) => left.rad < right.rad;

    public static bool operator >(Angle left, Angle right) => left.rad > right.rad;

    public static bool operator <=(Angle left, Angle right) => left.rad <= right.rad;

    public static bool operator >=(Angle left, Angle right) => left.rad >= right.rad;

    public int CompareTo(Angle other) => rad.CompareTo(other.rad);

    /// <summary>Degrees, for logs and failed tests.</summary>
    public override string ToString() => NumberFormat.UpTo(Degrees, 9) + " deg";
}
