using System.Collections.Immutable;
using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;

namespace ClearanceCheck.Files.States;

/// <summary>Reads <c>hub-to-fender</c>: a height at each corner.</summary>
internal static class CornerHeights
{
    private static readonly LengthRange HubToFender = new(Length.FromMillimetres(50), Length.FromMillimetres(2500), "a height from hub to fender");

    /// <summary>The heights by corner; null for one with a fault.</summary>
    public static ImmutableSortedDictionary<string, Placed<LengthReading>?> Read(Field field, DiagnosticBag bag)
    {
        var heights = ImmutableSortedDictionary.CreateBuilder<string, Placed<LengthReading>?>(StringComparer.Ordinal);
        foreach ((Placed<string> corner, Field value) in field.Entries() ?? [])
        {
            if (!IsCorner(corner.Value)) FileMessages.NoCorner(bag, corner);
            heights[corner.Value] = value.Length(HubToFender);
        }

        return heights.ToImmutable();
    }

    private static bool IsCorner(string key) => key.EndsWith("-left", StringComparison.Ordinal) || key.EndsWith("-right", StringComparison.Ordinal);
}
