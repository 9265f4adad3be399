using System.Globalization;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Units;

namespace ClearanceCheck.Reporting.Wording;

/// <summary>Numbers as they stand in a report: whole millimetres and the sixteenth of an inch, more digits only where a value and its limit would read the same.</summary>
public static class Figures
{
    private const int MostDecimals = 6;

    /// <summary>Millimetres of doubt and of overlap are whole from here on, and tenths below.</summary>
    private const double WholeFrom = 3;

    /// <summary>An overlap shallower than this has no figure worth reading, mm.</summary>
    private const double LeastDepth = 0.001;

    /// <summary>A value in its quantity's unit, told apart from the limit; a negative gap reads "overlap by at least 3 mm (1/8 in)".</summary>
    /// <remarks>Of parts that overlap it is only known that some pose reaches this depth, so its millimetres are rounded toward less.</remarks>
    public static string Value(double value, QuantityCard quantity, LimitCard limit)
    {
        double bound = Bound(limit);
        if (!IsOverlap(value, quantity)) return WithInches(NumberFormat.Apart(value, bound, Decimals(quantity.Unit)).Value, value, bound, quantity.Unit);
        return -value < LeastDepth ? $"overlap by {Depth(value, limit)}" : $"overlap by {DepthSide(limit)} {Depth(value, limit)} ({DepthInches(-value, -bound, limit)})";
    }

    /// <summary>Whether a value of a quantity says that two parts are inside each other.</summary>
    public static bool IsOverlap(double value, QuantityCard quantity) => quantity.Id == "gap" && value < 0;

    /// <summary>How deep an overlap is, in mm, for drawings; rounded to the side that <see cref="DepthSide"/> names, and told apart from the limit.</summary>
    /// <param name="value">The gap, below zero.</param>
    public static string Depth(double value, LimitCard limit) =>
        -value < LeastDepth ? "less than 0.001 mm" : DirectedApart(-value, -Bound(limit), -value < WholeFrom ? 1 : 0, IsUp(limit), mayBeZero: false).Shown + " mm";

    /// <summary>"at least" where the worst is the deepest overlap, "at most" where it is the shallowest.</summary>
    public static string DepthSide(LimitCard limit) => IsUp(limit) ? "at most" : "at least";

    /// <summary>A value without a limit beside it, in <c>mm</c>, <c>deg</c>, <c>%</c> or another unit.</summary>
    public static string Plain(double value, string unit) => WithInches(NumberFormat.UpTo(value, Decimals(unit)), value, double.NaN, unit);

    /// <summary>A value without the inch fraction, for drawings: <c>18 mm</c>.</summary>
    public static string Brief(double value, string unit) => Spaced(NumberFormat.UpTo(value, Decimals(unit)), unit);

    /// <summary>A number of a column whose heading gives the unit: whole mm, tenths of anything else.</summary>
    public static string Cell(double value, string unit) => NumberFormat.Fixed(value, Decimals(unit));

    /// <summary>The same for a value of a quantity: <c>overlap 12 mm</c> for a gap below zero.</summary>
    public static string Brief(double value, QuantityCard quantity) =>
        IsOverlap(value, quantity) ? "overlap " + Brief(-value, quantity.Unit) : Brief(value, quantity.Unit);

    /// <summary>The limit in words: "at least 50 mm (1-15/16 in)"; for a gap that may be below zero "overlap of at most 2 mm (1/16 in)".</summary>
    public static string Limit(LimitCard limit, QuantityCard quantity, double? value)
    {
        if (limit is { AtLeast: null, AtMost: null, By: { } property }) return $"set by the part's {property}, which the file does not say";
        return Side(limit, quantity, value) + Rest(limit, quantity);
    }

    private static string Rest(LimitCard limit, QuantityCard quantity)
    {
        string other = limit.Other is { } number ? $" and {(limit.AtLeast is null ? "at least" : "at most")} {Plain(number, quantity.Unit)}" : "";
        string floor = limit.Floor is { } least ? $", and {Plain(least, quantity.Unit)} with the give or take" : "";
        return other + floor + (limit.By is { } property ? $" for its {property}" : "");
    }

    private static string Side(LimitCard limit, QuantityCard quantity, double? value)
    {
        (double bound, double other, bool isAtLeast, string lead) = (Bound(limit), value ?? double.NaN, limit.AtLeast is not null, "");
        if (IsOverlap(bound, quantity)) (bound, other, isAtLeast, lead) = (-bound, -other, !isAtLeast, "overlap of ");
        return lead + (isAtLeast ? "at least " : "at most ") + WithInches(NumberFormat.UpTo(bound, MostDecimals), bound, other, quantity.Unit);
    }

    /// <summary>The number of the limit, whichever side it is on, in the quantity's unit.</summary>
    /// <exception cref="ArgumentException">The limit has no side.</exception>
    public static double Bound(LimitCard limit) => limit.AtLeast ?? limit.AtMost ?? throw new ArgumentException("The limit has neither side.", nameof(limit));

    /// <summary>A give-or-take, rounded up so that no doubt is lost: whole mm, tenths below 3 mm and for other units.</summary>
    public static string GiveOrTake(double halfWidth, string unit)
    {
        int decimals = unit == "mm" && halfWidth >= WholeFrom ? 0 : 1;
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
        bool up = IsUp(limit);
        (double rounded, string shown) = DirectedApart(bound, Bound(limit), Decimals(quantity.Unit), up, mayBeZero: true);
        if (IsOverlap(rounded, quantity)) (shown, rounded, up) = (shown.TrimStart('-'), -rounded, !up);
        return quantity.Unit == "mm" ? $"{shown} mm ({Sixteenths(rounded, up)})" : Spaced(shown, quantity.Unit);
    }

    /// <summary>What stands before <see cref="BoundValue"/>: "Never less than", or for a gap that can close "Overlap never deeper than".</summary>
    public static string BoundLabel(double bound, QuantityCard quantity, LimitCard limit) => (limit.AtLeast is not null, IsOverlap(bound, quantity)) switch
    {
        (true, true) => "Overlap never deeper than",
        (true, false) => "Never less than",
        (false, true) => "Overlap never less than",
        (false, false) => "Never more than",
    };

    /// <summary>Worst values lie above the limit for an at-most limit: such figures are rounded up.</summary>
    private static bool IsUp(LimitCard limit) => limit.AtLeast is null;

    /// <summary>A number rounded to one side with so few decimals that it still lies on its own side of another one.</summary>
    private static (double Rounded, string Shown) DirectedApart(double value, double other, int decimals, bool up, bool mayBeZero)
    {
        for (; decimals <= MostDecimals; decimals++)
        {
            double rounded = Directed(value, decimals, up);
            bool isApart = (rounded < other) == (value < other) && (rounded > other) == (value > other);
            if (isApart && (mayBeZero || rounded != 0)) return (rounded, NumberFormat.UpTo(rounded, decimals));
        }

        return (value, NumberFormat.Shortest(value));
    }

    private static string DepthInches(double depth, double limitDepth, LimitCard limit)
    {
        bool up = IsUp(limit);
        string inches = Sixteenths(Directed(depth, MostDecimals, up), up);
        string limitInches = LengthFormat.Inches(Length.FromMillimetres(limitDepth));
        bool isLost = inches == "0 in";
        if (isLost && limitDepth <= 0) return "under 1/16 in";
        if (!isLost && (depth == limitDepth || (inches != limitInches && LengthFormat.Inches(Length.FromMillimetres(depth)) != limitInches))) return inches;
        return DirectedApart(depth / Length.MillimetresPerInch, limitDepth / Length.MillimetresPerInch, 3, up, mayBeZero: false).Shown + " in";
    }

    private static int Decimals(string unit) => unit == "mm" ? 0 : 1;

    private static string Spaced(string number, string unit) => unit.Length == 0 ? number : number + " " + unit;

    private static string WithInches(string shown, double value, double other, string unit)
    {
        if (unit != "mm") return Spaced(shown, unit);
        string inches = LengthFormat.Inches(Length.FromMillimetres(value));
        bool readsTheSame = double.IsFinite(other) && value != other && value != 0 && inches == LengthFormat.Inches(Length.FromMillimetres(other));
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
