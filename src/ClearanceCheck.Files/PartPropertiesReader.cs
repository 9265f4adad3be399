using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Reads what a part's entry says beside its shape, such as how far its joint can bend.</summary>
internal static class PartPropertiesReader
{
    private const double MostDegrees = 90;

    private static readonly LengthRange Sizes = new(Length.FromMillimetres(0), Length.FromMillimetres(15_000), "a size of a part");

    /// <summary>The properties by their words; null when one is faulty.</summary>
    public static ImmutableSortedDictionary<string, double>? Read(MappingReader reader, PartKind kind)
    {
        var read = ImmutableSortedDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        bool isFaulty = false;
        foreach (PartProperty property in PartProperties.All.Where(p => p.TypedFor.Contains(kind.Id)))
        {
            Field field = reader.Optional(property.Id);
            if (!field.IsPresent) continue;
            if (ReadValue(field, property) is { } value) read.Add(property.Id, value);
            else isFaulty = true;
        }

        return isFaulty ? null : read.ToImmutable();
    }

    private static double? ReadValue(Field field, PartProperty property)
    {
        if (property.Unit == "mm") return field.Length(Sizes)?.Value.Length.Millimetres;
        if (field.Angle() is not { } angle) return null;
        if (angle.Value.Degrees is > 0 and <= MostDegrees) return angle.Value.Degrees;
        FileMessages.PropertyOutOfRange(field, property, MostDegrees);
        return null;
    }
}
