using System.Collections.Immutable;
using ClearanceCheck.Cli.Inputs;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Attitude;
using ClearanceCheck.Kinematics.Driveline;
using ClearanceCheck.Mechanics.Poses;
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

    /// <summary>Wheels of solved axles.</summary>
    public IEnumerable<WheelPose> Wheels => Axles.Where(a => a.Solved.IsSolved).SelectMany(WheelsOf);

    /// <summary>How solid axles stand against ride height, by the axle's name.</summary>
    public IEnumerable<(string Axle, AxleAttitude Attitude)> SolidAxles =>
        from axle in Axles
        where axle.Solved.IsSolved
        let ride = Ride(axle.Module)
        where ride.IsSolved
        let attitude = AxleAttitude.Of(axle.Module, axle.Solved, ride, Motion.Parameters.Span)
        where attitude is not null
        select (axle.Module.Axle.Name, attitude);

    /// <summary>Shocks and shafts of solved axles.</summary>
    public IEnumerable<SpanPose> Spans =>
        from axle in Axles
        where axle.Solved.IsSolved
        let ride = Ride(axle.Module)
        where ride.IsSolved
        from part in Motion.Vehicle.Parts
        where part.Form is PartForm.Shock or PartForm.Shaft && SpanAttitude.IsBetween(axle.Module, Motion.Vehicle, part)
        select new SpanPose(
            part,
            SpanAttitude.Of(axle.Module, part, axle.Solved, ride, Motion.Parameters.Span),
            part.Form is PartForm.Shaft ? JointAngles.Of(axle.Module, Motion.Vehicle, part, axle.Solved, Motion.Parameters.Span) : null);

    /// <summary>Joints of shafts that lead to a solved axle, by <c>shaft/end</c>: rad; null where the direction of the flange was not measured.</summary>
    public IEnumerable<(string Joint, JointBend Bend)> Joints =>
        (from axle in Axles
         where axle.Solved.IsSolved
         from last in Motion.Vehicle.Parts
         where last.Form is PartForm.Shaft && SpanAttitude.IsBetween(axle.Module, Motion.Vehicle, last)
         from part in ShaftLine.PartsTo(Motion.Vehicle, last)
         from joint in JointsOf(part, JointAngles.Of(axle.Module, Motion.Vehicle, part, axle.Solved, Motion.Parameters.Span))
         select joint).DistinctBy(j => j.Joint);

    private static SolvedPose Ride(AxleModule module) => module.Motion.At(new double[module.Motion.Box.Dimensions].AsSpan());

    private static IEnumerable<(string Joint, JointBend Bend)> JointsOf(Part part, ShaftPose at)
    {
        yield return ($"{part.Id}/first", at.First);
        if (at.Second is { } second) yield return ($"{part.Id}/second", second);
    }

    private IEnumerable<WheelPose> WheelsOf(PoseAnswer axle)
    {
        AxleCoordinates known = AxleCoordinates.Of(axle.Module);
        foreach ((bool isLeft, int? at) in new[] { (true, known.Left), (false, known.Right) })
        {
            double travel = at is { } d ? axle.Pose[d] : 0;
            yield return new WheelPose(
                $"{axle.Module.Axle.Name}.{(isLeft ? "left" : "right")}", travel, WheelAttitude.Of(axle.Module, isLeft, axle.Solved, travel, Motion.Parameters.Span));
        }
    }

    private RigidMotion? PlaceOf(string body)
    {
        (AxleModule? module, int number) = Motion.Find(body);
        if (module is null) return RigidMotion.Identity;
        PoseAnswer answer = Axles.Single(a => a.Module == module);
        return answer.Solved.IsSolved ? answer.Solved[number] : null;
    }
}
