namespace ClearanceCheck.Units;

/// <summary>A signed length, held in millimetres.</summary>
/// <remarks>One inch is 25.4 mm exactly (international yard and pound agreement, 1959; from memory). Always finite.</remarks>
public readonly record struct Length : IComparable<Length>
{
    /// <summary>Millimetres in one inch, exact.</summary>
    public const double MillimetresPerInch = 25.4;

    private readonly double mm;

    private Length(double mm) => this.mm = mm;

    /// <summary>No length.</summary>
    public static Length Zero => default;

    /// <summary>The length in millimetres.</summary>
    public double Millimetres => mm;

    /// <summary>The length in inches, correct to one rounding of the division.</summary>
    public double Inches => mm / MillimetresPerInch;

    /// <summary>Makes a length from millimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Length FromMillimetres(double mm) => new(Finite.OrThrow(mm, nameof(mm)));

    /// <summary>Makes a length from inches, correct to one rounding of the product.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value, or its value in millimetres, is not finite.</exception>
    public static Length FromInches(double inches) => new(Finite.OrThrow(inches * MillimetresPerInch, nameof(inches)));

    public static Length operator +(Length left, Length right) => FromMillimetres(left.mm + right.mm);

    public static Length operator -(Length left, Length right) => FromMillimetres(left.mm - right.mm);

    public static Length operator -(Length value) => new(-value.mm);

    public static Length operator *(Length value, double factor) => FromMillimetres(value.mm * factor);

    public static Length operator *(double factor, Length value) => value * factor;

    public static bool operator <(Length left, Length right) => left.mm < right.mm;

    public static bool operator >(Length left, Length right) => left.mm > right.mm;

    public static bool operator <=(Length left, Length right) => left.mm <= right.mm;

    public static bool operator >=(Length left, Length right) => left.mm >= right.mm;

    public static Length Add(Length left, Length right) => left + right;

    public static Length Subtract(Length left, Length right) => left - right;

    public static Length Negate(Length value) => -value;

    public static Length Multiply(Length value, double factor) => value * factor;

    /// <summary>The length without its sign.</summary>
    public Length Abs() => new(Math.Abs(mm));

    public int CompareTo(Length other) => mm.CompareTo(other.mm);

    /// <summary>Millimetres with as many digits as the value has, for logs and failed tests; reports use <see cref="LengthFormat"/>.</summary>
    public override string ToString() => NumberFormat.Shortest(mm) + " mm";
}
