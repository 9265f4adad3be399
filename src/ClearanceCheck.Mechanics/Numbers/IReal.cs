namespace ClearanceCheck.Mechanics.Numbers;

/// <summary>A number that joint equations can be written in: plain, interval, or with derivatives.</summary>
/// <remarks>Only + - x / and square roots: what all machines compute alike, and what intervals can enclose tightly.</remarks>
public interface IReal<T>
    where T : unmanaged, IReal<T>
{
    static abstract T From(double value);

    static abstract T operator +(T a, T b);

    static abstract T operator -(T a, T b);

    static abstract T operator -(T a);

    static abstract T operator *(T a, T b);

    static abstract T operator /(T a, T b);

    /// <summary>The square; never negative for an interval, which the product of two equal intervals would be.</summary>
    static abstract T Square(T a);

    /// <summary>The square root. Of an interval that reaches below zero nothing is known; of a plain number below zero it is not a number.</summary>
    static abstract T Sqrt(T a);

    /// <summary>What is left of a series that was cut off: a number of which only its size and that of its first two derivatives are known.</summary>
    /// <param name="a">What the series is a function of.</param>
    /// <param name="limit">The series is known for arguments from zero (or a billionth less, by rounding) to here; beyond, nothing is.</param>
    /// <param name="bound">No value and no derivative of the rest is larger than this. A plain number takes zero.</param>
    static abstract T Rest(T a, double limit, double bound);
}
