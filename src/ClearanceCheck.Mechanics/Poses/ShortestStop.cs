using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Poses;

/// <summary>Two places may be at least so far apart: a shock that bottoms.</summary>
public sealed record ShortestStop(string Name, int FirstBody, Vector3d FirstPoint, int SecondBody, Vector3d SecondPoint, double ShortestMm)
    : Stop(Name, FirstBody, FirstPoint, SecondBody, SecondPoint)
{
    public override double Reserve(in RigidMotion secondInFirst) => Difference(secondInFirst).Length - ShortestMm;

    public override Vector3d EstimateDirection(in RigidMotion secondInFirstAtCentre) => Vector3d.UnitZ;

    // The length is convex: between corners it is at most the same average of the corners' lengths.
    public override double CornerEstimate(in RigidMotion secondInFirst, Vector3d direction) => Reserve(secondInFirst);

    public override double EstimateCurvature(in Curvature curvature, Vector3d direction) => curvature.Length;
}
