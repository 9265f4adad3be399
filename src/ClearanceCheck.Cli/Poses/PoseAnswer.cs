using System.Collections.Immutable;
using System.Diagnostics;
using ClearanceCheck.Cli.Inputs;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping;

namespace ClearanceCheck.Cli.Poses;

/// <summary>What can be said of one pose of one axle.</summary>
/// <param name="Module">The axle.</param>
/// <param name="Pose">Its coordinates, mm or rad.</param>
/// <param name="Solved">Where its bodies are.</param>
/// <param name="Stops">Every stop with its reserve, mm; empty when not solved.</param>
/// <param name="StoppedBy">Names of the stops, and ends of the travel looked at, that lie before this pose.</param>
internal sealed record PoseAnswer(
    AxleModule Module, ImmutableArray<double> Pose, SolvedPose Solved, ImmutableArray<(string Name, double ReserveMm)> Stops, ImmutableArray<string> StoppedBy)
{
    // A stop passed by less than this is met: far under any length that matters, far over rounding.
    private const double MetMm = 1e-6;
    private const double MetRad = 1e-9;

    /// <summary>The words of machine output, the better first.</summary>
    public static ImmutableArray<string> Words { get; } = ["solved", "stopped", "unreachable", "not-solved"];

    public string Word => Solved.Answer switch
    {
        PoseAnswerKind.Solved => StoppedBy.IsEmpty ? Words[0] : Words[1],
        PoseAnswerKind.Unreachable => Words[2],
        PoseAnswerKind.NotSolved => Words[3],
        _ => throw new UnreachableException(),
    };

    public static PoseAnswer Of(AxleModule module, PoseTyped typed)
    {
        double[] pose = typed.Of(module);
        SolvedPose solved = module.Motion.At((ReadOnlySpan<double>)pose);
        ImmutableArray<(string Name, double ReserveMm)> stops = solved.IsSolved
            ? [.. new ReachableSpace(module.Motion).Reserves(solved).Select(r => (r.Stop.Name, r.Reserve))]
            : [];
        return new PoseAnswer(module, [.. pose], solved, stops, [.. stops.Where(s => s.ReserveMm < -MetMm).Select(s => s.Name), .. BeyondTravel(module, pose)]);
    }

    private static IEnumerable<string> BeyondTravel(AxleModule module, double[] pose)
    {
        for (int d = 0; d < pose.Length; d++)
        {
            PoseCoordinate c = module.Motion.Box.Coordinates[d];
            double met = c.IsAngle ? MetRad : MetMm;
            if (pose[d] > c.High + met) yield return module.EndOfTravel(d, high: true);
            if (pose[d] < c.Low - met) yield return module.EndOfTravel(d, high: false);
        }
    }
}
