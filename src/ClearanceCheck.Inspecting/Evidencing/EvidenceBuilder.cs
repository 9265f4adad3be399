using ClearanceCheck.Inspecting.Planning;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities;

namespace ClearanceCheck.Inspecting.Evidencing;

/// <summary>What a finding shows: value, bound, places in words, readings, drawing and plots.</summary>
internal sealed class EvidenceBuilder(VehicleMotion motion, double coverageFactor)
{
    private const int MostReadings = 6;
    private readonly DrawingBuilder drawings = new(motion);

    public Evidence Build(PlannedMeasurement planned, AppliedRule applied, MeasureRequest request, Measurement measured)
    {
        WorstPlace worst = measured.Places[0];
        bool swapped = planned.Subject[0].Id != applied.Parts[0].Id;
        // Of a bound by the travel alone no pose is known that looks like it.
        bool isSeen = measured.Basis != MeasurementBasis.ReadingAndTravel;
        return new Evidence
        {
            Value = measured.Value,
            Bound = measured.Bound,
            BoundKind = measured.Grade,
            StandardUncertainty = worst.StandardUncertainty,
            CoverageFactor = coverageFactor,
            Pose = Pose(measured.Module, worst),
            WitnessFirst = swapped ? worst.Second : worst.First,
            WitnessSecond = swapped ? worst.First : worst.Second,
            Basins = [.. measured.Places.Select(p => new BasinCard(p.Value, p.StandardUncertainty, Pose(measured.Module, p)))],
            Readings = [.. worst.Shares.Take(MostReadings).Select(s => new ReadingShare(s.Reading, Words.Reading(motion.Vehicle, s.Reading), s.Share, s.HalfWidthMm))],
            Drawing = isSeen && planned.Quantity.IsDrawn ? drawings.Draw(applied.Parts, measured.Module, worst) : new DrawingCard([]),
            Plots = isSeen ? PlotBuilder.Plots(planned.Quantity, request, measured, worst.Pose) : [],
            Cells = measured.Cells,
        };
    }

    private PoseCard Pose(AxleModule? module, WorstPlace place)
    {
        if (module is null) return new PoseCard([], []);
        return new PoseCard(
            [
                .. place.Pose.Select((value, d) => new PoseCoordinate(
                    module.CoordinateNames[d], CoordinateCards.Value(module, d, value), CoordinateCards.Unit(module, d), Words.Coordinate(module, d, value, motion.Parameters.Span))),
            ],
            [.. place.ActiveStops.Select(name => Words.Stop(motion.Vehicle, name))]);
    }
}
