using ClearanceCheck.Geometry;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Gaps;

/// <summary>What a direct reading and the travel alone say of a gap, where a part has no shape.</summary>
/// <remarks>
/// For x of one part and y of the other, with R the second body's pose in the first's frame and R0 that of the reading's state,
/// |x - R y| >= |x - R0 y| - |R y - R0 y|: the gap in any pose is at least the gap as read less the largest displacement of any point
/// of the second part. R y - R0 y is affine in y and its length convex, so it is largest at a corner of a region that holds the part;
/// there it is a chord, from the corner's place in the state to the corner, and the sweep bounds the longest over all reachable poses.
/// Either part may be the one that is displaced: the lesser of the two counts.
/// </remarks>
internal static class TravelBound
{
    // The bound is a coarse one: half a millimetre more is not worth the search.
    private const double ToleranceMm = 0.5;

    // Corners this near the farthest may decide, their give or take counted.
    private const double ReachMm = 15;

    public static Measurement Of(MeasureRequest request, PairPlan plan)
    {
        (Part first, Part second) = (request.First, request.Second!);
        DirectGap[] covering = [.. request.Motion.Vehicle.DirectGaps.Where(g => g.IsBetween(first, second) || g.Covers(first, second))];
        if (covering.Length == 0) return new Measurement { NotEvaluated = $"{NoShape(first, second)}, and no gap between the two was read" };
        Measurement[] all = [.. covering.Select(g => One(request, plan, g))];
        // A gap to a whole body is that to its nearest thing: where the two parts themselves were read, it says less.
        bool isOfParts = all.Any(m => m.Readings[0].IsOfParts);
        Measurement least = all.Where(m => m.Readings[0].IsOfParts == isOfParts).MinBy(m => m.NotEvaluated is null ? m.Bound : double.NegativeInfinity)!;
        return least with { Readings = [.. all.Select(m => m == least ? m.Readings[0] with { Counts = true } : m.Readings[0])] };
    }

    private static string NoShape(Part first, Part second)
    {
        Part[] unshaped = [.. new[] { first, second }.Where(p => p.Form is PartForm.Unshaped)];
        return unshaped.Length == 2 ? $"{first.Name} and {second.Name} have no shape in the file" : $"{unshaped[0].Name} has no shape in the file";
    }

    private static Measurement One(MeasureRequest request, PairPlan plan, DirectGap direct)
    {
        DirectReading reading = Readings.Of(request, direct);
        if (plan.Module is not { } module) return Still(reading, direct);
        if (StatePoses.Of(request.Motion, module, direct.State) is not { } state)
            return new Measurement { NotEvaluated = "the axle can't be posed as it stood when the gap was read", Readings = [reading], Module = module };
        Measurement[] sides =
        [
            .. new[] { (request.First, request.Second!), (request.Second!, request.First) }
                .Select(s => Side(request, plan, direct, reading, state, s.Item1, s.Item2)).OfType<Measurement>(),
        ];
        if (sides.Length == 0)
            return new Measurement { NotEvaluated = "nothing says where on its body either part is, so how far the two move against each other is not known", Readings = [reading], Module = module };
        return sides.MaxBy(m => m.NotEvaluated is null ? m.Bound : double.NegativeInfinity)!;
    }

    // Two that never move against each other keep the gap that was read.
    private static Measurement Still(DirectReading reading, DirectGap direct) => new()
    {
        Value = reading.MeasuredMm,
        Bound = reading.MeasuredMm,
        Grade = Grade.Proven,
        Basis = MeasurementBasis.ReadingAndTravel,
        Places = [new WorstPlace(reading.MeasuredMm, [], default, default, reading.StandardUncertaintyMm, [], [], false)],
        Readings = [reading with { TravelMm = 0 }],
    };

    // The part as the one that is displaced, in the frame of what carries the other; null where its region, or the other's body, is not known.
    private static Measurement? Side(MeasureRequest request, PairPlan plan, DirectGap direct, DirectReading reading, StatePoses state, Part moved, Part other)
    {
        if (MovedRegion.Of(request.Motion, moved) is not { } region || request.Motion.CarriersOf(other) is not [var carrier]) return null;
        (int frame, int body) = (request.Motion.Find(carrier).Number, request.Motion.Find(region.Body).Number);
        SweepSettings settings = PairPlan.Settings(request, double.PositiveInfinity) with { ToleranceMm = ToleranceMm, ReachMm = ReachMm };
        Vector3d[] corners = region.Corners(request.Motion.Parameters);
        RigidMotion stood = state.AsMeasured.Relative(frame, body);
        Extreme[] chords = [.. corners.Select(c => Sweep.LongestChord(plan.Module!.Motion, frame, stood.Apply(c), body, c, settings))];
        double longest = chords.Max(c => double.IsFinite(c.Bound) ? c.Bound : double.PositiveInfinity);
        List<Measurement> measured = [];
        for (int i = 0; i < corners.Length; i++)
        {
            if (chords[i].Bound < longest - ReachMm && chords[i].UnsolvedRegions == 0) continue;
            int corner = i;
            Measurement own = ExtremeMeasurement.Of(
                request, plan, chords[i], [], chord => reading.MeasuredMm - chord,
                (at, _) => Least(at, state, direct, region, corner, frame, body), region.Indices.Concat(direct.Reading.Indices));
            if (own.NotEvaluated is not null) return own with { Readings = [reading] };
            measured.Add(own);
        }

        return MemberMeasurements.Merged(measured, ReachMm) with
        {
            Basis = MeasurementBasis.ReadingAndTravel,
            Readings = [reading with { TravelMm = longest }],
            AssumesBetweenPointsOf = region.IsAssumed ? moved : null,
        };
    }

    private static double Least(Snapshot at, StatePoses state, DirectGap direct, MovedRegion region, int corner, int frame, int body)
    {
        if (state.With(at) is not { } stood) return double.NaN;
        Vector3d place = region.Corners(at.Parameters)[corner];
        double displaced = (at.Relative(frame, body).Apply(place) - stood.Relative(frame, body).Apply(place)).Length;
        return direct.Reading.At(at.Parameters.Span) - displaced;
    }
}
