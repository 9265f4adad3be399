using ClearanceCheck.Documents.Reading;

namespace ClearanceCheck.Files;

/// <summary>The number of the file's format: 1.</summary>
internal static class FormatKey
{
    public static void Check(MappingReader reader)
    {
        Field field = reader.Required("format", "the number of this file's format: 1");
        if (field.PositiveInteger() is { Value: not 1 }) FileMessages.OtherFormat(field);
    }
}
