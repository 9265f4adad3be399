using System.Collections.Immutable;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Quantities;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Rules.Loading;

/// <summary>Reads which property of a part sets a limit, and values of properties.</summary>
internal static class PropertyReader
{
    private static readonly LengthRange Sizes = new(Length.FromMillimetres(0), Length.FromMillimetres(15_000), "a size of a part");

    private static readonly ImmutableArray<string> Words = [.. PartProperties.All.Select(p => p.Id)];

    public static PartProperty? ReadWord(Field field) => field.Word(Words) is { } word ? PartProperties.Find(word.Value) : null;

    /// <summary>A property that is itself the limit, so it has the quantity's unit.</summary>
    public static PartProperty? ReadOwn(Field field, Quantity quantity)
    {
        if (ReadWord(field) is not { } property) return null;
        if (property.Unit == QuantityWords.Unit(quantity)) return property;
        RuleMessages.OwnOfOtherUnit(field, property, quantity);
        return null;
    }

    /// <summary>A value in the property's unit.</summary>
    public static double? ReadValue(Field field, PartProperty property)
    {
        if (field.Node is ScalarNode scalar && QuantityText.ParseNumber(scalar.Text).IsRead)
        {
            LimitMessages.SizeWithoutUnit(field, scalar.Text, property);
            return null;
        }

        return property.Unit == "deg"
            ? field.Angle() is { } angle ? angle.Value.Degrees : null
            : field.Length(Sizes)?.Value.Length.Millimetres;
    }

    /// <summary>The properties that an example's part has; null when one is faulty.</summary>
    public static ImmutableSortedDictionary<string, double>? ReadAll(MappingReader reader)
    {
        var read = ImmutableSortedDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        bool isFaulty = false;
        foreach (PartProperty property in PartProperties.All)
        {
            Field field = reader.Optional(property.Id);
            if (!field.IsPresent) continue;
            if (ReadValue(field, property) is { } value) read.Add(property.Id, value);
            else isFaulty = true;
        }

        return isFaulty ? null : read.ToImmutable();
    }
}
