using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Attitude;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Sweeping.Vectors;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Steering;

/// <summary>How far a sum of toe angles gets away from what it is at ride height, with the steering held.</summary>
internal static class WheelAngles
{
    /// <summary>The toe of both wheels together.</summary>
    public static ImmutableArray<(bool IsLeft, double Factor)> BothWheels { get; } = [(true, 1), (false, 1)];

    /// <summary>The two questions, towards more and towards less.</summary>
    /// <param name="request">What is asked; its part is a tire or wheel.</param>
    /// <param name="settings">Of the search.</param>
    /// <param name="wheels">Which wheels' toe counts, and how often.</param>
    public static PosedQuestions Ask(MeasureRequest request, SweepSettings settings, ImmutableArray<(bool IsLeft, double Factor)> wheels)
    {
        (AxleModule? found, _) = request.Motion.Find(request.First.Body);
        if (found is not { } module) return PosedQuestions.Lack($"{request.First.Name} is on no axle");
        (Sets.PoseSubset? held, string? missing) = SteeringHeld.Of(module);
        if (held is null) return PosedQuestions.Lack(missing!);
        SolvedPose nominal = module.Motion.At(RidePose.Of(module).AsSpan());
        if (!nominal.IsSolved) return PosedQuestions.Lack("the axle can't be solved at ride height");
        ReadOnlyMemory<double> parameters = request.Motion.Parameters;
        double ride = Degrees(module, nominal, parameters.Span, wheels);
        Wheel shown = wheels[0].IsLeft ? module.Axle.Left : module.Axle.Right;
        Vector3d mark = nominal[module.Bodies.IndexOf(shown.Body)].Apply(shown.Hub.At(parameters.Span));
        return PosedQuestions.Of(Question(1), Question(-1));

        PosedQuestion Question(int sign) => new(
            module,
            [request.First],
            at => sign * (Degrees(at.Module!, at.Pose!, at.Parameters.Span, wheels) - Degrees(at.Module!, Ride(at, nominal), at.Parameters.Span, wheels)),
            system => Lengths.From(
                VectorSweep.LeastAngle(system, 0, [.. wheels.Select(w => Toe(module, w.IsLeft, -sign * w.Factor, parameters.Span))], mark, settings with { StopGiveMm = SteeringHeld.PlayMm }),
                least => -least - (sign * ride)))
        {
            Held = held,
            Also = module.Axle.Toe is { } toe ? [.. toe.Indices] : [],
        };
    }

    /// <summary>Ride height of what may be another vehicle, with other parameters: its own counts.</summary>
    public static SolvedPose Ride(Snapshot at, SolvedPose nominal) => at.Module!.Motion.Near(nominal.Bodies.Span, RidePose.Of(at.Module).AsSpan());

    /// <summary>A sum of toe angles, degrees; not a number where the pose is not solved.</summary>
    public static double Degrees(AxleModule module, SolvedPose pose, ReadOnlySpan<double> parameters, ImmutableArray<(bool IsLeft, double Factor)> wheels)
    {
        if (!pose.IsSolved) return double.NaN;
        double sum = 0;
        foreach ((bool isLeft, double factor) in wheels) sum += factor * WheelAttitude.Of(module, isLeft, pose, 0, parameters).ToeRad;
        return sum * Trigonometry.DegreesPerRadian;
    }

    private static PlaneAngle Toe(AxleModule module, bool isLeft, double factor, ReadOnlySpan<double> parameters)
    {
        Wheel wheel = isLeft ? module.Axle.Left : module.Axle.Right;
        SweptVector axis = SweptVector.Fixed(module.Bodies.IndexOf(wheel.Body), WheelAttitude.MeasuredAxis(module.Axle, isLeft, parameters), wheel.Hub.At(parameters));
        return new PlaneAngle(factor, axis, isLeft ? Vector3d.UnitY : -Vector3d.UnitY, Vector3d.UnitX);
    }
}
