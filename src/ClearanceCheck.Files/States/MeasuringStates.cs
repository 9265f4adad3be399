using System.Collections.Immutable;

namespace ClearanceCheck.Files.States;

/// <summary>The states the vehicle stood in, and the one in which what names none was measured.</summary>
internal sealed record MeasuringStates(string MeasuredIn, ImmutableSortedDictionary<string, TypedState> ByName)
{
    /// <summary>The state that travel is counted from.</summary>
    public const string Ride = "ride";

    public static MeasuringStates None { get; } = new(Ride, ImmutableSortedDictionary<string, TypedState>.Empty);

    public TypedState? AtRide => ByName.GetValueOrDefault(Ride);
}
