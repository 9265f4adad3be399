using System.Collections.Immutable;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping;

/// <summary>Searches only the coordinates that move a pair, and takes what was found back to whole poses.</summary>
/// <remarks>
/// The part's space holds that of the whole, so a bound over the part holds for the whole. A value counts only where a whole pose
/// was found that passes no stop; where one was not, the whole space has to be searched.
/// </remarks>
internal static class PartSweep
{
    /// <summary>The extreme over a part, its poses made whole; null when one can't be.</summary>
    public static Extreme? InWholePoses(IMovingSystem whole, MovingPart part, Extreme found, double stopGiveMm)
    {
        var space = new ReachableSpace(whole);
        var basins = ImmutableArray.CreateBuilder<Basin>(found.Basins.Length);
        foreach (Basin basin in found.Basins)
        {
            if (WholePose(whole, space, part, basin.Pose, stopGiveMm) is not { } pose) return null;
            basins.Add(basin with { Pose = pose });
        }

        return found with { Basins = basins.MoveToImmutable() };
    }

    // The coordinates left out as at ride height and straight ahead; where a stop forbids that, at an end of theirs.
    private static ImmutableArray<double>? WholePose(
        IMovingSystem whole, ReachableSpace space, MovingPart part, ImmutableArray<double> partPose, double stopGiveMm)
    {
        var pose = new double[whole.Box.Dimensions];
        for (int k = 0; k < partPose.Length; k++) pose[part.Coordinates[k]] = partPose[k];
        int[] left = [.. Enumerable.Range(0, pose.Length).Where(k => !part.Coordinates.Contains(k))];
        int choices = 1;
        foreach (int _ in left) choices *= 3;
        for (int choice = 0; choice < choices; choice++)
        {
            for (int i = 0, rest = choice; i < left.Length; rest /= 3, i++)
            {
                PoseCoordinate c = whole.Box.Coordinates[left[i]];
                pose[left[i]] = (rest % 3) switch { 0 => Math.Clamp(0, c.Low, c.High), 1 => c.Low, _ => c.High };
            }

            SolvedPose at = whole.At((ReadOnlySpan<double>)pose);
            if (at.IsSolved && space.LeastReserve(at) >= -stopGiveMm) return [.. pose];
        }

        return null;
    }
}
