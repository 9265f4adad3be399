using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Travel;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping;

namespace ClearanceCheck.Inspecting.Evidencing;

/// <summary>How far each wheel, and the steering, goes in any pose, and what ends it.</summary>
internal static class ReachBuilder
{
    private const double AtAStopMm = 0.5;
    private const double AtAnEndRad = 1e-3;

    public static ImmutableArray<ReachCard> Build(VehicleMotion motion)
    {
        var cards = ImmutableArray.CreateBuilder<ReachCard>();
        foreach (AxleModule module in motion.Modules)
        {
            var space = new ReachableSpace(module.Motion);
            for (int d = 0; d < module.Motion.Box.Dimensions; d++)
            {
                if (space.Farthest(d, -1) is not { } low || space.Farthest(d, 1) is not { } high) continue;
                cards.Add(new ReachCard(
                    module.CoordinateNames[d],
                    CoordinateCards.Label(module, d),
                    CoordinateCards.Unit(module, d),
                    CoordinateCards.Value(module, d, low[d]),
                    CoordinateCards.Value(module, d, high[d]),
                    Ends(motion, module, space, low, d),
                    Ends(motion, module, space, high, d)));
            }
        }

        return cards.ToImmutable();
    }

    private static string Ends(VehicleMotion motion, AxleModule module, ReachableSpace space, double[] pose, int coordinate)
    {
        SolvedPose solved = module.Motion.At((ReadOnlySpan<double>)pose);
        ImmutableArray<string> stops = [.. space.Reserves(solved).Where(r => r.Reserve < AtAStopMm).Select(r => Words.Stop(motion.Vehicle, r.Stop.Name))];
        Mechanics.Poses.PoseCoordinate c = module.Motion.Box.Coordinates[coordinate];
        double near = c.IsAngle ? AtAnEndRad : AtAStopMm;
        if (pose[coordinate] >= c.High - near) return coordinate == AxleCoordinates.Of(module).Steer ? "steering lock left" : TravelTableBuilder.NoStop;
        if (pose[coordinate] <= c.Low + near) return coordinate == AxleCoordinates.Of(module).Steer ? "steering lock right" : TravelTableBuilder.NoStop;
        return stops.IsEmpty ? "the links" : string.Join(", ", stops);
    }
}
