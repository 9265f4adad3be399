using System.Numerics;

namespace ClearanceCheck.Mechanics.Tests.Numbers;

/// <summary>An exact fraction: what interval arithmetic has to enclose.</summary>
internal readonly record struct Rational(BigInteger Top, BigInteger Bottom)
{
    /// <summary>The exact value of a double: mantissa times a power of two.</summary>
    public static Rational From(double value)
    {
        if (value == 0) return new Rational(0, 1);
        long bits = BitConverter.DoubleToInt64Bits(value);
        int exponent = (int)((bits >> 52) & 0x7FF);
        long mantissa = bits & 0xFFFFFFFFFFFFFL;
        if (exponent == 0) exponent++;
        else mantissa |= 1L << 52;
        exponent -= 1075;
        BigInteger top = bits < 0 ? -mantissa : mantissa;
        return exponent >= 0 ? new Rational(top << exponent, 1) : new Rational(top, BigInteger.One << -exponent);
    }

    public static Rational operator +(Rational a, Rational b) => new((a.Top * b.Bottom) + (b.Top * a.Bottom), a.Bottom * b.Bottom);

    public static Rational operator -(Rational a, Rational b) => a + -b;

    public static Rational operator -(Rational a) => new(-a.Top, a.Bottom);

    public static Rational operator *(Rational a, Rational b) => new(a.Top * b.Top, a.Bottom * b.Bottom);

    public static Rational operator /(Rational a, Rational b) =>
        b.Top.Sign >= 0 ? new(a.Top * b.Bottom, a.Bottom * b.Top) : new(-a.Top * b.Bottom, a.Bottom * -b.Top);

    public bool IsAtLeast(double bound) => !double.IsFinite(bound) ? bound < 0 : (this - From(bound)).Top.Sign >= 0;

    public bool IsAtMost(double bound) => !double.IsFinite(bound) ? bound > 0 : (this - From(bound)).Top.Sign <= 0;
}
