using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities.Alignment;
using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Steering;

/// <summary>The toe of an axle's two wheels together as it was read at ride height, degrees, toe-in positive.</summary>
/// <remarks>A value of one pose; in any other pose it is what was read and by how much it changed up to there. Told with the left tire.</remarks>
public sealed class ToeQuantity : PosedQuantity
{
    public override string Id => "toe";

    public override string Name => "toe";

    public override string Meaning => "the toe of both wheels of an axle together at ride height with the wheels straight ahead, as it was read; toe-in is positive";

    public override QuantityUnit Unit => QuantityUnit.Degree;

    public override bool IsWorstWhenLeast => false;

    public override bool BoundsBothSides => true;

    public override string? Refuses(Part first, Part? second) => AxleOf.RefusesAllButLeftTires(first, "toe");

    public override string? Unread(VehicleMotion motion, Part first) => motion.Find(first.Body).Module is { Axle.Toe: null } module ? NoToe(module) : null;

    private protected override PosedQuestions Ask(MeasureRequest request)
    {
        if (request.Motion.Find(request.First.Body).Module is not { } module) return PosedQuestions.Lack($"{request.First.Name} is on no axle");
        if (module.Axle.Toe is not { } toe) return PosedQuestions.Lack(NoToe(module));
        SolvedPose ride = module.Motion.At(RidePose.Of(module).AsSpan());
        if (!ride.IsSolved) return PosedQuestions.Lack("the axle can't be solved at ride height");
        return PosedQuestions.Of(new PosedQuestion(module, [request.First], at => Degrees(at, toe, ride), null) { OnlyPose = RidePose.Of(module), Also = [.. toe.Indices] });
    }

    private static string NoToe(AxleModule module) =>
        $"the toe of the {module.Axle.Name} wheels is not in the file: measure from wheel to wheel in front of the axle and behind it and type both under `toe`";

    private static double Degrees(Snapshot at, ToeReading toe, SolvedPose nominal)
    {
        AxleModule module = at.Module!;
        SolvedPose ride = WheelAngles.Ride(at, nominal);
        double changed = WheelAngles.Degrees(module, at.Pose!, at.Parameters.Span, WheelAngles.BothWheels) - WheelAngles.Degrees(module, ride, at.Parameters.Span, WheelAngles.BothWheels);
        return (toe.TotalRad(at.Parameters.Span) * Trigonometry.DegreesPerRadian) + changed;
    }
}
