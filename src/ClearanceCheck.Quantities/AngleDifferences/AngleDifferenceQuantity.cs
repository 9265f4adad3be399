using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities.JointAngles;
using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.AngleDifferences;

/// <summary>How unevenly a line of shafts turns what it drives at ride height: the angle of one joint that would be as uneven, degrees.</summary>
/// <remarks>
/// Two cardan joints even each other out where their angles are equal, lie in one plane and the yokes between them stand in phase; what is
/// left is told as one angle (<see cref="Kinematics.Driveline.Nonuniformity"/>). A vehicle is driven about its ride height, so that is the
/// one pose it belongs to: at the ends of the travel it is never even, and no rule asks.
/// </remarks>
public sealed class AngleDifferenceQuantity : PosedQuantity
{
    public override string Id => "angle-difference";

    public override string Name => "unevenness of the joints";

    public override string Meaning =>
        "the angle of one joint that would turn as unevenly as all joints of the line together, at ride height with the wheels straight ahead; zero when the joints even each other out";

    public override QuantityUnit Unit => QuantityUnit.Degree;

    public override bool IsWorstWhenLeast => false;

    public override string? Refuses(Part first, Part? second) => first.Form is PartForm.Shaft ? null : $"{first.Name} is not a shaft";

    private protected override PosedQuestions Ask(MeasureRequest request)
    {
        Part part = request.First;
        if (ShaftPlan.Of(request.Motion, part) is not { } plan) return PosedQuestions.Lack($"the ends of {part.Name} ride on two axles, which can't be moved together yet");
        if (plan.Module is { } module && !module.Motion.At(RidePose.Of(module).AsSpan()).IsSolved) return PosedQuestions.Lack("the axle can't be solved at ride height");
        var question = new PosedQuestion(plan.Module, plan.Parts, at => Degrees(plan, at), null) { OnlyPose = plan.Module is { } moved ? RidePose.Of(moved) : [], IsKinked = true };
        SolvedPose? ride = plan.Module?.Motion.At(question.OnlyPose.Value.AsSpan());
        return double.IsNaN(Degrees(plan, new Snapshot(request.Motion.Parameters, plan.Module, ride)))
            ? PosedQuestions.Lack($"which way the flanges of {part.Name} point is not in the file: measure a second point on the axis of each and type it as `ahead` of its joint")
            : PosedQuestions.Of(question);
    }

    // A shaft that ends at a centre bearing is driven by its first joint alone; the whole line is told with its last shaft.
    private static double Degrees(ShaftPlan plan, Snapshot at) =>
        plan.At(at) is { } pose && (plan.IsFollowed ? pose.First.AngleRad : pose.EquivalentRad) is { } rad ? rad * Trigonometry.DegreesPerRadian : double.NaN;
}
