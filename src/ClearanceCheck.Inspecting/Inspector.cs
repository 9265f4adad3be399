using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Evidencing;
using ClearanceCheck.Inspecting.Judging;
using ClearanceCheck.Inspecting.Planning;
using ClearanceCheck.Inspecting.Recording;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Inspecting.Travel;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Placing;
using ClearanceCheck.Kinematics.Reach;
using ClearanceCheck.Quantities;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting;

/// <summary>The main job: plan, measure, judge, decide.</summary>
public static class Inspector
{
    /// <summary>Inspects a vehicle.</summary>
    /// <param name="request">Everything it is made from.</param>
    /// <param name="progress">Told how many measurements are done, of how many; never read back.</param>
    /// <returns>The result, or the axle that can't be moved, or can't stand as it was measured, and why.</returns>
    public static (InspectionResult? Result, string? Axle, MotionFault? Fault) Run(InspectionRequest request, IProgress<(int Done, int Of)>? progress = null)
    {
        Vehicle vehicle = request.Vehicle;
        (VehicleMotion? motion, string? axle, MotionFault? fault) = VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray());
        if (motion is null) return (null, axle, fault);
        var plan = new InspectionPlan(motion, request.Library, request.Quantities);
        ImmutableArray<PlannedMeasurement> planned = plan.Measurements;
        var findings = new ImmutableArray<Finding>[planned.Length];
        var measurements = new Measurement[planned.Length];
        var builder = new FindingBuilder(vehicle, new EvidenceBuilder(motion, request.CoverageFactor), new Shields(motion), request.CoverageFactor);
        int done = 0;

        // Each measurement writes to its own slot and is searched by one thread alone, so the result does not depend on the threads.
        Parallel.For(0, planned.Length, new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, request.Threads) }, i =>
        {
            PlannedMeasurement own = planned[i];
            MeasureRequest ask = Ask(motion, own, request.CoverageFactor);
            measurements[i] = own.Quantity.Measure(ask);
            findings[i] = builder.Build(own, ask, measurements[i]);
            progress?.Report((Interlocked.Increment(ref done), planned.Length));
        });
        ImmutableArray<ImmutableArray<ExtremePose>> poses = [.. motion.Modules.Select(ExtremePoses.Of)];
        var factory = new FactoryPairs(planned);
        var checks = new HandChecks(vehicle.HandChecks, request.CoverageFactor);
        // A pair that only the rule for uncovered pairs looks at, and finds nothing in, is counted and not told one by one, unless somebody checked it.
        var exceptions = new Exceptions(vehicle, request.Library, request.Today);
        ImmutableArray<Finding> sorted = Sorted(exceptions.Apply(checks.Apply(
        [
            .. findings.SelectMany((own, i) => factory.Judged(own, i).Where(f => !planned[i].IsUncovered || f.Verdict != Verdict.Conforms || checks.Names(f)))
                .Concat(new BindingFindings(motion, poses, request.CoverageFactor).All()),
        ])));
        ImmutableArray<ReachCard> reach = ReachBuilder.Build(motion);
        ImmutableArray<TravelTable> travel = TravelTableBuilder.Build(motion, poses);
        RecordCard record = RecordBuilder.Build(vehicle, request.Library);
        return (new InspectionResult
        {
            Vehicle = Card(vehicle.Description),
            Scope = vehicle.Scope,
            Library = LibraryCards.Of(request.Library),
            Decision = DecisionBuilder.Build(sorted, request.Library.NotLoaded, record),
            Record = record,
            Findings = sorted,
            NotInspected = [.. plan.LeftOut, .. NotInspected.List(motion, planned, measurements, reach, travel), .. Unanswered.Of(record), .. Unanswered.NotUsed(vehicle, request.Library)],
            MatchedNothing = plan.MatchedNothing,
            Exempt = [.. plan.Exempt, .. factory.Listed(findings)],
            Assumptions = [.. vehicle.Assumptions.Concat(PointComparison.Of(motion)).Concat(MirrorComparison.Of(motion)).Select(a => new Assumption(a.Path, a.Text)), .. checks.NotUsed(sorted), .. exceptions.NotUsed(sorted)],
            Reach = reach,
            Travel = travel,
            Measurements = MeasurementRows.Of(vehicle),
            Provenance = ProvenanceBuilder.Build(request, motion, measurements, planned.Count(p => p.IsUncovered)),
        }, null, null);
    }

    private static MeasureRequest Ask(VehicleMotion motion, PlannedMeasurement planned, double coverageFactor) => new(
        motion, planned.Subject[0], planned.Subject.Length > 1 ? planned.Subject[1] : null, Ceilings.Of(planned, motion.Vehicle, coverageFactor))
    {
        CoverageFactor = coverageFactor,
        FloorMm = Ceilings.Floor(planned, motion.Vehicle, coverageFactor),
        ReachMm = Ceilings.Reach(planned),
        IsRoughBeyondCeiling = planned.IsUncovered,
        Over = planned.Over,
    };

    private static ImmutableArray<Finding> Sorted(IEnumerable<Finding> findings) =>
    [
        .. findings
            .OrderBy(f => f.Verdict == Verdict.Conforms)
            .ThenByDescending(f => f.Severity)
            .ThenBy(f => f.Verdict switch { Verdict.Fails => 0, Verdict.Undecided => 1, Verdict.NotEvaluated => 2, _ => 3 })
            .ThenBy(f => f.Id, StringComparer.Ordinal),
    ];

    private static VehicleCard Card(VehicleDescription d) => new()
    {
        Name = d.Name,
        Job = d.Job,
        Lift = d.Lift,
        Date = d.Date,
        Inspector = d.Inspector,
        Odometer = d.Odometer,
        Drive = d.Drive,
        Load = d.Load,
        Fuel = d.Fuel,
        Datum = d.Datum,
    };
}
