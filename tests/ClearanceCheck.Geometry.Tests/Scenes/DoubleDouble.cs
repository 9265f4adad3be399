namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>A number of about 31 digits as the unevaluated sum of two doubles: what the slow references are computed in.</summary>
/// <remarks>Error-free sum and product after Knuth and Dekker, from memory; checked in <see cref="DoubleDoubleTests"/> by whole numbers.</remarks>
internal readonly record struct DoubleDouble(double High, double Low) : IComparable<DoubleDouble>, IReal<DoubleDouble>
{
    public static DoubleDouble Zero => default;

    public static implicit operator DoubleDouble(double value) => new(value, 0);

    public static DoubleDouble operator -(DoubleDouble a) => new(-a.High, -a.Low);

    public static DoubleDouble operator +(DoubleDouble a, DoubleDouble b)
    {
        (double s, double e) = Sum(a.High, b.High);
        (double t, double f) = Sum(a.Low, b.Low);
        (s, e) = QuickSum(s, e + t);
        return Of(QuickSum(s, e + f));
    }

    public static DoubleDouble operator -(DoubleDouble a, DoubleDouble b) => a + -b;

    public static DoubleDouble operator *(DoubleDouble a, DoubleDouble b)
    {
        double p = a.High * b.High;
        double e = Math.FusedMultiplyAdd(a.High, b.High, -p) + ((a.High * b.Low) + (a.Low * b.High));
        return Of(QuickSum(p, e));
    }

    public static DoubleDouble operator /(DoubleDouble a, DoubleDouble b)
    {
        double first = a.High / b.High;
        DoubleDouble rest = a - (b * first);
        double second = rest.High / b.High;
        rest -= b * second;
        return new DoubleDouble(first, 0) + second + (rest.High / b.High);
    }

    public static bool operator <(DoubleDouble a, DoubleDouble b) => a.CompareTo(b) < 0;

    public static bool operator >(DoubleDouble a, DoubleDouble b) => a.CompareTo(b) > 0;

    public static bool operator <=(DoubleDouble a, DoubleDouble b) => a.CompareTo(b) <= 0;

    public static bool operator >=(DoubleDouble a, DoubleDouble b) => a.CompareTo(b) >= 0;

    public static DoubleDouble Min(DoubleDouble a, DoubleDouble b) => a < b ? a : b;

    public static DoubleDouble Clamp01(DoubleDouble a) => a < 0.0 ? 0.0 : a > 1.0 ? 1.0 : a;

    /// <summary>Square root: two Newton steps from the double's own.</summary>
    public static DoubleDouble Sqrt(DoubleDouble a)
    {
        if (!(a.High > 0)) return Zero;
        DoubleDouble x = Math.Sqrt(a.High);
        for (int i = 0; i < 2; i++) x = (x + (a / x)) * 0.5;
        return x;
    }

    static DoubleDouble IReal<DoubleDouble>.Of(double value) => value;

    static DoubleDouble IReal<DoubleDouble>.Root(DoubleDouble a) => Sqrt(a);

    public int CompareTo(DoubleDouble other) => High != other.High ? High.CompareTo(other.High) : Low.CompareTo(other.Low);

    public double ToDouble() => High + Low;

    private static DoubleDouble Of((double High, double Low) pair) => new(pair.High, pair.Low);

    private static (double High, double Low) Sum(double a, double b)
    {
        double s = a + b, v = s - a;
        return (s, a - (s - v) + (b - v));
    }

    private static (double High, double Low) QuickSum(double a, double b)
    {
        double s = a + b;
        return (s, b - (s - a));
    }
}
