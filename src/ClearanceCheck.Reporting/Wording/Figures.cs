using System.Globalization;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Units;

namespace ClearanceCheck.Reporting.Wording;

/// <summary>Numbers as they stand in a report: whole millimetres and the sixteenth of an inch, more digits only where a value and its limit would read the same.</summary>
public static class Figures
{
    private const int MostDecimals = 6;

    /// <summary>A value in its quantity's unit, told apart from the limit; a negative gap reads "overlap 3 mm (1/8 in)".</summary>
    public static string Value(double value, QuantityCard quantity, double limit)
    {
        string shown = NumberFormat.Apart(value, limit, Decimals(quantity.Unit)).Value;
        return IsOverlap(value, quantity) ? "overlap " + WithInches(shown.TrimStart('-'), -value, -limit, quantity.Unit) : WithInches(shown, value, limit, quantity.Unit);
    }

    /// <summary>A value without a limit beside it, in <c>mm</c>, <c>deg</c>, <c>%</c> or another unit.</summary>
    public static string Plain(double value, string unit) => WithInches(NumberFormat.UpTo(value, Decimals(unit)), value, double.NaN, unit);

    /// <summary>A value without the inch fraction, for drawings: <c>18 mm</c>.</summary>
    public static string Brief(double value, string unit) => Spaced(NumberFormat.UpTo(value, Decimals(unit)), unit);

    /// <summary>The limit in words: "at least 50 mm (1-15/16 in)".</summary>
    public static string Limit(LimitCard limit, string unit, double? value)
    {
        double bound = Bound(limit);
        string shown = NumberFormat.UpTo(bound, MostDecimals);
        return (limit.AtLeast is null ? "at most " : "at least ") + WithInches(shown, bound, value ?? double.NaN, unit);
    }

    /// <summary>The number of the limit, whichever side it is on, in the quantity's unit.</summary>
    /// <exception cref="ArgumentException">The limit has no side.</exception>
    public static double Bound(LimitCard limit) => limit.AtLeast ?? limit.AtMost ?? throw new ArgumentException("The limit has neither side.", nameof(limit));

    /// <summary>A give-or-take, rounded up so that no doubt is lost: whole mm, tenths below 3 mm and for other units.</summary>
    public static string GiveOrTake(double halfWidth, string unit)
    {
        int decimals = unit == "mm" && halfWidth >= 3 ? 0 : 1;
        double rounded = Directed(halfWidth, decimals, up: true);
        string shown = Spaced(NumberFormat.UpTo(rounded, decimals), unit);
        if (unit != "mm") return shown;
        bool isFine = rounded > 0 && rounded < Length.MillimetresPerInch / 16;
        return $"{shown} ({(isFine ? "under 1/16 in" : Sixteenths(rounded, up: true))})";
    }

    /// <summary>A bound that nothing passes, rounded to the safe side: "never less than" down, "never more than" up, but never across its limit.</summary>
    /// <remarks>Without its sign where the gap is closed: <see cref="BoundLabel"/> says so.</remarks>
    public static string BoundValue(double bound, QuantityCard quantity, LimitCard limit)
    {
        bool up = limit.AtLeast is null;
        double limitValue = Bound(limit);
        double rounded = bound;
        string shown = NumberFormat.Shortest(bound);
        for (int decimals = Decimals(quantity.Unit); decimals <= MostDecimals; decimals++)
        {
            rounded = Directed(bound, decimals, up);
            shown = NumberFormat.UpTo(rounded, decimals);
            if ((rounded < limitValue) == (bound < limitValue) && (rounded > limitValue) == (bound > limitValue)) break;
        }

        if (IsOverlap(rounded, quantity)) (shown, rounded, up) = (shown.TrimStart('-'), -rounded, !up);
        return quantity.Unit == "mm" ? $"{shown} mm ({Sixteenths(rounded, up)})" : Spaced(shown, quantity.Unit);
    }

    /// <summary>What stands before <see cref="BoundValue"/>: "Never less than", or for a gap that can close "Overlap never more than".</summary>
    public static string BoundLabel(double bound, QuantityCard quantity, LimitCard limit) =>
        limit.AtLeast is null ? "Never more than" : IsOverlap(bound, quantity) ? "Overlap never more than" : "Never less than";

    private static bool IsOverlap(double value, QuantityCard quantity) => quantity.Id == "gap" && value < 0;

    private static int Decimals(string unit) => unit == "mm" ? 0 : 1;

    private static string Spaced(string number, string unit) => unit.Length == 0 ? number : number + " " + unit;

    private static string WithInches(string shown, double value, double other, string unit)
    {
        if (unit != "mm") return Spaced(shown, unit);
        string inches = LengthFormat.Inches(Length.FromMillimetres(value));
        bool readsTheSame = double.IsFinite(other) && value != other && inches == LengthFormat.Inches(Length.FromMillimetres(other));
        if (readsTheSame) inches = ApartInches(value, other) + " in";
        return $"{shown} mm ({inches})";
    }

    private static string ApartInches(double valueMm, double otherMm)
    {
        double value = valueMm / Length.MillimetresPerInch;
        double other = otherMm / Length.MillimetresPerInch;
        for (int decimals = 3; decimals < MostDecimals; decimals++)
        {
            string shown = NumberFormat.Fixed(value, decimals);
            if (shown != NumberFormat.Fixed(other, decimals)) return shown;
        }

        return NumberFormat.Fixed(value, MostDecimals);
    }

    /// <summary>Rounds up or down; a value within a millionth of a step counts as on it, so that 3.0000000001 does not become 4.</summary>
    private static double Directed(double value, int decimals, bool up)
    {
        double scale = double.Parse("1E" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        double steps = value * scale;
        double nearest = Math.Round(steps);
        if (Math.Abs(steps - nearest) < 1e-6) return nearest / scale;
        return (up ? Math.Ceiling(steps) : Math.Floor(steps)) / scale;
    }

    private static string Sixteenths(double mm, bool up)
    {
        double steps = Directed(mm / Length.MillimetresPerInch * 16, 0, up);
        return LengthFormat.Inches(Length.FromInches(steps / 16));
    }
}
