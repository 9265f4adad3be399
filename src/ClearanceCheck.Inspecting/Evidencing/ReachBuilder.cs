using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping;

namespace ClearanceCheck.Inspecting.Evidencing;

/// <summary>How far each wheel goes and what ends it.</summary>
internal static class ReachBuilder
{
    private const double AtAStopMm = 0.5;

    public static ImmutableArray<ReachCard> Build(VehicleMotion motion)
    {
        var cards = ImmutableArray.CreateBuilder<ReachCard>();
        foreach (AxleModule module in motion.Modules)
        {
            var space = new ReachableSpace(module.Motion);
            for (int d = 0; d < module.Motion.Box.Dimensions; d++)
            {
                if (space.Farthest(d, -1) is not { } low || space.Farthest(d, 1) is not { } high) continue;
                string label = $"{module.Axle.Name} {(d == 0 ? "left" : "right")} wheel";
                cards.Add(new ReachCard(module.CoordinateNames[d], label, "mm", low[d], high[d], Ends(motion, module, space, low, d), Ends(motion, module, space, high, d)));
            }
        }

        return cards.ToImmutable();
    }

    /// <summary>What a card says where the typed end of the travel looked at, and no stop, ends it.</summary>
    public const string NoStop = "no stop in the file: the travel looked at ends here";

    private static string Ends(VehicleMotion motion, AxleModule module, ReachableSpace space, double[] pose, int coordinate)
    {
        SolvedPose solved = module.Motion.At((ReadOnlySpan<double>)pose);
        ImmutableArray<string> stops = [.. space.Reserves(solved).Where(r => r.Reserve < AtAStopMm).Select(r => Words.Stop(motion.Vehicle, r.Stop.Name))];
        Mechanics.Poses.PoseCoordinate c = module.Motion.Box.Coordinates[coordinate];
        bool atLimit = pose[coordinate] >= c.High - AtAStopMm || pose[coordinate] <= c.Low + AtAStopMm;
        if (atLimit) return NoStop;
        return stops.IsEmpty ? "the links" : string.Join(", ", stops);
    }
}
