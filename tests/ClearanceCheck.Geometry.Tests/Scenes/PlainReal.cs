namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>A double as a number for the slow references.</summary>
internal readonly record struct PlainReal(double Value) : IReal<PlainReal>
{
    public static PlainReal operator +(PlainReal a, PlainReal b) => new(a.Value + b.Value);

    public static PlainReal operator -(PlainReal a, PlainReal b) => new(a.Value - b.Value);

    public static PlainReal operator *(PlainReal a, PlainReal b) => new(a.Value * b.Value);

    public static PlainReal operator /(PlainReal a, PlainReal b) => new(a.Value / b.Value);

    public static bool operator <(PlainReal a, PlainReal b) => a.Value < b.Value;

    public static bool operator >(PlainReal a, PlainReal b) => a.Value > b.Value;

    public static PlainReal Of(double value) => new(value);

    public static PlainReal Root(PlainReal a) => new(Math.Sqrt(a.Value));

    public double ToDouble() => Value;
}
