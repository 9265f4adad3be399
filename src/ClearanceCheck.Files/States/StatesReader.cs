using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.States;

/// <summary>Reads <c>states</c> and <c>measured-in</c>.</summary>
internal static class StatesReader
{
    private const string FrameLift = "frame-lift";
    private static readonly ImmutableArray<string> Supports = ["level-floor", FrameLift];
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

        foreach (TypedState state in states.Values) CheckHanging(state, states.GetValueOrDefault(MeasuringStates.Ride), draft);
        Field measuredIn = reader.Required("measured-in", "the state in which all was measured that names none");
        Placed<string>? measured = field.IsPresent && states.Count > 0 ? measuredIn.Word([.. states.Keys]) : measuredIn.Id();
        draft.States = new MeasuringStates(measured?.Value ?? MeasuringStates.Ride, states.ToImmutable());
    }

    // Lifted by the frame, no wheel rises.
    private static void CheckHanging(TypedState state, TypedState? ride, VehicleDraft draft)
    {
        if (state.State.On != FrameLift || ride is null || ride == state) return;
        foreach ((string corner, Placed<LengthReading>? hanging) in state.HubToFender)
            if (hanging is not null && ride.HubToFender.GetValueOrDefault(corner) is { } stood && hanging.Value.Length < stood.Value.Length)
                FileMessages.HangsAboveRide(draft.Diagnostics, state.State.Name, corner, hanging, stood);
    }

    private static TypedState ReadState(MappingReader reader, string name, VehicleDraft draft)
    {
        string? on = reader.Optional("on").Word(Supports)?.Value;
        string? bar = reader.Optional("anti-roll-bar").Word(Bars)?.Value;
        string? load = reader.Optional("load").Text()?.Value, fuel = reader.Optional("fuel").Text()?.Value;
        return new TypedState(new MeasuringState(name, on, bar, load, fuel), CornerHeights.Read(reader.Optional("hub-to-fender"), draft.Diagnostics));
    }
}
