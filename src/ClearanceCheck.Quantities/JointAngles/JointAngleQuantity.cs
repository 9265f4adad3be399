using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Driveline;
using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Sweeping.Vectors;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.JointAngles;

/// <summary>The largest angle in space of any joint of a driveshaft, or of a rod against its studs, degrees.</summary>
/// <remarks>Of a double cardan joint the angle is that of the whole joint; each of its crosses bends half of it. Rods: <see cref="StudAngles"/>.</remarks>
public sealed class JointAngleQuantity : PosedQuantity
{
    public override string Id => "joint-angle";

    public override string Name => "joint angle";

    public override string Meaning => "the largest angle in space by which any joint of the shaft is bent, or by which a rod leans from square to the stud or bolt at its end";

    public override QuantityUnit Unit => QuantityUnit.Degree;

    public override bool IsWorstWhenLeast => false;

    public override string? Refuses(Part first, Part? second) => first.Form is PartForm.Shaft or PartForm.Link ? null : $"{first.Name} neither is a shaft nor a rod";

    public override string? Unread(VehicleMotion motion, Part first) => first.Form is PartForm.Link link ? StudAngles.NoStuds(first, link) : null;

    private protected override PosedQuestions Ask(MeasureRequest request) => request.First.Form is PartForm.Link ? StudAngles.Ask(request, Settings()) : OfShaft(request);

    private PosedQuestions OfShaft(MeasureRequest request)
    {
        Part part = request.First;
        if (ShaftPlan.Of(request.Motion, part) is not { } plan) return PosedQuestions.Lack($"the ends of {part.Name} ride on two axles, which can't be moved together yet");
        if (plan.Piece.FirstAxis is null && plan.Before is null) return PosedQuestions.Lack(ShaftPlan.NoAxis(part, "first"));
        if (!plan.IsFollowed && plan.Piece.SecondAxis is null) return PosedQuestions.Lack(ShaftPlan.NoAxis(part, "second"));
        if (plan.Before is { } before && before.FirstBody != before.SecondBody)
            return PosedQuestions.Lack($"both ends of the shaft before {part.Name} move, and its joint between two such shafts can't be bounded yet");
        var questions = ImmutableArray.CreateBuilder<PosedQuestion>();
        // The first joint is carried by what drives: a flange, or the shaft before the centre bearing.
        Vector3d driving = plan.Before is { } shaft ? shaft.To - shaft.From : plan.Piece.FirstAxis!.Value;
        questions.Add(Joint(plan, plan.Before?.FirstBody ?? plan.Piece.FirstBody, driving, plan.Piece.From, plan.Piece.FirstBody, plan.Piece.To, plan.Piece.SecondBody, p => p.First.AngleRad));
        if (!plan.IsFollowed)
            questions.Add(Joint(plan, plan.Piece.SecondBody, -plan.Piece.SecondAxis!.Value, plan.Piece.To, plan.Piece.SecondBody, plan.Piece.From, plan.Piece.FirstBody, p => p.Second?.AngleRad));
        return new PosedQuestions(questions.ToImmutable(), null);
    }

    private PosedQuestion Joint(
        ShaftPlan plan, int frame, Vector3d axis, Vector3d centre, int centreBody, Vector3d far, int farBody, Func<ShaftPose, double?> angle) => new(
        plan.Module,
        plan.Parts,
        at => plan.At(at) is { } pose && angle(pose) is { } rad ? Math.Min(90, rad * Trigonometry.DegreesPerRadian) : double.NaN,
        system => VectorSweep.LargestBend(system, frame, axis, centre, SweptVector.Between(centreBody, centre, farBody, far), Settings()));
}
