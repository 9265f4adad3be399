using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;

namespace ClearanceCheck.Files;

/// <summary>The states the vehicle stood in, and the one in which its points were measured.</summary>
internal sealed record MeasuringStates(string MeasuredIn, ImmutableSortedDictionary<string, MeasuringState> ByName)
{
    /// <summary>The state that travel is counted from.</summary>
    public const string Ride = "ride";

    public static MeasuringStates None { get; } = new(Ride, ImmutableSortedDictionary<string, MeasuringState>.Empty);

    public MeasuringState? Measured => ByName.GetValueOrDefault(MeasuredIn);

    public MeasuringState? AtRide => ByName.GetValueOrDefault(Ride);
}

/// <summary>One state with its hub-to-fender readings by corner: <c>rear-left</c>.</summary>
internal sealed record MeasuringState(string Name, ImmutableSortedDictionary<string, Placed<LengthReading>> HubToFender);
