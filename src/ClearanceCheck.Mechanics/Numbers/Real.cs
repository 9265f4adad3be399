namespace ClearanceCheck.Mechanics.Numbers;

/// <summary>A plain double.</summary>
public readonly record struct Real(double Value) : IReal<Real>
{
    public static Real From(double value) => new(value);

    public static Real operator +(Real a, Real b) => new(a.Value + b.Value);

    public static Real operator -(Real a, Real b) => new(a.Value - b.Value);

    public static Real operator -(Real a) => new(-a.Value);

    public static Real operator *(Real a, Real b) => new(a.Value * b.Value);

    public static Real operator /(Real a, Real b) => new(a.Value / b.Value);

    public static Real Square(Real a) => new(a.Value * a.Value);

    public static Real Sqrt(Real a) => new(Math.Sqrt(a.Value));

    public static Real Rest(Real a, double limit, double bound) => new(a.Value <= limit ? 0 : double.NaN);
}
