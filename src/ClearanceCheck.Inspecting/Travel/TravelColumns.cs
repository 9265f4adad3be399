using System.Collections.Immutable;
using System.Diagnostics;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Attitude;
using ClearanceCheck.Kinematics.Driveline;
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
        if (part.Form is PartForm.Link) AddLink(part);
        if (part.Form is PartForm.Shock or PartForm.Shaft)
            Add($"{part.Id}.length", $"{part.Name}, length", Millimetres, s => SpanAttitude.Of(module, part, s.Solved, ride, motion.Parameters.Span).LengthMm);
        if (part.Form is PartForm.Shaft shaft) AddShaft(part, shaft);
    }

    // The middle of a ball joint's or rod end's swing is not in the file: what is known is how far the link turned.
    private void AddLink(Part part)
    {
        SpanAttitude At(Standing s) => SpanAttitude.SinceMeasured(module, part, s.Solved, motion.Parameters.Span);
        Add($"{part.Id}.first-swing", $"{part.Name}, turned against {Body(part, 0)} since measured", Degrees, s => InDegrees(At(s).FirstTurnRad));
        Add($"{part.Id}.second-swing", $"{part.Name}, turned against {Body(part, 1)} since measured", Degrees, s => InDegrees(At(s).SecondTurnRad));
    }

    private void AddShaft(Part part, PartForm.Shaft shaft)
    {
        foreach (Part piece in ShaftLine.PartsTo(motion.Vehicle, part).SkipLast(1))
            AddJoint(piece, (PartForm.Shaft)piece.Form, ShaftLine.Of(module, motion.Vehicle, piece, motion.Parameters.Span), isFirst: true);
        ShaftLine line = ShaftLine.Of(module, motion.Vehicle, part, motion.Parameters.Span);
        AddJoint(part, shaft, line, isFirst: true);
        AddJoint(part, shaft, line, isFirst: false);
        if (ride.IsSolved && line.At(ride).EquivalentRad is not null)
            Add($"{part.Id}.equivalent", $"{part.Name}, one joint as uneven as all together", Degrees, s => InDegrees(line.At(s.Solved).EquivalentRad));
        Add($"{part.Id}.slip", $"{part.Name}, longer than as measured", Millimetres, s => line.At(s.Solved).SlipMm);
        if (line.Splines is null) return;
        Add($"{part.Id}.engaged", $"{part.Name}, splines engaged", Millimetres, s => line.At(s.Solved).Splines?.EngagedMm);
        Add($"{part.Id}.left-in", $"{part.Name}, splines, left before they bottom", Millimetres, s => line.At(s.Solved).Splines?.LeftInMm);
    }

    private void AddJoint(Part part, PartForm.Shaft shaft, ShaftLine line, bool isFirst)
    {
        string end = isFirst ? "first" : "second", place = isFirst && shaft.After is not null ? "the centre bearing" : Body(part, isFirst ? 0 : 1);
        ShaftPiece piece = line.Pieces[^1];
        bool isMeasured = isFirst ? shaft.After is not null || piece.FirstAxis is not null : piece.SecondAxis is not null;
        string label = Joint((isFirst ? shaft.FirstEnd : shaft.SecondEnd).Joint);
        Add(
            $"{part.Id}.{end}-angle",
            $"{part.Name}, angle of the {label} at {place}{(isMeasured ? "" : ": not measured, no point ahead of it in the file")}",
            Degrees,
            s => line.At(s.Solved) is var at ? InDegrees((isFirst ? at.First : at.Second)?.AngleRad) : null);
        // Where the joint's own angle is known, how far the line turned says nothing new.
        if (isMeasured || !ride.IsSolved || !SpanAttitude.IsBetween(module, motion.Vehicle, part)) return;
        SpanAttitude At(Standing s) => SpanAttitude.Of(module, part, s.Solved, ride, motion.Parameters.Span);
        Add($"{part.Id}.{end}-turn", $"{part.Name}, line turned against {place} since ride height", Degrees, s => InDegrees(isFirst ? At(s).FirstTurnRad : At(s).SecondTurnRad));
    }

    private static string Joint(ShaftJointKind kind) => kind switch
    {
        ShaftJointKind.Single => "joint",
        ShaftJointKind.DoubleCardan => "double cardan joint (each cross half of it)",
        ShaftJointKind.ConstantVelocity => "constant-velocity joint",
        _ => throw new UnreachableException(),
    };

    private static string Body(Part part, int end) => "the " + part.Form.Ends[end].Body.Replace('/', ' ');

    private static double? InDegrees(double? rad) => rad * Trigonometry.DegreesPerRadian;

    private sealed record Standing(ImmutableArray<double> Pose, SolvedPose Solved);
}
