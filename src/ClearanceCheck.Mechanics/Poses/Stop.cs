using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Poses;

/// <summary>Something that ends the travel: a function of the pose, the reserve in mm, that is zero at the stop and negative beyond it.</summary>
/// <remarks>
/// Each kind gives, for a pose, the reserve itself and an upper estimate that can be interpolated between a cell's corners
/// (<see cref="CornerEstimate"/>): with the curvature remainder added, no pose of the cell has a larger reserve.
/// </remarks>
public abstract record Stop(string Name, int FirstBody, Vector3d FirstPoint, int SecondBody, Vector3d SecondPoint)
{
    /// <summary>The reserve in a pose, mm.</summary>
    public abstract double Reserve(in RigidMotion secondInFirst);

    /// <summary>The direction, in the first body's frame, that the cell's estimate is taken along.</summary>
    public abstract Vector3d EstimateDirection(in RigidMotion secondInFirstAtCentre);

    /// <summary>An upper estimate of the reserve that is linear or convex in the second point's place.</summary>
    public abstract double CornerEstimate(in RigidMotion secondInFirst, Vector3d direction);

    /// <summary>What to add to the corner estimates for the curvature of the second point's path, in units of the second derivative.</summary>
    public abstract double EstimateCurvature(in Curvature curvature, Vector3d direction);

    private protected Vector3d Difference(in RigidMotion secondInFirst) => secondInFirst.Apply(SecondPoint) - FirstPoint;
}
