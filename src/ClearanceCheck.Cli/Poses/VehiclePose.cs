using System.Collections.Immutable;
using ClearanceCheck.Cli.Inputs;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Cli.Poses;

/// <summary>The whole vehicle in one pose: every axle's answer, and where its bodies, points and wheels are.</summary>
internal sealed record VehiclePose(VehicleMotion Motion, PoseTyped Typed, ImmutableArray<PoseAnswer> Axles)
{
    public static VehiclePose Of(VehicleMotion motion, PoseTyped typed) => new(motion, typed, [.. motion.Modules.Select(m => PoseAnswer.Of(m, typed))]);

    /// <summary>The worst answer of all axles.</summary>
    public string Word => Axles.Select(a => a.Word).MaxBy(w => PoseAnswer.Words.IndexOf(w))!;

    /// <summary>Bodies of solved axles; the chassis first.</summary>
    public IEnumerable<(string Name, RigidMotion At)> Bodies =>
        Axles.Where(a => a.Solved.IsSolved)
            .SelectMany(a => a.Module.Bodies.Skip(1).Select((name, i) => (name, a.Solved[i + 1])))
            .Prepend((Vehicle.Chassis, RigidMotion.Identity));

    /// <summary>Points that ride on the chassis or on a solved axle, by path, vehicle frame, mm.</summary>
    public IEnumerable<(string Path, string Body, Vector3d At)> Points =>
        PosedPoints.Of(Motion.Vehicle)
            .Select(p => (p.Path, p.Body, Place: PlaceOf(p.Body), Point: p.At.At(Motion.Parameters.Span)))
            .Where(p => p.Place is not null)
            .Select(p => (p.Path, p.Body, p.Place!.Value.Apply(p.Point)));

    /// <summary>Wheels of solved axles by their coordinate: hub in the vehicle frame, travel and hub to fender in mm.</summary>
    public IEnumerable<(string Name, Vector3d Hub, double Travel, double? HubToFender)> Wheels =>
        from axle in Axles
        where axle.Solved.IsSolved
        from d in Enumerable.Range(0, axle.Pose.Length)
        let wheel = axle.Module.WheelOf(d)
        select (
            axle.Module.CoordinateNames[d],
            PlaceOf(wheel.Body)!.Value.Apply(wheel.Hub.At(Motion.Parameters.Span)),
            axle.Pose[d],
            wheel.HubToFenderRide?.At(Motion.Parameters.Span) - axle.Pose[d]);

    private RigidMotion? PlaceOf(string body)
    {
        (AxleModule? module, int number) = Motion.Find(body);
        if (module is null) return RigidMotion.Identity;
        PoseAnswer answer = Axles.Single(a => a.Module == module);
        return answer.Solved.IsSolved ? answer.Solved[number] : null;
    }
}
