using System.Collections.Immutable;
using System.Diagnostics;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Reach;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Inspecting.Travel;

/// <summary>Makes the travel table of every axle.</summary>
internal static class TravelTableBuilder
{
    /// <summary>What ends a pose where the typed end of the travel looked at, and no stop, does.</summary>
    public const string NoStop = "no stop in the file: the travel looked at ends here";

    /// <param name="motion">The vehicle in motion.</param>
    /// <param name="poses">The named poses of each of its axles.</param>
    public static ImmutableArray<TravelTable> Build(VehicleMotion motion, ImmutableArray<ImmutableArray<ExtremePose>> poses) =>
        [.. motion.Modules.Zip(poses, (module, own) => Build(motion, module, own))];

    private static TravelTable Build(VehicleMotion motion, AxleModule module, ImmutableArray<ExtremePose> poses)
    {
        var columns = new TravelColumns(motion, module, poses.Single(p => p.Name == ExtremePoses.RideHeight).Solved);
        ImmutableArray<TravelColumn> shown = columns.Columns;
        return new TravelTable(
            module.Axle.Name,
            shown,
            [.. poses.Select(p => Row(motion, p, p.Solved.IsSolved ? columns.Of(p.Pose, p.Solved) : [.. shown.Select(_ => (double?)null)]))],
            [.. StopPaths.Of(module).Select(p => Path(motion, p))]);
    }

    private static TravelRow Row(VehicleMotion motion, ExtremePose pose, ImmutableArray<double?> values) => new(
        pose.Name,
        PoseLabels.Pose(pose.Name),
        Answer(pose),
        [.. pose.Holds.Select(h => End(motion, h))],
        [.. pose.Passed.Select(p => new TravelPassed(p.Name, Words.Stop(motion.Vehicle, p.Name), p.BeyondMm))],
        values);

    private static string Answer(ExtremePose pose) => pose.Solved.Answer switch
    {
        PoseAnswerKind.Solved => pose.IsReached ? "reached" : "stopped",
        PoseAnswerKind.Unreachable => "unreachable",
        PoseAnswerKind.NotSolved => "not-solved",
        _ => throw new UnreachableException(),
    };

    private static TravelEnd End(VehicleMotion motion, PoseHold hold) => hold.Kind switch
    {
        PoseHoldKind.Stop => new TravelEnd(hold.Name, Words.Stop(motion.Vehicle, hold.Name), true),
        PoseHoldKind.Lock => new TravelEnd(hold.Name, hold.Name, true),
        PoseHoldKind.EndOfTravel => new TravelEnd(hold.Name, NoStop, false),
        PoseHoldKind.EndOfRange => new TravelEnd(hold.Name, hold.Name, false),
        PoseHoldKind.Links => new TravelEnd(hold.Name, "the links: the motion could not be solved beyond", false),
        _ => throw new UnreachableException(),
    };

    private static TravelPath Path(VehicleMotion motion, StopPath path)
    {
        double scale = path.IsAngle ? Trigonometry.DegreesPerRadian : 1;
        return new TravelPath(
            path.Name,
            PoseLabels.Path(path.Name),
            path.IsAngle ? "deg" : "mm",
            path.EndOfRange * scale,
            path.EndsWithoutStop,
            [.. path.Crossings.Select(c => new TravelMet(c.Stop, Words.Stop(motion.Vehicle, c.Stop), c.At * scale, c.BeyondAtRideMm))]);
    }
}
