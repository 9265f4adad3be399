using ClearanceCheck.Kinematics.Driveline;
using ClearanceCheck.Quantities.Engagements;
using ClearanceCheck.Quantities.JointAngles;
using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Sweeping.Vectors;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Reserves;

/// <summary>What a shock, a damper or the slip of a shaft still has before it is all closed, mm; negative by as much as something else lets it be pushed beyond.</summary>
/// <remarks>
/// Shocks end the travel in every other search. Here no shock of the axle does: what is asked is whether the bump stops, and the steering
/// stops, come first.
/// </remarks>
public sealed class ReserveQuantity : PosedQuantity
{
    public override string Id => "reserve";

    public override string Name => "reserve before it bottoms";

    public override string Meaning =>
        "how much shorter it could still get where it is shortest, if nothing but the bump stops and the steering stops ended the travel; negative when it bottoms before they do";

    public override QuantityUnit Unit => QuantityUnit.Millimetre;

    public override bool IsWorstWhenLeast => true;

    public override string? Refuses(Part first, Part? second) => first.Form is PartForm.Shock or PartForm.Shaft ? null : $"{first.Name} neither is a shock nor slides on splines";

    private protected override PosedQuestions Ask(MeasureRequest request) =>
        request.First.Form is PartForm.Shaft ? OfShaft(request) : ShockReserve.Ask(request, (shock, at, chord) => chord - shock.Closed.At(at), Settings(), isShortest: true);

    private PosedQuestions OfShaft(MeasureRequest request)
    {
        Part part = request.First;
        if (((PartForm.Shaft)part.Form).Splines is null) return PosedQuestions.Lack(EngagementQuantity.NoSplines(part));
        if (ShaftPlan.Of(request.Motion, part) is not { } plan) return PosedQuestions.Lack($"the ends of {part.Name} ride on two axles, which can't be moved together yet");
        if (ShaftLine.Of(plan.AnyModule, request.Motion.Vehicle, part, request.Motion.Parameters.Span) is not { MeasuredMm: { } measured, Splines: var (length, engaged) })
            return PosedQuestions.Lack($"the state in which {part.Name} was measured could not be solved");
        return PosedQuestions.Of(new PosedQuestion(
            plan.Module,
            [part],
            at => plan.At(at)?.Splines?.LeftInMm ?? double.NaN,
            system => Lengths.From(
                VectorSweep.ShortestChord(system, plan.Piece.FirstBody, plan.Piece.From, plan.Piece.SecondBody, plan.Piece.To, Settings()), chord => length - engaged - measured + chord)));
    }
}
