using System.Collections.Immutable;

namespace ClearanceCheck.Mechanics.Poses;

/// <summary>Part of a moving system that moves by itself, with fewer coordinates: what is left out does not act back on it.</summary>
/// <remarks>Stops between bodies that are all in the part cut its box; others are left out, so its space holds that of the whole.</remarks>
/// <param name="System">The part.</param>
/// <param name="Bodies">For each of its bodies the number in the whole; the chassis comes first.</param>
/// <param name="Coordinates">For each of its coordinates the number in the whole.</param>
public sealed record MovingPart(IMovingSystem System, ImmutableArray<int> Bodies, ImmutableArray<int> Coordinates);
