namespace ClearanceCheck.Reporting.Drawings;

/// <summary>A point on the page in the drawing's units: x to the right, y down.</summary>
internal readonly record struct PagePoint(double X, double Y)
{
    public static PagePoint operator +(PagePoint a, PagePoint b) => new(a.X + b.X, a.Y + b.Y);

    public static PagePoint operator -(PagePoint a, PagePoint b) => new(a.X - b.X, a.Y - b.Y);

    public static PagePoint operator *(PagePoint a, double s) => new(a.X * s, a.Y * s);

    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>A quarter turn.</summary>
    public PagePoint Turned => new(-Y, X);

    public PagePoint UnitOr(PagePoint fallback) => Length > 1e-9 ? this * (1 / Length) : fallback;

    // What a record writes of itself holds its properties, and a turned point holds a turned point.
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"({X}, {Y})");

    public static double Dot(PagePoint a, PagePoint b) => (a.X * b.X) + (a.Y * b.Y);

    /// <summary>Distance from this point to a stretch of line.</summary>
    public double DistanceTo(PagePoint from, PagePoint to)
    {
        PagePoint along = to - from;
        double square = Dot(along, along);
        double share = square > 0 ? Math.Clamp(Dot(this - from, along) / square, 0, 1) : 0;
        return (this - (from + (along * share))).Length;
    }
}
