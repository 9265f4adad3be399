using System.Collections.Immutable;

namespace ClearanceCheck.Kinematics.Reach;

/// <summary>Which stops an axle meets, in which order, going straight one way from ride height.</summary>
/// <param name="Name">The way: <c>both-down</c>, <c>left-up-right-down</c>, <c>steer-left</c>.</param>
/// <param name="IsAngle">True when the path is steering and its figures are rad.</param>
/// <param name="Crossings">The stops in the order they are met, the first ends the travel; up to 30 mm (or 5 degrees) beyond that.</param>
/// <param name="EndOfRange">Where the path leaves the travel looked at, mm or rad.</param>
/// <param name="SolvedTo">How far along the path the motion was solved, mm or rad.</param>
public sealed record StopPath(string Name, bool IsAngle, ImmutableArray<StopCrossing> Crossings, double EndOfRange, double SolvedTo)
{
    /// <summary>Whether the travel looked at ends before any stop is met.</summary>
    public bool EndsWithoutStop => Crossings.IsEmpty || Crossings[0].At > EndOfRange;
}
