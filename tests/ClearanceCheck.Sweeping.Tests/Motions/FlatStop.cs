using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping.Tests.Motions;

/// <summary>A stop whose estimate forgets that its point moves on a curve: broken on purpose.</summary>
internal sealed record FlatStop(Stop Inner) : Stop(Inner.Name, Inner.FirstBody, Inner.FirstPoint, Inner.SecondBody, Inner.SecondPoint)
{
    public override double Reserve(in RigidMotion secondInFirst) => Inner.Reserve(secondInFirst);

    public override Vector3d EstimateDirection(in RigidMotion secondInFirstAtCentre) => Inner.EstimateDirection(secondInFirstAtCentre);

    public override double CornerEstimate(in RigidMotion secondInFirst, Vector3d direction) => Inner.CornerEstimate(secondInFirst, direction);

    public override double EstimateCurvature(in Curvature curvature, Vector3d direction) => 0;
}
