namespace ClearanceCheck.Units;

/// <summary>A share, held as a fraction: 5 % is 0.05.</summary>
public readonly record struct Percentage : IComparable<Percentage>
{
    private readonly double fraction;

    private Percentage(double fraction) => this.fraction = fraction;

    /// <summary>The share as a fraction of one.</summary>
    public double Fraction => fraction;

    /// <summary>The share in percent, within two roundings of the value it was made from.</summary>
    public double Percent => fraction * 100;

    /// <summary>Makes a share from a fraction of one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Percentage FromFraction(double fraction) => new(Finite.OrThrow(fraction, nameof(fraction)));

    /// <summary>Makes a share from percent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Percentage FromPercent(double percent) => new(Finite.OrThrow(percent, nameof(percent)) / 100);

    public static bool operator <(Percentage left, Percentage right) => left.fraction < right.fraction;

    public static bool operator >(Percentage left, Percentage right) => left.fraction > right.fraction;

    public static bool operator <=(Percentage left, Percentage right) => left.fraction <= right.fraction;

    public static bool operator >=(Percentage left, Percentage right) => left.fraction >= right.fraction;

    public int CompareTo(Percentage other) => fraction.CompareTo(other.fraction);

    /// <summary>Percent, for logs and failed tests.</summary>
    public override string ToString() => NumberFormat.UpTo(Percent, 9) + " %";
}
