namespace ClearanceCheck.Geometry;

/// <summary>Sine, cosine and arctangent from + - x / and square roots only, so that every machine gives the same bits.</summary>
/// <remarks>
/// For the doors: angles that a person types or reads. The engine itself turns bodies by quaternions.
/// Series of Taylor after argument reduction (from memory, textbook). Error of sine and cosine below 4e-16 for angles up to
/// 1000 rad, of arctangent and arcsine below 1e-15 rad; checked in the tests against the system's own functions.
/// </remarks>
public static class Trigonometry
{
    // pi/2 in three parts whose sum is exact to more than 100 bits, so that subtracting a multiple loses nothing (Cody and Waite's way).
    private const double HalfPiHigh = 1.5707963267341256;
    private const double HalfPiMiddle = 6.0771005063039638e-11;
    private const double HalfPiLow = 2.0222662487959506e-21;

    public const double DegreesPerRadian = 180 / Math.PI;

    /// <summary>Sine and cosine of an angle in radians.</summary>
    public static (double Sin, double Cos) SinCos(double angleRad)
    {
        double turns = Math.Round(angleRad / (Math.PI / 2));
        double x = angleRad - (turns * HalfPiHigh) - (turns * HalfPiMiddle) - (turns * HalfPiLow);
        double sin = SmallSin(x);
        double cos = SmallCos(x);
        return ((long)turns & 3) switch
        {
            0 => (sin, cos),
            1 => (cos, -sin),
            2 => (-sin, -cos),
            _ => (-cos, sin),
        };
    }

    /// <summary>The angle of the point (x, y) about the origin, in radians, -pi to pi; zero for the origin itself.</summary>
    public static double Atan2(double y, double x)
    {
        if (x == 0 && y == 0) return 0;
        double ay = Math.Abs(y), ax = Math.Abs(x);
        double angle = ay <= ax ? Atan(ay / ax) : (Math.PI / 2) - Atan(ax / ay);
        if (x < 0) angle = Math.PI - angle;
        return y < 0 ? -angle : angle;
    }

    /// <summary>The angle whose sine is <paramref name="sine"/>, which is held to -1 to 1, in radians.</summary>
    public static double Asin(double sine)
    {
        double s = Math.Clamp(sine, -1, 1);
        return Atan2(s, Math.Sqrt((1 - s) * (1 + s)));
    }

    // For 0 <= x <= 1. Two halvings of the angle bring x below 0.2, where eleven odd terms reach the last bit.
    private static double Atan(double x)
    {
        double half = x / (1 + Math.Sqrt(1 + (x * x)));
        double z = half / (1 + Math.Sqrt(1 + (half * half)));
        double z2 = z * z, sum = 0;
        for (int k = 25; k >= 1; k -= 2) sum = (1.0 / k) - (z2 * sum);
        return 4 * z * sum;
    }

    private static double SmallSin(double x)
    {
        double x2 = x * x, sum = 1;
        for (int k = 20; k >= 2; k -= 2) sum = 1 - (x2 / (k * (k + 1)) * sum);
        return x * sum;
    }

    private static double SmallCos(double x)
    {
        double x2 = x * x, sum = 1;
        for (int k = 21; k >= 1; k -= 2) sum = 1 - (x2 / (k * (k + 1)) * sum);
        return sum;
    }
}
