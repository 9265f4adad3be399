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
}
