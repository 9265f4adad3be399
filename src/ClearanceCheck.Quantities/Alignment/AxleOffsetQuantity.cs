using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Alignment;

/// <summary>How far the middle between an axle's hubs lies beside the vehicle's centre plane at ride height, mm, to either side.</summary>
/// <remarks>A track bar of fixed length pulls a lifted axle aside; told with the left tire.</remarks>
public sealed class AxleOffsetQuantity : PosedQuantity
{
    public override string Id => "axle-offset";

    public override string Name => "axle offset";

    public override string Meaning => "how far the middle of the axle stands beside the vehicle's centre line at ride height with the wheels straight ahead, to either side";

    public override QuantityUnit Unit => QuantityUnit.Millimetre;

    public override bool IsWorstWhenLeast => false;

    public override string? Refuses(Part first, Part? second) => first.Form switch
    {
        PartForm.Tire { Seat.IsLeft: true } => null,
        PartForm.Tire => "the axle is told with its left tire",
        _ => $"{first.Name} is not a tire",
    };

    private protected override PosedQuestions Ask(MeasureRequest request)
    {
        if (request.Motion.Find(request.First.Body).Module is not { } module) return PosedQuestions.Lack($"{request.First.Name} is on no axle");
        return PosedQuestions.Of(ToOneSide(1), ToOneSide(-1));

        // A question a side: the absolute value would have no slope where the axle is centred, and so no give or take.
        PosedQuestion ToOneSide(int sign) => new(module, [request.First], at => sign * Middle(at).Y, null) { OnlyPose = RidePose.Of(module) };
    }

    private static Vector3d Middle(Snapshot at)
    {
        AxleModule module = at.Module!;
        return Vector3d.Lerp(Hub(module, at.Pose!, module.Axle.Left, at.Parameters.Span), Hub(module, at.Pose!, module.Axle.Right, at.Parameters.Span), 0.5);
    }

    private static Vector3d Hub(AxleModule module, SolvedPose pose, Wheel wheel, ReadOnlySpan<double> parameters) =>
        pose[Math.Max(0, module.Bodies.IndexOf(wheel.Body))].Apply(wheel.Hub.At(parameters));
}
