using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.States;

/// <summary>Reads <c>states</c> and <c>measured-in</c>.</summary>
internal static class StatesReader
{
    private static readonly ImmutableArray<string> Supports = ["level-floor", "frame-lift"];
    private static readonly ImmutableArray<string> Bars = ["connected", "disconnected", "absent"];

    public static void Read(MappingReader reader, VehicleDraft draft)
    {
        var states = ImmutableSortedDictionary.CreateBuilder<string, TypedState>(StringComparer.Ordinal);
        Field field = reader.Required("states", "how the vehicle stood while it was measured, with its hub-to-fender heights");
        foreach ((Placed<string> name, Field value) in field.Entries() ?? [])
        {
            draft.Remember($"states/{name.Value}", name.Span);
            if (value.Mapping(r => ReadState(r, name.Value, draft)) is { } state) states[name.Value] = state;
        }

        Field measuredIn = reader.Required("measured-in", "the state in which all was measured that names none");
        Placed<string>? measured = field.IsPresent && states.Count > 0 ? measuredIn.Word([.. states.Keys]) : measuredIn.Id();
        draft.States = new MeasuringStates(measured?.Value ?? MeasuringStates.Ride, states.ToImmutable());
    }

    private static TypedState ReadState(MappingReader reader, string name, VehicleDraft draft)
    {
        string? on = reader.Optional("on").Word(Supports)?.Value;
        string? bar = reader.Optional("anti-roll-bar").Word(Bars)?.Value;
        string? load = reader.Optional("load").Text()?.Value, fuel = reader.Optional("fuel").Text()?.Value;
        return new TypedState(new MeasuringState(name, on, bar, load, fuel), CornerHeights.Read(reader.Optional("hub-to-fender"), draft.Diagnostics));
    }
}
