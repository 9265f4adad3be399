namespace ClearanceCheck.Mechanics.Numbers;

/// <summary>A value with its first derivative along one direction: <see cref="Taylor2{T}"/> at half the price, for Jacobians.</summary>
public readonly record struct Tangent<T>(T Value, T First) : IReal<Tangent<T>>
    where T : unmanaged, IReal<T>
{
    public static Tangent<T> From(double value) => new(T.From(value), default);

    public static Tangent<T> operator +(Tangent<T> a, Tangent<T> b) => new(a.Value + b.Value, a.First + b.First);

    public static Tangent<T> operator -(Tangent<T> a, Tangent<T> b) => new(a.Value - b.Value, a.First - b.First);

    public static Tangent<T> operator -(Tangent<T> a) => new(-a.Value, -a.First);

    public static Tangent<T> operator *(Tangent<T> a, Tangent<T> b) => new(a.Value * b.Value, (a.First * b.Value) + (a.Value * b.First));

    public static Tangent<T> operator /(Tangent<T> a, Tangent<T> b)
    {
        T value = a.Value / b.Value;
        return new(value, (a.First - (value * b.First)) / b.Value);
    }

    public static Tangent<T> Square(Tangent<T> a)
    {
        T half = a.Value * a.First;
        return new(T.Square(a.Value), half + half);
    }

    public static Tangent<T> Sqrt(Tangent<T> a)
    {
        T root = T.Sqrt(a.Value);
        return new(root, a.First / (root + root));
    }

    public static Tangent<T> Rest(Tangent<T> a, double limit, double bound)
    {
        T rest = T.Rest(a.Value, limit, bound);
        return new(rest, rest * a.First);
    }
}
