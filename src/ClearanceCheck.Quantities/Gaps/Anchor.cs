using System.Collections.Immutable;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Gaps;

/// <summary>A direct reading of a pair's gap that anchors it: least gap = measured + (computed least - computed in the reading's state).</summary>
/// <remarks>
/// Only the change between the two poses then carries the points' error: an end that was typed 20 mm off moves both alike. What is
/// propagated is gap(pose) - gap(state) + reading, with the state's pose solved anew for each change of a reading.
/// </remarks>
internal sealed class Anchor
{
    private readonly StatePoses state;
    private readonly Func<Snapshot, double> gap;
    private readonly MeasuredLength length;

    private Anchor(DirectReading reading, MeasuredLength length, StatePoses state, Func<Snapshot, double> gap) =>
        (Reading, this.length, this.state, this.gap) = (reading, length, state, gap);

    public DirectReading Reading { get; }

    public double DeltaMm => Reading.DeltaMm!.Value;

    /// <summary>The numbers of the reading itself.</summary>
    public IEnumerable<int> Indices => length.Indices;

    /// <summary>What the reading adds to the model's gap in any pose, with a snapshot's parameters; not a number where the state can't be solved.</summary>
    public double Shift(Snapshot at) => state.With(at) is { } there ? length.At(at.Parameters.Span) - gap(there) : double.NaN;

    /// <summary>Every reading of a pair, with what it makes of the gap where that can be had.</summary>
    /// <param name="request">The pair.</param>
    /// <param name="plan">What moves it.</param>
    /// <param name="gap">The model's gap in a pose with given parameters.</param>
    public static (ImmutableArray<Anchor> Anchors, ImmutableArray<DirectReading> NotUsed) Of(MeasureRequest request, PairPlan plan, Func<Snapshot, double> gap)
    {
        var anchors = ImmutableArray.CreateBuilder<Anchor>();
        var not = ImmutableArray.CreateBuilder<DirectReading>();
        foreach (DirectGap direct in request.Motion.Vehicle.DirectGaps.Where(g => g.Covers(request.First, request.Second!) || g.IsBetween(request.First, request.Second!)))
        {
            DirectReading reading = Readings.Of(request, direct);
            StatePoses? state = StatePoses.Of(request.Motion, plan.Module, direct.State);
            double computed = state is null ? double.NaN : gap(state.AsMeasured);
            if (state is null || !double.IsFinite(computed))
            {
                not.Add(reading with { NotUsed = "the model can't be posed as it stood then" });
                continue;
            }

            var anchor = new Anchor(reading with { ComputedMm = computed }, direct.Reading, state, gap);
            if (anchor.Uncertainty(request, plan) is not { } u) not.Add(anchor.Reading with { NotUsed = "how well the model knows the gap there is not known" });
            else anchors.Add(new Anchor(anchor.Reading with { Disagrees = anchor.Disagrees(request.CoverageFactor * u) }, direct.Reading, state, gap));
        }

        return (anchors.ToImmutable(), not.ToImmutable());
    }

    /// <summary>The request whose search in the model's own gaps goes as far as it has to for every value that a reading may make of them.</summary>
    public static MeasureRequest Widened(MeasureRequest request, ImmutableArray<Anchor> anchors)
    {
        if (anchors.IsEmpty) return request;
        return request with
        {
            // A gap read smaller than computed makes the pair tighter: what lies under the ceiling then lies higher in the model.
            Ceiling = request.Ceiling + Math.Max(0, -anchors.Min(a => a.DeltaMm)),
            FloorMm = request.FloorMm - Math.Max(0, anchors.Max(a => a.DeltaMm)),
            IsRoughBeyondCeiling = false,
        };
    }

    /// <summary>The measurement that counts: of those that the readings make, the one with the least bound.</summary>
    /// <param name="points">What the points alone say.</param>
    /// <param name="anchored">The same with the give or take that it has from each reading on; not yet shifted.</param>
    /// <param name="anchors">The readings.</param>
    /// <param name="notUsed">Readings that could not be used.</param>
    public static Measurement Chosen(Measurement points, IReadOnlyList<Measurement> anchored, ImmutableArray<Anchor> anchors, ImmutableArray<DirectReading> notUsed)
    {
        (Measurement Measured, Anchor Anchor)[] candidates =
            [.. anchors.Select((a, i) => (Measured: Candidate(points, anchored[i], a), Anchor: a)).Where(c => c.Anchor.Reading.IsOfParts && c.Measured.NotEvaluated is null)];
        (Measurement chosen, Anchor? counting) = candidates.Length == 0 ? (points, null) : candidates.MinBy(c => c.Measured.Bound);
        bool counts = chosen.Basis == MeasurementBasis.Reading;
        return chosen with { Readings = [.. anchors.Select(a => counts && a == counting ? a.Reading with { Counts = true } : a.Reading), .. notUsed] };
    }

    // A reading that contradicts the points, or makes the value less certain, may lower it and never raise it: a blunder must not clear a pair.
    private static Measurement Candidate(Measurement points, Measurement anchored, Anchor anchor)
    {
        if (anchored.NotEvaluated is not null) return anchored;
        bool isSurer = !anchored.Places.Zip(points.Places).Any(p => p.First.StandardUncertainty > p.Second.StandardUncertainty);
        if (isSurer && !anchor.Reading.Disagrees) return Shifted(anchored, anchored.Places, anchor.DeltaMm);
        if (!anchor.Reading.Disagrees) return anchor.DeltaMm < 0 ? Shifted(points, points.Places, anchor.DeltaMm) : points;
        return Shifted(points, [.. points.Places.Zip(anchored.Places).Select(p => LessCertain(p.First, p.Second))], Math.Min(0, anchor.DeltaMm));
    }

    private static Measurement Shifted(Measurement measured, ImmutableArray<WorstPlace> places, double byMm) => measured with
    {
        Basis = MeasurementBasis.Reading,
        ShiftMm = byMm,
        Value = measured.Value + byMm,
        Bound = measured.Bound + byMm,
        Places = [.. places.Select(p => p with { Value = p.Value + byMm })],
    };

    private static WorstPlace LessCertain(WorstPlace one, WorstPlace other) => other.StandardUncertainty > one.StandardUncertainty ? other : one;

    // Of the difference between measured and computed. The pose is that of the state whatever the readings say, so no stop holds it.
    private double? Uncertainty(MeasureRequest request, PairPlan plan) =>
        new PosePropagation(request.Motion, plan.Module).At([request.First, request.Second!], [.. state.Pose], Shift, Indices)?.StandardUncertainty;

    // A gap read to a whole body says only that nothing of it is nearer.
    private bool Disagrees(double giveOrTake) => (Reading.IsOfParts ? Math.Abs(DeltaMm) : DeltaMm) > giveOrTake;
}
