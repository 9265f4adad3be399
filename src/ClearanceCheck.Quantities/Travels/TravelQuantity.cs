using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Sweeping.Vectors;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Travels;

/// <summary>What a wheel has left of the travel that it had before the lift, percent: the worse of droop and bump.</summary>
/// <remarks>
/// Droop is from ride height to where both wheels of the axle hang as low as their stops allow together, bump the same upwards, each against the
/// same reading before the lift. These two sets of poses belong to it by its nature, whichever set is asked for. The way up or down is searched
/// as the distance to a point of the chassis 10 km above or below the hub: a hub that goes 100 mm sideways changes that by 0.0005 mm.
/// </remarks>
public sealed class TravelQuantity : PosedQuantity
{
    // Far enough that what a hub goes sideways is of no account, mm.
    private const double FarMm = 10_000_000;

    public override string Id => "travel";

    public override string Name => "travel left of the original";

    public override string Meaning => "what the wheel's travel from ride height, with both wheels hanging or both up, is of the travel before the lift; the worse of both ways";

    public override QuantityUnit Unit => QuantityUnit.Percent;

    public override bool IsWorstWhenLeast => true;

    public override string? Refuses(Part first, Part? second) => first.Form is PartForm.Tire ? null : $"{first.Name} is not a tire";

    public override string? Unread(VehicleMotion motion, Part first)
    {
        if (motion.Find(first.Body).Module is not { } module) return null;
        bool isLeft = ((PartForm.Tire)first.Form).Seat.IsLeft;
        return Before(motion.Vehicle, module, isLeft) is { Hanging: not null, Bumped: not null } ? null : NoTravel(module, isLeft);
    }

    private static OriginalTravel? Before(Vehicle vehicle, AxleModule module, bool isLeft) => vehicle.OriginalTravels.GetValueOrDefault($"{module.Axle.Name}-{Side(isLeft)}");

    private static string NoTravel(AxleModule module, bool isLeft) =>
        $"the travel of the {module.Axle.Name} {Side(isLeft)} wheel before the lift is not in the file: type hub to fender as it stood, `hanging` and `bumped`, under `before-lift`";

    private static string Side(bool isLeft) => isLeft ? "left" : "right";

    private protected override PosedQuestions Ask(MeasureRequest request)
    {
        if (request.Motion.Find(request.First.Body).Module is not { } module) return PosedQuestions.Lack($"{request.First.Name} is on no axle");
        bool isLeft = ((PartForm.Tire)request.First.Form).Seat.IsLeft;
        if (Before(request.Motion.Vehicle, module, isLeft) is not { Hanging: { } hanging, Bumped: { } bumped } before) return PosedQuestions.Lack(NoTravel(module, isLeft));
        SolvedPose ride = module.Motion.At(RidePose.Of(module).AsSpan());
        if (!ride.IsSolved) return PosedQuestions.Lack("the axle can't be solved at ride height");
        Wheel wheel = isLeft ? module.Axle.Left : module.Axle.Right;
        ImmutableArray<int> also = [.. before.Ride.Indices, .. hanging.Indices, .. bumped.Indices];
        return PosedQuestions.Of(
            Way(request, module, wheel, ride, -1, at => hanging.At(at.Parameters.Span) - before.Ride.At(at.Parameters.Span), also),
            Way(request, module, wheel, ride, 1, at => before.Ride.At(at.Parameters.Span) - bumped.At(at.Parameters.Span), also));
    }

    // Upwards for a sign of one. What is least is the height gained on the way.
    private PosedQuestion Way(MeasureRequest request, AxleModule module, Wheel wheel, SolvedPose ride, int sign, Func<Snapshot, double> before, ImmutableArray<int> also)
    {
        int body = Math.Max(0, module.Bodies.IndexOf(wheel.Body));
        Vector3d hub = wheel.Hub.At(request.Motion.Parameters.Span);
        double original = before(new Snapshot(request.Motion.Parameters, module, ride));
        Vector3d far = ride[body].Apply(hub) - (sign * FarMm * Vector3d.UnitZ);
        return new PosedQuestion(
            module,
            [request.First],
            at => 100 * sign * (Height(at.Pose!, at.Parameters) - Height(Steering.WheelAngles.Ride(at, ride), at.Parameters)) / before(at),
            system => Lengths.From(VectorSweep.ShortestChord(system, 0, far, body, hub, Settings()), chord => 100 * (chord - FarMm) / original))
        {
            Also = also,
            Over = sign < 0 ? PoseSet.FullDroop : PoseSet.FullBump,
        };

        double Height(SolvedPose pose, ReadOnlyMemory<double> parameters) => pose[body].Apply(wheel.Hub.At(parameters.Span)).Z;
    }
}
