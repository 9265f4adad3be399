using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Poses;

/// <summary>Two places may be at most so far apart: a shock at full length, a limit strap.</summary>
public sealed record LongestStop(string Name, int FirstBody, Vector3d FirstPoint, int SecondBody, Vector3d SecondPoint, double LongestMm)
    : Stop(Name, FirstBody, FirstPoint, SecondBody, SecondPoint)
{
    public override double Reserve(in RigidMotion secondInFirst) => LongestMm - Difference(secondInFirst).Length;

    public override Vector3d EstimateDirection(in RigidMotion secondInFirstAtCentre) =>
        Difference(secondInFirstAtCentre).NormalizedOr(Vector3d.UnitZ);

    // |d| >= n.d for any unit n, so L - n.d is never below the reserve.
    public override double CornerEstimate(in RigidMotion secondInFirst, Vector3d direction) =>
        LongestMm - Vector3d.Dot(direction, Difference(secondInFirst));

    // -n.d is at most its interpolation plus w^2/8 times the most by which the second derivative of -n.d lies below zero.
    public override double EstimateCurvature(in Curvature curvature, Vector3d direction) => curvature.Along(-direction);
}
