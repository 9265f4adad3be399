using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.States;
using ClearanceCheck.Files.Wheels;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Reads <c>before-lift</c>: hub to fender as somebody took it before the lift, at ride height and at the ends of the travel, and the tire that was fitted.</summary>
internal static class BeforeLiftReader
{
    public static void Read(MappingReader reader, VehicleDraft draft) => reader.Optional("before-lift").Mapping(r => ReadHeights(r, draft));

    private static Boxed<int> ReadHeights(MappingReader reader, VehicleDraft draft)
    {
        double? within = Within.Read(reader);
        Within tape = Within.For(within, draft.FileWithin, Defaults.TapeMm, "a tape reading");
        const string Heights = "hub-to-fender";
        Field field = OriginalTireReader.IsTyped(reader) ? reader.Optional(Heights) : reader.Required(Heights, "the heights at ride height before the lift, by corner");
        var heights = ImmutableSortedDictionary.CreateBuilder<string, MeasuredLength>(StringComparer.Ordinal);
        ImmutableSortedDictionary<string, Placed<LengthReading>?> typed = CornerHeights.Read(field, draft.Diagnostics);
        foreach ((string corner, Placed<LengthReading>? height) in typed)
            if (height is not null) heights[corner] = draft.Length($"before-lift/hub-to-fender/{corner}", height, tape);
        draft.BeforeLift = heights.ToImmutable();
        OriginalTravelReader.Read(reader, typed, draft.BeforeLift, tape, draft);
        OriginalTireReader.Read(reader, within, draft);
        return new(heights.Count);
    }
}
