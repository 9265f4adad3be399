using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Alignment;

/// <summary>How far one wheel of an axle stands ahead of the other at ride height, mm, whichever it is: what this axle makes the wheelbase differ between left and right.</summary>
/// <remarks>
/// Of both hubs along the vehicle's own x. The wheelbases of a vehicle differ by what its two axles differ together, so an axle alone that is square
/// leaves it to the other; each is told with its left tire.
/// </remarks>
public sealed class WheelbaseDifferenceQuantity : PosedQuantity
{
    public override string Id => "wheelbase-difference";

    public override string Name => "difference of the wheelbase";

    public override string Meaning => "how far one wheel of the axle stands ahead of the other at ride height with the wheels straight ahead: what this axle makes the wheelbase differ between left and right";

    public override QuantityUnit Unit => QuantityUnit.Millimetre;

    public override bool IsWorstWhenLeast => false;

    public override string? Refuses(Part first, Part? second) => AxleOf.RefusesAllButLeftTires(first, "the axle");

    public override string? Unread(VehicleMotion motion, Part first) =>
        motion.Find(first.Body).Module?.Axle is { } axle && (axle.Left.Hub.IsMirrored || axle.Right.Hub.IsMirrored)
            ? $"one {axle.Name} hub was taken as the mirror image of the other: measure both, or nothing is known of how square the axle stands"
            : null;

    private protected override PosedQuestions Ask(MeasureRequest request)
    {
        if (request.Motion.Find(request.First.Body).Module is not { } module) return PosedQuestions.Lack($"{request.First.Name} is on no axle");
        return PosedQuestions.Of(Ahead(1), Ahead(-1));

        // A question a side: the absolute value would have no slope where the axle is square, and so no give or take.
        PosedQuestion Ahead(int sign) => new(module, [request.First], at => sign * (X(at, at.Module!.Axle.Left) - X(at, at.Module.Axle.Right)), null) { OnlyPose = RidePose.Of(module) };
    }

    private static double X(Snapshot at, Wheel wheel) => at.Body(Math.Max(0, at.Module!.Bodies.IndexOf(wheel.Body))).Apply(wheel.Hub.At(at.Parameters.Span)).X;
}
