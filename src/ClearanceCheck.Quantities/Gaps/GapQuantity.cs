using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Gaps;

/// <summary>The smallest distance between two surfaces, mm; negative when they overlap.</summary>
public sealed class GapQuantity : Quantity
{
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
            if (part.Form is not PartForm.Chain) return $"{part.Name} has no shape that a gap could be measured to";
        return null;
    }

    public override Measurement Measure(MeasureRequest request)
    {
        (Part first, Part second) = (request.First, request.Second!);
        if (PairPlan.For(request.Motion, first.Body, second.Body) is not { } plan)
            return new Measurement { NotEvaluated = $"{first.Name} and {second.Name} ride on two axles, which can't be moved together yet" };
        ReadOnlySpan<double> parameters = request.Motion.Parameters.Span;
        Extreme? least = plan.Module is { } module
            ? Sweep.LeastGap(
                module.Motion, plan.FirstBody, Chain(first, parameters), plan.SecondBody, Chain(second, parameters), PairPlan.Settings(request, request.Ceiling))
            : Still(first, second, parameters);
        if (least is null) return new Measurement { NotEvaluated = "all of one part lies within the zone in which it is meant to touch" };
        return ExtremeMeasurement.Of(request, plan, least, [first, second], mm => mm, at => Value(request, plan, at));
    }

    public override double? At(MeasureRequest request, ReadOnlySpan<double> pose)
    {
        if (PairPlan.For(request.Motion, request.First.Body, request.Second!.Body) is not { } plan) return null;
        SolvedPose? solved = plan.Module?.Motion.At(pose);
        if (solved is { IsSolved: false }) return null;
        return Value(request, plan, new Snapshot(request.Motion.Parameters, plan.Module, solved));
    }

    private static CapsuleChain Chain(Part part, ReadOnlySpan<double> parameters) => PartSolids.Chain((PartForm.Chain)part.Form, parameters);

    private static double Value(MeasureRequest request, PairPlan plan, Snapshot at)
    {
        ReadOnlySpan<double> parameters = at.Parameters.Span;
        return plan.Module is null
            ? Still(request.First, request.Second!, parameters)?.Value ?? double.NaN
            : Sweep.GapAt(Chain(request.First, parameters), Chain(request.Second!, parameters), at.Relative(plan.FirstBody, plan.SecondBody)).Gap;
    }

    private static Extreme? Still(Part first, Part second, ReadOnlySpan<double> parameters)
    {
        Extreme? least = null;
        foreach (CapsuleChain a in MeantContact.Judged(first, parameters))
            foreach (CapsuleChain b in MeantContact.Judged(second, parameters))
            {
                Extreme own = Sweep.StillGap(a, b);
                if (least is null || own.Value < least.Value) least = own;
            }

        return least;
    }
}
