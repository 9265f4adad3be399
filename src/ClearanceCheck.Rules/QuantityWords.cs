using ClearanceCheck.Quantities;
using ClearanceCheck.Units;

namespace ClearanceCheck.Rules;

/// <summary>Values and limits of a quantity in the words that rule files use.</summary>
public static class QuantityWords
{
    public static string Unit(Quantity quantity) => QuantityUnitText.Of(quantity.Unit);

    /// <summary>A value with its unit.</summary>
    public static string Value(double value, Quantity quantity) => $"{NumberFormat.UpTo(value, 9)} {Unit(quantity)}";

    /// <summary>A limit: "at least 50 mm", "between 3 mm and 8 mm".</summary>
    public static string Limit(RuleLimit limit, Quantity quantity) => limit switch
    {
        { OfPart: PartLimit.Own own } => $"at most the part's own {own.Property}",
        { OfPart: PartLimit.Steps steps } => $"at least, by {steps.Property}, {string.Join(", ", steps.Table.Select(s => $"{Value(s.Limit, quantity)} from {NumberFormat.UpTo(s.From, 9)} on"))}",
        { AtLeast: { } least, AtMost: { } most } => $"between {Value(least, quantity)} and {Value(most, quantity)}",
        { AtLeast: { } least } => $"at least {Value(least, quantity)}",
        _ => $"at most {Value(limit.Number, quantity)}",
    };
}
