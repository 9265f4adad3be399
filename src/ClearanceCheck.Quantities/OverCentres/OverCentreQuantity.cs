using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Sweeping.Vectors;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.OverCentres;

/// <summary>The angle that a rod and the arm it is joined to still have until they lie in one line, degrees; negative beyond it.</summary>
/// <remarks>
/// Seen along the line that the arm turns about: zero, or 180 degrees, between the arm and the rod is the straight line in which the rod
/// can no longer turn the arm, and past which it turns it the other way. Which side is right is that of ride height.
/// </remarks>
public sealed class OverCentreQuantity : PosedQuantity
{
    public override string Id => "over-centre";

    public override string Name => "angle left to the straight line";

    public override string Meaning =>
        "the angle that the rod and the arm it is joined to still have, seen along the line the arm turns about, until they lie in one line; negative when they go over centre";

    public override QuantityUnit Unit => QuantityUnit.Degree;

    public override bool IsWorstWhenLeast => true;

    public override string? Refuses(Part first, Part? second) =>
        first.Form is PartForm.Link && first.Form.Ends.Any(e => TurningArm.IsOne(e.Body)) ? null : $"{first.Name} is no rod that is joined to an arm";

    private protected override PosedQuestions Ask(MeasureRequest request)
    {
        (Part part, VehicleMotion motion) = (request.First, request.Motion);
        ImmutableArray<Place> ends = part.Form.Ends;
        if (PairPlan.For(motion, [.. ends.Select(e => e.Body)]) is not { Module: { } module }) return PosedQuestions.Lack($"the ends of {part.Name} do not ride on one axle");
        SolvedPose ride = module.Motion.At(RidePose.Of(module).AsSpan());
        if (!ride.IsSolved) return PosedQuestions.Lack("the axle can't be solved at ride height");
        var questions = ImmutableArray.CreateBuilder<PosedQuestion>();
        for (int end = 0; end < ends.Length; end++)
        {
            if (!TurningArm.IsOne(ends[end].Body)) continue;
            if (TurningArm.Of(module, ends[end].Body, motion.Parameters.Span) is null)
                return PosedQuestions.Lack($"the line about which {ends[end].Body} turns is not in the file, so how near {part.Name} comes to going over centre is not known");
            questions.Add(Question(request, module, ride, end, towardsStraight: true));
            questions.Add(Question(request, module, ride, end, towardsStraight: false));
        }

        return new PosedQuestions(questions.ToImmutable(), null);
    }

    // Towards the line in which the rod goes on from the arm, or towards that in which it comes back along it.
    private PosedQuestion Question(MeasureRequest request, AxleModule module, SolvedPose ride, int end, bool towardsStraight)
    {
        Part part = request.First;
        (Place own, Place far) = (part.Form.Ends[end], part.Form.Ends[1 - end]);
        ReadOnlySpan<double> parameters = request.Motion.Parameters.Span;
        TurningArm arm = TurningArm.Of(module, own.Body, parameters)!.Value;
        Vector3d joint = own.At.At(parameters), along = arm.Reach(joint).NormalizedOr(Vector3d.UnitX);
        Vector3d across = Vector3d.Cross(arm.Line.NormalizedOr(Vector3d.UnitZ), along);
        int farBody = request.Motion.Find(far.Body).Number;
        SweptVector rod = SweptVector.Between(arm.Body, joint, farBody, far.At.At(parameters));
        double atRide = new PlaneAngle(1, rod, along, across).Of(ride.Relative(arm.Body, farBody).Apply(far.At.At(parameters)) - joint);
        int side = atRide < 0 ? -1 : 1;
        // Zero where the rod stands at ride height, so that no angle is near the jump at 180 degrees.
        (double sin, double cos) = Trigonometry.SinCos(atRide);
        var turned = new PlaneAngle((towardsStraight ? 1 : -1) * side, rod, (cos * along) + (sin * across), (cos * across) - (sin * along));
        double left = (towardsStraight ? Math.Abs(atRide) : Math.PI - Math.Abs(atRide)) * Trigonometry.DegreesPerRadian;
        return new PosedQuestion(
            module,
            [part],
            at => Left(request, at, end, atRide, side, towardsStraight),
            system => Lengths.From(VectorSweep.LeastAngle(system, arm.Body, [turned], joint, Settings()), least => left + least));
    }

    private static double Left(MeasureRequest request, Snapshot at, int end, double atRide, int side, bool towardsStraight)
    {
        ReadOnlySpan<double> parameters = at.Parameters.Span;
        (Place own, Place far) = (request.First.Form.Ends[end], request.First.Form.Ends[1 - end]);
        if (TurningArm.Of(at.Module!, own.Body, parameters) is not { } arm) return double.NaN;
        Vector3d joint = own.At.At(parameters), along = arm.Reach(joint).NormalizedOr(Vector3d.UnitX), across = Vector3d.Cross(arm.Line.NormalizedOr(Vector3d.UnitZ), along);
        Vector3d rod = at.Relative(arm.Body, request.Motion.Find(far.Body).Number).Apply(far.At.At(parameters)) - joint;
        (double sin, double cos) = Trigonometry.SinCos(atRide);
        double angle = atRide + Trigonometry.Atan2(
            Vector3d.Dot((cos * across) - (sin * along), rod), Vector3d.Dot((cos * along) + (sin * across), rod));
        return (towardsStraight ? side * angle : Math.PI - (side * angle)) * Trigonometry.DegreesPerRadian;
    }
}
