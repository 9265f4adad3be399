using System.Collections.Immutable;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Quantities.Shapes;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Gaps;

/// <summary>The smallest distance between two surfaces, mm; negative when they overlap.</summary>
/// <remarks>Of two parts that overlap it is known how deep they do at least: one piece of one against one piece of the other.</remarks>
public sealed class GapQuantity : Quantity
{
    // Tubes and rods of two shocks make four.
    private const int MostMembers = 4;

    public override string Id => "gap";

    public override string Name => "gap";

    public override string Meaning => "the smallest distance between the two surfaces in any reachable pose; negative when they overlap";

    public override QuantityUnit Unit => QuantityUnit.Millimetre;

    public override bool IsOfPair => true;

    public override bool IsWorstWhenLeast => true;

    public override string? Refuses(Part first, Part? second)
    {
        if (second is null) return "a gap needs two parts";
        foreach (Part part in new[] { first, second })
            if (!PartShapes.HasShape(part) && part.Form is not PartForm.Unshaped) return $"{part.Name} has no shape that a gap could be measured to";
        return null;
    }

    public override Measurement Measure(MeasureRequest request)
    {
        (Part first, Part second) = (request.First, request.Second!);
        if (PairPlan.For(request.Motion, first, second) is not { } plan)
            return new Measurement { NotEvaluated = $"{first.Name} and {second.Name} ride on two axles, which can't be moved together yet" };
        if (first.Form is PartForm.Unshaped || second.Form is PartForm.Unshaped) return TravelBound.Of(request, plan);
        (ImmutableArray<Anchor> anchors, ImmutableArray<DirectReading> notUsed) = Anchor.Of(request, plan, at => Whole(request, at));
        return Modelled(Anchor.Widened(request, anchors), plan, anchors, notUsed);
    }

    // The model's gap, and what each direct reading makes of it.
    private static Measurement Modelled(MeasureRequest request, PairPlan plan, ImmutableArray<Anchor> anchors, ImmutableArray<DirectReading> notUsed)
    {
        Part[] parts = [request.First, request.Second!];
        List<Measurement> points = [];
        List<Measurement>[] anchored = [.. anchors.Select(_ => new List<Measurement>())];
        double reach = PairPlan.Settings(request, request.Ceiling).ReachMm;
        foreach ((int i, int j, SweptSolid a, SweptSolid b) in NearestFirst(MemberPairs(request, request.Motion.Parameters.Span), plan, out bool many))
        {
            // Of many members those that stay farther off than any place that counts need no closer look; a direct reading shifts each its own way.
            MeasureRequest asked = many && points.Count > 0 && anchors.IsEmpty
                ? request with { Ceiling = Math.Min(request.Ceiling, points.Min(p => p.Value) + reach), IsRoughBeyondCeiling = true }
                : request;
            (Extreme least, ImmutableArray<PoseSubset> subsets) = Least(asked, plan, a, b);
            // Two members on one body of a moving pair, such as a leaf spring's clamp beside its axle's tube, never move against each other.
            PairPlan moved = least.Basins.All(basin => basin.Pose.IsEmpty) && least.UnsolvedRegions == 0 ? new PairPlan(null) : plan;
            Measurement own = ExtremeMeasurement.Of(asked, moved, least, parts, mm => mm, (at, seen) => ValueOf(request, at, i, j, seen), null, subsets);
            if (own.NotEvaluated is not null) return own with { Readings = [.. anchors.Select(r => r.Reading), .. notUsed] };
            points.Add(own);
            foreach ((Anchor anchor, List<Measurement> members) in anchors.Zip(anchored))
                members.Add(ExtremeMeasurement.Of(
                    request, moved, least, parts, mm => mm, (at, seen) => ValueOf(request, at, i, j, seen) + anchor.Shift(at), anchor.Indices, subsets));
        }

        if (points.Count == 0) return new Measurement { NotEvaluated = "all of one part lies within the zone in which it is meant to touch" };
        return Anchor.Chosen(MemberMeasurements.Merged(points, reach), [.. anchored.Select(a => MemberMeasurements.Merged(a, reach))], anchors, notUsed);
    }

    public override double? At(MeasureRequest request, ReadOnlySpan<double> pose)
    {
        if (PairPlan.For(request.Motion, request.First, request.Second!) is not { } plan) return null;
        SolvedPose? solved = plan.Module is null || pose.IsEmpty ? null : plan.Module.Motion.At(pose);
        if (solved is { IsSolved: false }) return null;
        var at = new Snapshot(request.Motion.Parameters, solved is null ? null : plan.Module, solved);
        return Whole(request, at);
    }

    // All that is left of both parts in one pose; not a number where nothing is.
    private static double Whole(MeasureRequest request, Snapshot at)
    {
        double least = double.PositiveInfinity;
        foreach ((_, _, SweptSolid a, SweptSolid b) in MemberPairs(request, at.Parameters.Span)) least = Math.Min(least, Gap(a, b, at));
        return double.IsPositiveInfinity(least) ? double.NaN : least;
    }

    private static SearchedSet Least(MeasureRequest request, PairPlan plan, SweptSolid a, SweptSolid b)
    {
        if (plan.Module is null) return new SearchedSet(Sweep.StillGap(((RigidSolid)a).Solid, ((RigidSolid)b).Solid), []);
        SweepSettings settings = PairPlan.Settings(request, request.Ceiling) with { FloorMm = request.FloorMm };
        return SetSearch.Run(request, plan.Module, isLeast: true, settings.ReachMm, system => Sweep.LeastGap(system, a, b, settings));
    }

    // Members that are left of each part, by their numbers, so that the same two are found again with other parameters.
    private static List<(int First, int Second, SweptSolid A, SweptSolid B)> MemberPairs(MeasureRequest request, ReadOnlySpan<double> parameters)
    {
        (Part first, Part second) = (request.First, request.Second!);
        ImmutableArray<ShapeMember?> a = MeantContact.Judged(first, second, request.Motion, parameters);
        ImmutableArray<ShapeMember?> b = MeantContact.Judged(second, first, request.Motion, parameters);
        var pairs = new List<(int, int, SweptSolid, SweptSolid)>();
        for (int i = 0; i < a.Length; i++)
            for (int j = 0; j < b.Length; j++)
                if (a[i] is { } one && b[j] is { } other) pairs.Add((i, j, one.Swept, other.Swept));
        return pairs;
    }

    // Those that are nearest in the middle of the travel first: what is found there spares the others.
    private static IEnumerable<(int First, int Second, SweptSolid A, SweptSolid B)> NearestFirst(
        List<(int First, int Second, SweptSolid A, SweptSolid B)> pairs, PairPlan plan, out bool many)
    {
        many = pairs.Count > MostMembers;
        if (!many || plan.Module is not { } module || module.Motion.At(DyadicCell.Whole(module.Motion.Box.Dimensions).Center(module.Motion.Box.Dimensions)) is not { IsSolved: true } middle)
            return pairs;
        return pairs.OrderBy(p => Sweep.GapAt(p.A, p.B, middle));
    }

    private static double ValueOf(MeasureRequest request, Snapshot at, int first, int second, Basin seen)
    {
        foreach ((int i, int j, SweptSolid a, SweptSolid b) in MemberPairs(request, at.Parameters.Span))
            if (i == first && j == second) return Gap(a, b, at, seen);
        return double.NaN;
    }

    // Of an overlap one piece of each says how deep it is at least; the same two say how that changes.
    private static double Gap(SweptSolid a, SweptSolid b, Snapshot at, Basin? seen = null)
    {
        if (seen is { Value: <= 0 } && a is RigidSolid && b is RigidSolid) return Sweep.PieceGapAt(a, b, at.Pose, seen.Witness);
        return at.Pose is null ? Sweep.StillGap(((RigidSolid)a).Solid, ((RigidSolid)b).Solid).Value : Sweep.GapAt(a, b, at.Pose, seen?.Witness);
    }
}
