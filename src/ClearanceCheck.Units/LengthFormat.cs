using System.Globalization;

namespace ClearanceCheck.Units;

/// <summary>Lengths as a mechanic reads them: millimetres and the inch fraction.</summary>
public static class LengthFormat
{
    private const int StepsPerInch = 16;

    /// <summary>Whole millimetres and the nearest sixteenth of an inch: <c>25 mm (1 in)</c>.</summary>
    public static string Both(Length length) => Millimetres(length) + " (" + Inches(length) + ")";

    /// <summary>Millimetres with fixed decimals: <c>12.50 mm</c>.</summary>
    public static string Millimetres(Length length, int decimals = 0) => NumberFormat.Fixed(length.Millimetres, decimals) + " mm";

    /// <summary>The nearest sixteenth of an inch as a reduced fraction: <c>1-1/2 in</c>, <c>-3/8 in</c>, <c>0 in</c>; ties away from zero.</summary>
    public static string Inches(Length length)
    {
        var steps = (long)Math.Round(Math.Abs(length.Inches) * StepsPerInch, MidpointRounding.AwayFromZero);
        var sign = steps > 0 && length.Millimetres < 0 ? "-" : "";
        return sign + Mixed(steps, StepsPerInch) + " in";
    }

    /// <summary>A value and its limit in millimetres with just enough digits that the two texts differ when the lengths do.</summary>
    public static (string Value, string Limit) Apart(Length value, Length limit, int decimals = 1)
    {
        var (left, right) = NumberFormat.Apart(value.Millimetres, limit.Millimetres, decimals);
        return (left + " mm", right + " mm");
    }

    /// <summary>A mixed number in lowest terms: 25/16 is <c>1-9/16</c>.</summary>
    internal static string Mixed(long numerator, long denominator)
    {
        var (whole, rest) = Math.DivRem(numerator, denominator);
        while (rest > 0 && rest % 2 == 0 && denominator % 2 == 0) (rest, denominator) = (rest / 2, denominator / 2);
        if (rest == 0) return whole.ToString(CultureInfo.InvariantCulture);
        var fraction = string.Create(CultureInfo.InvariantCulture, $"{rest}/{denominator}");
        return whole == 0 ? fraction : string.Create(CultureInfo.InvariantCulture, $"{whole}-{fraction}");
    }
}
