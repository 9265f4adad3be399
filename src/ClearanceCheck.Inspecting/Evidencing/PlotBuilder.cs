using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities;
using ClearanceCheck.Sweeping;

namespace ClearanceCheck.Inspecting.Evidencing;

/// <summary>A quantity over each coordinate in turn, the others kept at the worst pose: pictures, never read back.</summary>
internal static class PlotBuilder
{
    private const int Steps = 48;
    private static readonly double StopGiveMm = new SweepSettings().StopGiveMm;

    public static ImmutableArray<PlotCard> Plots(Quantity quantity, MeasureRequest request, Measurement measured, ImmutableArray<double> worst)
    {
        if (measured.Module is not { } module) return [];
        var plots = ImmutableArray.CreateBuilder<PlotCard>();
        for (int d = 0; d < worst.Length; d++) plots.Add(Plot(quantity, request, module, measured.ShiftMm, worst, d));
        return plots.ToImmutable();
    }

    private static PlotCard Plot(Quantity quantity, MeasureRequest request, AxleModule module, double shift, ImmutableArray<double> worst, int coordinate)
    {
        Mechanics.Poses.PoseCoordinate c = module.Motion.Box.Coordinates[coordinate];
        var space = new ReachableSpace(module.Motion);
        var points = ImmutableArray.CreateBuilder<PlotPoint>();
        SortedSet<double> stations = [.. Enumerable.Range(0, Steps + 1).Select(i => c.Low + ((c.High - c.Low) * i / Steps)), worst[coordinate]];
        double[] pose = [.. worst];
        foreach (double at in stations)
        {
            pose[coordinate] = at;
            if (quantity.At(request, pose) is not { } value || !double.IsFinite(value)) continue;
            SolvedPose solved = module.Motion.At((ReadOnlySpan<double>)pose);
            points.Add(new PlotPoint(CoordinateCards.Value(module, coordinate, at), value + shift, space.LeastReserve(solved) >= -StopGiveMm));
        }

        string label = CoordinateCards.Label(module, coordinate) + (c.IsAngle ? "" : " travel");
        return new PlotCard(c.Name, label, CoordinateCards.Unit(module, coordinate), CoordinateCards.Value(module, coordinate, worst[coordinate]), points.ToImmutable());
    }
}
