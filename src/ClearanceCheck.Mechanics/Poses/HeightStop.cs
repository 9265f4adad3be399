using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Poses;

/// <summary>
/// A bump stop: the second body's pad may come at most so near to the first body's seat, measured along the stop's axis.
/// <see cref="Axis"/> is a unit vector in the first body's frame from the pad's side towards the seat.
/// </summary>
public sealed record HeightStop(string Name, int FirstBody, Vector3d FirstPoint, int SecondBody, Vector3d SecondPoint, Vector3d Axis, double LeastMm)
    : Stop(Name, FirstBody, FirstPoint, SecondBody, SecondPoint)
{
    public override double Reserve(in RigidMotion secondInFirst) => -Vector3d.Dot(Axis, Difference(secondInFirst)) - LeastMm;

    public override Vector3d EstimateDirection(in RigidMotion secondInFirstAtCentre) => -Axis;

    public override double CornerEstimate(in RigidMotion secondInFirst, Vector3d direction) => Reserve(secondInFirst);

    public override double EstimateCurvature(in Curvature curvature, Vector3d direction) => curvature.Along(direction);
}
