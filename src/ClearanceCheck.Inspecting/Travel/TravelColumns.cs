using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Attitude;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Travel;

/// <summary>The columns of an axle's travel table, each with how its value is had.</summary>
internal sealed class TravelColumns
{
    private const string Millimetres = "mm";
    private const string Degrees = "deg";

    private readonly List<(TravelColumn Column, Func<Standing, double?> Value)> all = [];
    private readonly VehicleMotion motion;
    private readonly AxleModule module;
    private readonly SolvedPose ride;

    public TravelColumns(VehicleMotion motion, AxleModule module, SolvedPose ride)
    {
        (this.motion, this.module, this.ride) = (motion, module, ride);
        AxleCoordinates coordinates = AxleCoordinates.Of(module);
        foreach ((bool isLeft, int? at) in Sides(coordinates))
            if (at is { } d) Add($"{Side(isLeft)}.travel", $"{Side(isLeft)} wheel, travel", Millimetres, s => s.Pose[d]);
        if (coordinates.Steer is { } steer) Add("steer", "steering", Degrees, s => s.Pose[steer] * Trigonometry.DegreesPerRadian);
        foreach ((bool isLeft, int? at) in Sides(coordinates)) AddWheel(isLeft, at);
        AddAxle();
        foreach (Part part in motion.Vehicle.Parts.Where(p => SpanAttitude.IsBetween(module, motion.Vehicle, p))) AddPart(part);
    }

    public ImmutableArray<TravelColumn> Columns => [.. all.Select(c => c.Column)];

    /// <summary>The values of a solved pose, mm or degrees.</summary>
    public ImmutableArray<double?> Of(ImmutableArray<double> pose, SolvedPose solved)
    {
        var standing = new Standing(pose, solved);
        return [.. all.Select(c => c.Value(standing))];
    }

    private static (bool IsLeft, int? At)[] Sides(AxleCoordinates coordinates) => [(true, coordinates.Left), (false, coordinates.Right)];

    private static string Side(bool isLeft) => isLeft ? "left" : "right";

    private void Add(string id, string label, string unit, Func<Standing, double?> value) => all.Add((new TravelColumn(id, label, unit), value));

    private void AddWheel(bool isLeft, int? coordinate)
    {
        string side = Side(isLeft);
        WheelAttitude At(Standing s) => WheelAttitude.Of(module, isLeft, s.Solved, coordinate is { } d ? s.Pose[d] : 0, motion.Parameters.Span);
        Wheel wheel = isLeft ? module.Axle.Left : module.Axle.Right;
        if (wheel.HubToFenderRide is not null && coordinate is not null) Add($"{side}.hub-to-fender", $"{side} wheel, hub to fender", Millimetres, s => At(s).HubToFenderMm);
        Add($"{side}.camber", $"{side} wheel, camber", Degrees, s => InDegrees(At(s).CamberRad));
        Add($"{side}.toe", $"{side} wheel, toe", Degrees, s => InDegrees(At(s).ToeRad));
        Add($"{side}.steer", $"{side} wheel, steer angle", Degrees, s => InDegrees(At(s).SteerRad));
        if (ride.IsSolved && WheelAttitude.Of(module, isLeft, ride, 0, motion.Parameters.Span).CasterRad is not null)
            Add($"{side}.caster", $"{side} wheel, caster", Degrees, s => InDegrees(At(s).CasterRad));
    }

    private void AddAxle()
    {
        if (!ride.IsSolved || AxleAttitude.Of(module, ride, ride, motion.Parameters.Span) is null) return;
        AxleAttitude At(Standing s) => AxleAttitude.Of(module, s.Solved, ride, motion.Parameters.Span)!;
        Add("axle.shift", "axle shifted left", Millimetres, s => At(s).ShiftMm);
        Add("axle.forward", "axle shifted forward", Millimetres, s => At(s).ForwardMm);
        Add("axle.yaw", "axle turned left, from above", Degrees, s => InDegrees(At(s).YawRad));
        Add("axle.tilt", "axle tilted, front up", Degrees, s => InDegrees(At(s).TiltRad));
    }

    private void AddPart(Part part)
    {
        if (part.Form is not (PartForm.Shock or PartForm.Shaft)) return;
        SpanAttitude At(Standing s) => SpanAttitude.Of(module, part, s.Solved, ride, motion.Parameters.Span);
        Add($"{part.Id}.length", $"{part.Name}, length", Millimetres, s => At(s).LengthMm);
        if (part.Form is not PartForm.Shaft || !ride.IsSolved) return;
        Add($"{part.Id}.first-turn", $"{part.Name}, line turned against {Body(part, 0)}", Degrees, s => InDegrees(At(s).FirstTurnRad));
        Add($"{part.Id}.second-turn", $"{part.Name}, line turned against {Body(part, 1)}", Degrees, s => InDegrees(At(s).SecondTurnRad));
    }

    private static string Body(Part part, int end) => "the " + part.Form.Ends[end].Body.Replace('/', ' ');

    private static double? InDegrees(double? rad) => rad * Trigonometry.DegreesPerRadian;

    private sealed record Standing(ImmutableArray<double> Pose, SolvedPose Solved);
}
