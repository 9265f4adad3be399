using System.Collections.Immutable;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Kinematics.Steerings;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics;

/// <summary>What can be set of an axle: 0 left travel, 1 right travel, then steering, then wind-up, each where the axle has it.</summary>
/// <param name="Box">Their ranges, mm or rad.</param>
/// <param name="SteerIndex">The number of the steering; null for an axle that is not steered.</param>
/// <param name="WrapIndex">The number of the wind-up; null where it is not looked at.</param>
public sealed record AxleCoordinates(PoseBox Box, int? SteerIndex, int? WrapIndex)
{
    /// <summary>The steering's number where there is one.</summary>
    internal const int Steer = 2;

    public int Count => Box.Dimensions;

    internal static AxleCoordinates Of(AxleLayout layout, SteeringLinkage? steering, Axle axle, ReadOnlySpan<double> parameters)
    {
        double low = -axle.DroopLimit.At(parameters), high = axle.BumpLimit.At(parameters);
        var coordinates = ImmutableArray.CreateBuilder<PoseCoordinate>();
        coordinates.Add(new PoseCoordinate($"{axle.Name}.left", false, low, high));
        coordinates.Add(new PoseCoordinate($"{axle.Name}.right", false, low, high));
        int? steer = null, wrap = null;
        if (axle.Steering is { } range)
        {
            bool isLength = steering?.IsLength(layout) ?? axle.FreeJoints.FirstOrDefault(j => j.Name == range.Joint)?.Kind == FreeJointKind.Slide;
            steer = coordinates.Count;
            coordinates.Add(new PoseCoordinate($"{axle.Name}.steer", !isLength, -range.Right, range.Left));
        }

        if (layout.Wraps && axle.Wrap is { } wound)
        {
            wrap = coordinates.Count;
            coordinates.Add(new PoseCoordinate($"{axle.Name}.wrap", true, wound.LowRad, wound.HighRad));
        }

        return new AxleCoordinates(new PoseBox(coordinates), steer, wrap);
    }
}
