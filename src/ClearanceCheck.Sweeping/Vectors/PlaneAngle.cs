using ClearanceCheck.Geometry;

namespace ClearanceCheck.Sweeping.Vectors;

/// <summary>The angle of a moving vector in a plane that is fixed in the frame: zero along one direction, a quarter turn along the other.</summary>
/// <param name="Factor">How often it counts, with its sign.</param>
/// <param name="Vector">What moves.</param>
/// <param name="Along">Unit vector in the frame: angle zero.</param>
/// <param name="Across">Unit vector square to it: plus 90 degrees.</param>
public sealed record PlaneAngle(double Factor, SweptVector Vector, Vector3d Along, Vector3d Across)
{
    /// <summary>The angle of a vector, rad.</summary>
    public double Of(Vector3d d) => Trigonometry.Atan2(Vector3d.Dot(Across, d), Vector3d.Dot(Along, d));
}
