using System.Collections.Immutable;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Kinematics.Steerings;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics;

/// <summary>What can be set of an axle and how far: 0 left travel, 1 right travel, then steering, then wind-up, each where the axle has it.</summary>
internal static class AxleBox
{
    /// <summary>The same box with another range of one coordinate.</summary>
    public static PoseBox WithRange(PoseBox box, int coordinate, PoseCoordinate range) => new(box.Coordinates.SetItem(coordinate, range));

    /// <summary>The range of an axle's steering by its typed locks; null for an axle that is not steered.</summary>
    public static PoseCoordinate? SteeringAsTyped(Axle axle) =>
        axle.Steering is { } range ? new PoseCoordinate($"{axle.Name}.{AxleCoordinates.SteerEnding}", true, -range.Right, range.Left) : null;

    public static PoseBox Of(AxleLayout layout, SteeringLinkage? steering, Axle axle, ReadOnlySpan<double> parameters)
    {
        double low = -axle.DroopLimit.At(parameters), high = axle.BumpLimit.At(parameters);
        var coordinates = ImmutableArray.CreateBuilder<PoseCoordinate>();
        coordinates.Add(new PoseCoordinate($"{axle.Name}.{AxleCoordinates.LeftEnding}", false, low, high));
        coordinates.Add(new PoseCoordinate($"{axle.Name}.{AxleCoordinates.RightEnding}", false, low, high));
        if (axle.Steering is { } range)
        {
            bool isLength = steering?.IsLength(layout) ?? axle.FreeJoints.FirstOrDefault(j => j.Name == range.Joint)?.Kind == FreeJointKind.Slide;
            coordinates.Add(new PoseCoordinate($"{axle.Name}.{AxleCoordinates.SteerEnding}", !isLength, -range.Right, range.Left));
        }

        if (layout.Wraps && axle.Wrap is { } wound)
            coordinates.Add(new PoseCoordinate($"{axle.Name}.{AxleCoordinates.WrapEnding}", true, wound.LowRad, wound.HighRad));
        return new PoseBox(coordinates);
    }
}
