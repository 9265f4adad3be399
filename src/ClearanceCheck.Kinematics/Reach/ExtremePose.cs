using System.Collections.Immutable;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Kinematics.Reach;

/// <summary>A named pose of an axle at the end of what its stops let it do.</summary>
/// <param name="Name">The word in commands and files: <c>full-droop</c>.</param>
/// <param name="Pose">Its coordinates, mm or rad.</param>
/// <param name="Solved">Where the bodies are; the answer says why not when they are not known.</param>
/// <param name="Holds">What ends it there; empty at ride height unless a stop is met there.</param>
/// <param name="Passed">Stops that it lies beyond: the pose was not reached, because no way back onto them was found.</param>
public sealed record ExtremePose(string Name, ImmutableArray<double> Pose, SolvedPose Solved, ImmutableArray<PoseHold> Holds, ImmutableArray<PassedStop> Passed)
{
    /// <summary>Whether the axle can stand so: the motion is solved and no stop lies before it.</summary>
    public bool IsReached => Solved.IsSolved && Passed.IsEmpty;
}
