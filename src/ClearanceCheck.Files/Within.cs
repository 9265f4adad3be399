using ClearanceCheck.Documents.Reading;

namespace ClearanceCheck.Files;

/// <summary>The half-width that applies to a reading, mm.</summary>
/// <param name="IsAssumed">True when nobody typed it.</param>
/// <param name="Why">What the default is for.</param>
internal readonly record struct Within(double HalfWidthMm, bool IsAssumed, string Why)
{
    /// <summary>The nearest that was typed (at the part, then for the file), else the default for what was aimed at.</summary>
    public static Within For(double? ownMm, double? fileMm, double defaultMm, string target) =>
        ownMm is { } own ? new Within(own, false, "") : fileMm is { } file ? new Within(file, false, "") : new Within(defaultMm, true, target);

    /// <summary>Reads a half-width beside a reading.</summary>
    public static double? Read(MappingReader reader) => reader.Optional("within").Length(LengthRange.Allowance)?.Value.Length.Millimetres;
}
