using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Quantities;
using ClearanceCheck.Units;

namespace ClearanceCheck.Rules.Loading;

/// <summary>Reads a value of a quantity in the quantity's unit. A rule file declares no unit, so every value carries its own.</summary>
internal static class ValueReader
{
    private static readonly LengthRange Lengths = new(
        Length.FromMillimetres(-15_000), Length.FromMillimetres(15_000), "a length on a vehicle");

    // A fraction times a hundred is off by a rounding (7 % becomes 7.000000000000001); nobody types more decimals than this.
    private const int PercentDecimals = 9;

    // Degrees go through radians and come back off by a rounding.
    private const int DegreeDecimals = 9;

    /// <summary>The value in the quantity's unit, or null when it is absent or faulty.</summary>
    public static double? Read(Field field, Quantity quantity)
    {
        if (field.Node is ScalarNode scalar && IsReported(field, scalar.Text, quantity)) return null;
        return quantity.Unit switch
        {
            QuantityUnit.Degree => field.Angle() is { } angle ? Math.Round(angle.Value.Degrees, DegreeDecimals) : null,
            QuantityUnit.Percent => field.Percentage() is { } share ? Math.Round(share.Value.Percent, PercentDecimals) : null,
            _ => field.Length(Lengths)?.Value.Length.Millimetres,
        };
    }

    private static bool IsReported(Field field, string text, Quantity quantity)
    {
        if (QuantityText.ParseNumber(text).IsRead)
        {
            RuleMessages.ValueWithoutUnit(field, text, quantity);
            return true;
        }

        bool isOther = (quantity.Unit != QuantityUnit.Millimetre && LengthText.Parse(text, null).IsRead)
            || (quantity.Unit != QuantityUnit.Percent && QuantityText.ParsePercentage(text).IsRead)
            || (quantity.Unit != QuantityUnit.Degree && QuantityText.ParseAngle(text).IsRead)
            || QuantityText.ParseTemperature(text).IsRead;
        if (!isOther) return false;
        RuleMessages.ValueOfOtherUnit(field, text, quantity);
        return true;
    }
}
