namespace ClearanceCheck.Mechanics.Numbers;

/// <summary>A value with its first and second derivative along one direction.</summary>
/// <remarks>Rules of differentiation; with <see cref="Interval"/> inside, each part encloses the truth over the whole box.</remarks>
public readonly record struct Taylor2<T>(T Value, T First, T Second) : IReal<Taylor2<T>>
    where T : unmanaged, IReal<T>
{
    public static Taylor2<T> From(double value) => new(T.From(value), default, default);

    public static Taylor2<T> operator +(Taylor2<T> a, Taylor2<T> b) => new(a.Value + b.Value, a.First + b.First, a.Second + b.Second);

    public static Taylor2<T> operator -(Taylor2<T> a, Taylor2<T> b) => new(a.Value - b.Value, a.First - b.First, a.Second - b.Second);

    public static Taylor2<T> operator -(Taylor2<T> a) => new(-a.Value, -a.First, -a.Second);

    public static Taylor2<T> operator *(Taylor2<T> a, Taylor2<T> b)
    {
        T cross = a.First * b.First;
        return new(
            a.Value * b.Value,
            (a.First * b.Value) + (a.Value * b.First),
            (a.Second * b.Value) + (cross + cross) + (a.Value * b.Second));
    }

    public static Taylor2<T> operator /(Taylor2<T> a, Taylor2<T> b)
    {
        // q = a / b, so a = q b: differentiate that and solve for the derivatives of q.
        T value = a.Value / b.Value;
        T first = (a.First - (value * b.First)) / b.Value;
        T cross = first * b.First;
        return new(value, first, (a.Second - (cross + cross) - (value * b.Second)) / b.Value);
    }

    public static Taylor2<T> Square(Taylor2<T> a)
    {
        T cross = a.Value * a.First;
        T bend = T.Square(a.First) + (a.Value * a.Second);
        return new(T.Square(a.Value), cross + cross, bend + bend);
    }

    public static Taylor2<T> Sqrt(Taylor2<T> a)
    {
        // r r = a: 2 r r' = a', 2 (r'^2 + r r'') = a''.
        T root = T.Sqrt(a.Value), twice = root + root, first = a.First / twice, square = T.Square(first);
        return new(root, first, (a.Second - (square + square)) / twice);
    }

    public static Taylor2<T> Rest(Taylor2<T> a, double limit, double bound)
    {
        T rest = T.Rest(a.Value, limit, bound);
        return new(rest, rest * a.First, (rest * T.Square(a.First)) + (rest * a.Second));
    }
}
