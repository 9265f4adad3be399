using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Slack;

/// <summary>Free hose length (ferrule to ferrule) over the distance between its ends, minus one, in percent.</summary>
/// <remarks>
/// Least where the chord is longest. A negative value is a hose that the pose would stretch. The law of vehicles asks for more than
/// zero in every motion; the hose's own shape is not computed here.
/// </remarks>
public sealed class HoseSlackQuantity : Quantity
{
    public override string Id => "hose-slack";

    public override string Name => "hose slack";

    public override string Meaning =>
        "how much longer the free hose is than the straight line between its ends, in percent of that line, in the pose that stretches it most";

    public override QuantityUnit Unit => QuantityUnit.Percent;

    public override bool IsOfPair => false;

    public override bool IsWorstWhenLeast => true;

    public override string? Refuses(Part first, Part? second) => first.Form is PartForm.Hose ? null : $"{first.Name} is not a hose";

    public override Measurement Measure(MeasureRequest request)
    {
        var hose = (PartForm.Hose)request.First.Form;
        if (PairPlan.For(request.Motion, request.First, request.First) is not { } plan)
            return new Measurement { NotEvaluated = $"the ends of {request.First.Name} ride on two axles, which can't be moved together yet" };
        ReadOnlySpan<double> parameters = request.Motion.Parameters.Span;
        Vector3d upper = hose.Upper.At.At(parameters), lower = hose.Lower.At.At(parameters);
        double free = hose.FreeLength.At(parameters);
        // Slack at least s percent means a chord of at most L / (1 + s/100): beyond a ceiling of slack, shorter chords are not looked at.
        double ceiling = double.IsFinite(request.Ceiling) ? free / (1 + (request.Ceiling / 100)) : double.PositiveInfinity;
        (int above, int below) = (request.Motion.Find(hose.Upper.Body).Number, request.Motion.Find(hose.Lower.Body).Number);
        SweepSettings settings = PairPlan.Settings(request, ceiling);
        SearchedSet longest = plan.Module is { } module
            ? SetSearch.Run(request, module, isLeast: false, settings.ReachMm, system => Sweep.LongestChord(system, above, upper, below, lower, settings))
            : new SearchedSet(Still(upper, lower), []);
        return ExtremeMeasurement.Of(
            request, plan, longest.Extreme, [request.First], chord => Percent(free, chord), (at, _) => Percent(request, hose, at), null, longest.Subsets);
    }

    public override double? At(MeasureRequest request, ReadOnlySpan<double> pose)
    {
        var hose = (PartForm.Hose)request.First.Form;
        if (PairPlan.For(request.Motion, request.First, request.First) is not { } plan) return null;
        SolvedPose? solved = plan.Module?.Motion.At(pose);
        return solved is { IsSolved: false } ? null : Percent(request, hose, new Snapshot(request.Motion.Parameters, plan.Module, solved));
    }

    private static double Percent(MeasureRequest request, PartForm.Hose hose, Snapshot at)
    {
        ReadOnlySpan<double> parameters = at.Parameters.Span;
        RigidMotion lowerInUpper = at.Relative(request.Motion.Find(hose.Upper.Body).Number, request.Motion.Find(hose.Lower.Body).Number);
        double chord = (lowerInUpper.Apply(hose.Lower.At.At(parameters)) - hose.Upper.At.At(parameters)).Length;
        return Percent(hose.FreeLength.At(parameters), chord);
    }

    private static double Percent(double free, double chord) => 100 * ((free / chord) - 1);

    private static Extreme Still(Vector3d upper, Vector3d lower)
    {
        double chord = (lower - upper).Length;
        Basin only = new(chord, [], new Witness(0, 0, upper, lower));
        return new Extreme { Value = chord, Bound = chord, Grade = Grade.Proven, Basins = [only], Cells = 0 };
    }
}
