using ClearanceCheck.Kinematics.Driveline;
using ClearanceCheck.Quantities.JointAngles;
using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Engagements;

/// <summary>The least length of spline that carries a shaft, mm; negative by as much as its halves come apart.</summary>
public sealed class EngagementQuantity : PosedQuantity
{
    public override string Id => "engagement";

    public override string Name => "spline engagement";

    public override string Meaning => "the least length over which the halves of the shaft still engage, where it is pulled longest; negative when they come apart";

    public override QuantityUnit Unit => QuantityUnit.Millimetre;

    public override bool IsWorstWhenLeast => true;

    public override string? Refuses(Part first, Part? second) => first.Form is PartForm.Shaft ? null : $"{first.Name} is not a shaft";

    private protected override PosedQuestions Ask(MeasureRequest request)
    {
        Part part = request.First;
        var shaft = (PartForm.Shaft)part.Form;
        if (shaft.Splines is null) return PosedQuestions.Lack(NoSplines(part));
        if (ShaftPlan.Of(request.Motion, part) is not { } plan) return PosedQuestions.Lack($"the ends of {part.Name} ride on two axles, which can't be moved together yet");
        if (ShaftLine.Of(plan.AnyModule, request.Motion.Vehicle, part, request.Motion.Parameters.Span) is not { MeasuredMm: { } measured, Splines: var (_, engaged) })
            return PosedQuestions.Lack($"the state in which {part.Name} was measured could not be solved");
        SweepSettings settings = Settings();
        return PosedQuestions.Of(new PosedQuestion(
            plan.Module,
            [part],
            at => plan.At(at)?.Splines?.LeftOutMm ?? double.NaN,
            system => Lengths.From(
                Sweep.LongestChord(system, plan.Piece.FirstBody, plan.Piece.From, plan.Piece.SecondBody, plan.Piece.To, settings), chord => engaged + measured - chord)));
    }

    internal static string NoSplines(Part part) =>
        $"the splines of {part.Name} are not in the file: measure how long they are and how much of that is engaged, and type both under `splines`";
}
