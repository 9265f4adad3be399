using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles;

/// <summary>A gap between two parts that was read directly.</summary>
/// <param name="Id">Its id in the file.</param>
/// <param name="Between">The two parts' ids, or a part's and a body's.</param>
/// <param name="State">The state in which it was read.</param>
/// <param name="Reading">The gap, with the half-width of the way it was read.</param>
/// <param name="How">How it was read.</param>
/// <param name="Closes">The direction in which it closes; null when not typed.</param>
public sealed record DirectGap(string Id, ImmutableArray<string> Between, string State, MeasuredLength Reading, GapTool How, string? Closes)
{
    /// <summary>True when it was read between these very parts.</summary>
    public bool IsBetween(Part first, Part second) =>
        (Between[0] == first.Id && Between[1] == second.Id) || (Between[0] == second.Id && Between[1] == first.Id);

    /// <summary>True when it was read between these parts, or the bodies they are on: no two things of those are nearer than it says.</summary>
    public bool Covers(Part first, Part second) =>
        (Names(Between[0], first) && Names(Between[1], second)) || (Names(Between[0], second) && Names(Between[1], first));

    private static bool Names(string side, Part part) => side == part.Id || (part.Form.Ends.IsEmpty && side == part.Body);
}
