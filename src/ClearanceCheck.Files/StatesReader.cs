using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;

namespace ClearanceCheck.Files;

/// <summary>Reads <c>states</c> and <c>measured-in</c>.</summary>
internal static class StatesReader
{
    private static readonly ImmutableArray<string> Supports = ["level-floor", "frame-lift"];
    private static readonly LengthRange HubToFender = new(Length.FromMillimetres(50), Length.FromMillimetres(2500), "a height from hub to fender");

    public static void Read(MappingReader reader, VehicleDraft draft)
    {
        var states = ImmutableSortedDictionary.CreateBuilder<string, MeasuringState>(StringComparer.Ordinal);
        Field field = reader.Required("states", "how the vehicle stood while it was measured, with its hub-to-fender heights");
        foreach ((Placed<string> name, Field value) in field.Entries() ?? [])
            if (value.Mapping(r => ReadState(r, name.Value)) is { } state) states[name.Value] = state;
        Field measuredIn = reader.Required("measured-in", "the state in which the points were measured");
        Placed<string>? measured = field.IsPresent && states.Count > 0 ? measuredIn.Word([.. states.Keys]) : measuredIn.Id();
        draft.States = new MeasuringStates(measured?.Value ?? MeasuringStates.Ride, states.ToImmutable());
    }

    private static MeasuringState ReadState(MappingReader reader, string name)
    {
        reader.Required("on", "what carried the vehicle: level-floor or frame-lift").Word(Supports);
        var heights = ImmutableSortedDictionary.CreateBuilder<string, Placed<LengthReading>>(StringComparer.Ordinal);
        foreach ((Placed<string> corner, Field value) in reader.Optional("hub-to-fender").Entries() ?? [])
            if (value.Length(HubToFender) is { } height) heights[corner.Value] = height;
        return new MeasuringState(name, heights.ToImmutable());
    }
}
