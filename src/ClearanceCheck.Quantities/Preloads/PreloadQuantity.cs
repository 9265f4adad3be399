using ClearanceCheck.Geometry;
using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Preloads;

/// <summary>By how much a coil spring is still compressed where its seats are farthest apart, mm; negative by as much as it comes loose.</summary>
/// <remarks>Its free length less the straight line between the middles of its seats: a spring that bows or tilts has a little less.</remarks>
public sealed class PreloadQuantity : PosedQuantity
{
    public override string Id => "preload";

    public override string Name => "spring preload";

    public override string Meaning => "how much shorter the spring still is than free of load, where its seats are farthest apart; negative when it comes loose from its seats";

    public override QuantityUnit Unit => QuantityUnit.Millimetre;

    public override bool IsWorstWhenLeast => true;

    public override string? Refuses(Part first, Part? second) => first.Form is PartForm.Coil ? null : $"{first.Name} is not a coil spring";

    private protected override PosedQuestions Ask(MeasureRequest request)
    {
        Part part = request.First;
        var coil = (PartForm.Coil)part.Form;
        if (coil.FreeLength is not { } free) return PosedQuestions.Lack($"the free length of {part.Name} is not in the file: measure it off the vehicle and type it as `free-length`");
        if (PairPlan.For(request.Motion, coil.Lower.Body, coil.Upper.Body) is not { Module: { } module })
            return PosedQuestions.Lack($"the seats of {part.Name} do not ride on one axle and the chassis");
        (int lower, int upper) = (request.Motion.Find(coil.Lower.Body).Number, request.Motion.Find(coil.Upper.Body).Number);
        Vector3d from = coil.Lower.At.At(request.Motion.Parameters.Span), to = coil.Upper.At.At(request.Motion.Parameters.Span);
        double length = free.At(request.Motion.Parameters.Span);
        return PosedQuestions.Of(new PosedQuestion(
            module,
            [part],
            at => free.At(at.Parameters.Span) - (at.Relative(lower, upper).Apply(coil.Upper.At.At(at.Parameters.Span)) - coil.Lower.At.At(at.Parameters.Span)).Length,
            system => Lengths.From(Sweep.LongestChord(system, lower, from, upper, to, Settings()), chord => length - chord)));
    }
}
