using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.States;

/// <summary>One state with its hub-to-fender readings by corner, <c>rear-left</c>; null for one with a fault, which has been said.</summary>
internal sealed record TypedState(MeasuringState State, ImmutableSortedDictionary<string, Placed<LengthReading>?> HubToFender);
