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

    /// <summary>The value in the quantity's unit, or null when it is absent or faulty.</summary>
    public static double? Read(Field field, Quantity quantity)
    {
        if (field.Node is ScalarNode scalar && IsReported(field, scalar.Text, quantity)) return null;
        return quantity.Unit switch
        {
            QuantityUnit.Percent => field.Percentage() is { } share ? Math.Round(share.Value.Percent, PercentDecimals) : null,
            _ => field.Length(Lengths)?.Value.Length.Millimetres,
        };
    }

    private static bool IsReported(Field field, string text, Quantity quantity)
    {
        bool isShare = quantity.Unit == QuantityUnit.Percent;
        if (QuantityText.ParseNumber(text).IsRead)
        {
            RuleMessages.ValueWithoutUnit(field, text, quantity);
            return true;
        }

        bool isOther = isShare ? LengthText.Parse(text, null).IsRead : QuantityText.ParsePercentage(text).IsRead;
        if (!isOther && !QuantityText.ParseAngle(text).IsRead && !QuantityText.ParseTemperature(text).IsRead) return false;
        RuleMessages.ValueOfOtherUnit(field, text, quantity);
        return true;
    }
}
