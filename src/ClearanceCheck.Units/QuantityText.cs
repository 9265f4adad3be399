using System.Globalization;
using static ClearanceCheck.Units.NumberScanner;

namespace ClearanceCheck.Units;

/// <summary>Angles, shares, temperatures and plain numbers as people write them; all but the plain number always carry their unit.</summary>
public static class QuantityText
{
    /// <summary>Reads an angle: <c>18 deg</c>, <c>18°</c>, <c>-3.5 deg</c>.</summary>
    public static ParseResult<Angle> ParseAngle(string text) =>
        Parse<Angle>(text, "an angle", ["deg", "°"], (value, _) => Angle.FromDegrees(value));

    /// <summary>Reads a share: <c>5 %</c>, <c>5%</c>.</summary>
    public static ParseResult<Percentage> ParsePercentage(string text) =>
        Parse<Percentage>(text, "a share", ["%"], (value, _) => Percentage.FromPercent(value));

    /// <summary>Reads a temperature: <c>90 °C</c>, <c>90 degC</c>, <c>194 °F</c>, <c>194 degF</c>; nothing below absolute zero.</summary>
    public static ParseResult<Temperature> ParseTemperature(string text) =>
        Parse<Temperature>(text, "a temperature", ["°C", "degC", "°F", "degF"], ToTemperature);

    /// <summary>Reads a stiffness: <c>9000 N/mm</c>.</summary>
    public static ParseResult<Stiffness> ParseStiffness(string text) =>
        Parse<Stiffness>(text, "a stiffness", ["N/mm"], (value, _) => Stiffness.FromNewtonsPerMillimetre(value));

    /// <summary>Reads a stiffness against twisting: <c>4600 Nm/rad</c>, <c>80 Nm/deg</c>.</summary>
    public static ParseResult<TurningStiffness> ParseTurningStiffness(string text) =>
        Parse<TurningStiffness>(
            text,
            "a stiffness against turning",
            ["Nm/rad", "Nm/deg"],
            (value, unit) => unit == "Nm/deg" ? TurningStiffness.FromNewtonMetresPerDegree(value) : TurningStiffness.FromNewtonMetresPerRadian(value));

    /// <summary>Reads a plain finite number, an exponent allowed: <c>0.35</c>, <c>1.2e-5</c>.</summary>
    public static ParseResult<double> ParseNumber(string text)
    {
        var number = SignedNumber(text, "a number", true, out var end, out var fault);
        if (fault is not null) return new ParseResult<double>(fault);
        end = SkipSpaces(text, end);
        return end == text.Length ? new ParseResult<double>(number) : new ParseResult<double>(UnitMessages.NoUnitHere(text, end));
    }

    private static ParseResult<T> Parse<T>(string text, string what, string[] units, Func<double, string, T?> make)
        where T : struct
    {
        var number = SignedNumber(text, what, false, out var end, out var fault);
        if (fault is not null) return new ParseResult<T>(fault);
        var start = SkipSpaces(text, end);
        var unit = text[start..].TrimEnd();
        if (unit.Length == 0) return new ParseResult<T>(UnitMessages.UnitMissing(text, end, what, units));
        if (!units.Contains(unit, StringComparer.Ordinal)) return new ParseResult<T>(UnitMessages.WrongUnit(unit, start, what, units));
        return make(number, unit) is { } made ? new ParseResult<T>(made) : new ParseResult<T>(UnitMessages.BelowAbsoluteZero(text));
    }

    private static Temperature? ToTemperature(double value, string unit)
    {
        var celsius = unit.EndsWith('F') ? (value - 32) * 5 / 9 : value;
        return celsius >= Temperature.AbsoluteZeroCelsius ? Temperature.FromCelsius(celsius) : null;
    }

    private static double SignedNumber(string text, string what, bool allowsExponent, out int end, out ParseFault? fault)
    {
        end = SkipSpaces(text, 0);
        fault = end == text.Length ? UnitMessages.Empty(end, what) : null;
        if (fault is not null) return 0;
        var isNegative = IsMinus(text[end]);
        if (isNegative || text[end] == '+') end++;
        var start = end;
        var number = Scan(text, start, out fault);
        if (fault is { Id: UnitMessages.ExponentId } && allowsExponent)
        {
            end = start + fault.Extent;
            fault = null;
            var parsed = double.Parse(text.AsSpan(start, end - start), NumberStyles.Float, CultureInfo.InvariantCulture);
            return isNegative ? -parsed : parsed;
        }

        if (number is not { } found) return 0;
        end = found.End;
        if (HasLeadingZero(text, found) && SkipSpaces(text, end) == text.Length && allowsExponent) fault = UnitMessages.LeadingZero(text, start, end);
        return (double)(isNegative ? -found.Value : found.Value);
    }

    private static bool HasLeadingZero(string text, NumberToken number) =>
        number.End - number.Start > 1 && text[number.Start] == '0' && char.IsAsciiDigit(text[number.Start + 1]);
}
