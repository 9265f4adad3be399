namespace ClearanceCheck.Mechanics.Numbers;

/// <summary>All numbers from Low to High. Each operation rounds outward by one step, so the true result is always inside.</summary>
/// <remarks>
/// IEEE 754 rounds to nearest, so the exact result lies within half a step of the computed one: moving out by 2^-52 of it, which is a
/// step or two, and by far less than anything counts, encloses it. Nothing is lost by adding zero or multiplying with it.
/// Division by an interval that holds zero gives the whole line, which no proof accepts.
/// </remarks>
public readonly record struct Interval(double Low, double High) : IReal<Interval>
{
    // 2^-52: of any number at least its distance to the next; and something that moves zero and what underflows.
    private const double Step = 2.220446049250313E-16;
    private const double Least = 1e-300;

    public static Interval Zero => default;

    public static Interval Everything => new(double.NegativeInfinity, double.PositiveInfinity);

    public double Middle => 0.5 * (Low + High);

    public double Width => High - Low;

    /// <summary>The largest absolute value inside.</summary>
    public double Magnitude => Math.Max(Math.Abs(Low), Math.Abs(High));

    public bool IsFinite => double.IsFinite(Low) && double.IsFinite(High);

    public static Interval From(double value) => new(value, value);

    /// <summary>From -radius to +radius.</summary>
    public static Interval Symmetric(double radius) => new(-radius, radius);

    public static Interval operator +(Interval a, Interval b) => IsZero(a) ? b : IsZero(b) ? a : Outward(a.Low + b.Low, a.High + b.High);

    public static Interval operator -(Interval a, Interval b) => IsZero(b) ? a : Outward(a.Low - b.High, a.High - b.Low);

    public static Interval operator -(Interval a) => new(-a.High, -a.Low);

    public static Interval operator *(Interval a, Interval b)
    {
        if (IsZero(a) || IsZero(b)) return Zero;
        double p = a.Low * b.Low, q = a.Low * b.High, r = a.High * b.Low, s = a.High * b.High;
        return Outward(Math.Min(Math.Min(p, q), Math.Min(r, s)), Math.Max(Math.Max(p, q), Math.Max(r, s)));
    }

    public static Interval operator /(Interval a, Interval b)
    {
        if (!(b.Low > 0 || b.High < 0)) return Everything;
        double p = a.Low / b.Low, q = a.Low / b.High, r = a.High / b.Low, s = a.High / b.High;
        return Outward(Math.Min(Math.Min(p, q), Math.Min(r, s)), Math.Max(Math.Max(p, q), Math.Max(r, s)));
    }

    public static Interval Square(Interval a)
    {
        if (IsZero(a)) return Zero;
        double low = a.Low * a.Low, high = a.High * a.High;
        double least = a.Low <= 0 && a.High >= 0 ? 0 : Down(Math.Min(low, high));
        return new Interval(Math.Max(0, least), Up(Math.Max(low, high)));
    }

    // IEEE 754 rounds square roots to nearest as well.
    public static Interval Sqrt(Interval a) => a.Low >= 0 && a.High >= a.Low
        ? new Interval(Math.Max(0, Down(Math.Sqrt(a.Low))), Up(Math.Sqrt(a.High)))
        : Everything;

    // A sum of squares may have been rounded to just below zero.
    public static Interval Rest(Interval a, double limit, double bound) => a.Low >= -1e-9 && a.High <= limit ? Symmetric(bound) : Everything;

    /// <summary>The smallest interval that holds both.</summary>
    public static Interval Hull(Interval a, Interval b) => new(Math.Min(a.Low, b.Low), Math.Max(a.High, b.High));

    /// <summary>True when this interval lies wholly inside the other, touching neither end.</summary>
    public bool IsInside(Interval other) => Low > other.Low && High < other.High;

    public bool Contains(double value) => value >= Low && value <= High;

    /// <summary>What both have in common; this interval when rounding left nothing.</summary>
    public Interval Intersect(Interval other)
    {
        double low = Math.Max(Low, other.Low), high = Math.Min(High, other.High);
        return low <= high ? new Interval(low, high) : this;
    }

    private static bool IsZero(Interval a) => a.Low == 0 && a.High == 0;

    // A NaN end means that nothing is known.
    private static Interval Outward(double low, double high)
    {
        double down = Down(low), up = Up(high);
        return down <= up ? new Interval(down, up) : Everything;
    }

    // What has overflowed is more than the largest number, and no more is known.
    private static double Down(double x) => x == double.PositiveInfinity ? double.MaxValue : x - ((Math.Abs(x) * Step) + Least);

    private static double Up(double x) => x == double.NegativeInfinity ? double.MinValue : x + ((Math.Abs(x) * Step) + Least);
}
