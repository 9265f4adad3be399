using System.Globalization;

namespace ClearanceCheck.Units;

/// <summary>Numbers as text, always with a point and without group separators.</summary>
public static class NumberFormat
{
    /// <summary>Most decimals that are tried before a number is printed in full.</summary>
    private const int MostDecimals = 9;

    /// <summary>The number with exactly so many decimals; never <c>-0</c>.</summary>
    public static string Fixed(double value, int decimals)
    {
        var text = Finite.OrThrow(value, nameof(value)).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text[0] == '-' && text.AsSpan().IndexOfAnyInRange('1', '9') < 0 ? text[1..] : text;
    }

    /// <summary>The number with at most so many decimals, without trailing zeros.</summary>
    public static string UpTo(double value, int decimals)
    {
        var text = Fixed(value, decimals);
        return text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
    }

    /// <summary>The shortest text that reads back as the same number.</summary>
    public static string Shortest(double value) => value == 0 ? "0" : Finite.OrThrow(value, nameof(value)).ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A value and its limit with just enough digits that the two texts differ when the numbers do.</summary>
    /// <remarks>Rounding keeps the order of two numbers, so a value under its limit is never printed at or above it. The limit is printed without trailing zeros.</remarks>
    public static (string Value, string Limit) Apart(double value, double limit, int decimals)
    {
        if (value == limit) return (Fixed(value, decimals), UpTo(limit, MostDecimals));
        var full = UpTo(limit, MostDecimals);
        for (var digits = decimals; digits <= MostDecimals; digits++)
        {
            var shown = Fixed(value, digits);
            if (KeepsOrder(shown, full, value, limit)) return (shown, full);
        }

        return (Shortest(value), Shortest(limit));
    }

    private static bool KeepsOrder(string shown, string full, double value, double limit)
    {
        var shownNumber = double.Parse(shown, CultureInfo.InvariantCulture);
        var limitNumber = double.Parse(full, CultureInfo.InvariantCulture);
        return value < limit ? shownNumber < limitNumber : shownNumber > limitNumber;
    }
}
