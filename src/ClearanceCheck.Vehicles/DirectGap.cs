using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles;

/// <summary>A gap between two parts that was read directly.</summary>
/// <param name="Id">Its id in the file.</param>
/// <param name="Between">The two parts' ids, or a part's and a body's.</param>
/// <param name="State">The state in which it was read.</param>
/// <param name="Reading">The gap, with the half-width of the way it was read.</param>
/// <param name="How">How it was read.</param>
/// <param name="Closes">The direction in which it closes; null when not typed.</param>
public sealed record DirectGap(string Id, ImmutableArray<string> Between, string State, MeasuredLength Reading, GapTool How, string? Closes);
