using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.States;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Reads <c>before-lift</c>: hub to fender at ride height as somebody took it before the lift.</summary>
internal static class BeforeLiftReader
{
    public static void Read(MappingReader reader, VehicleDraft draft) => reader.Optional("before-lift").Mapping(r => ReadHeights(r, draft));

    private static Boxed<int> ReadHeights(MappingReader reader, VehicleDraft draft)
    {
        Within tape = Within.For(Within.Read(reader), draft.FileWithin, Defaults.TapeMm, "a tape reading");
        Field field = reader.Required("hub-to-fender", "the heights at ride height before the lift, by corner");
        var heights = ImmutableSortedDictionary.CreateBuilder<string, MeasuredLength>(StringComparer.Ordinal);
        foreach ((string corner, Placed<LengthReading>? height) in CornerHeights.Read(field, draft.Diagnostics))
            if (height is not null) heights[corner] = draft.Length($"before-lift/hub-to-fender/{corner}", height, tape);
        draft.BeforeLift = heights.ToImmutable();
        return new(heights.Count);
    }
}
