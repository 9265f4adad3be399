using ClearanceCheck.Geometry;

namespace ClearanceCheck.Sweeping.Vectors;

/// <summary>A share of a vector that moves with the pose: a factor times the place of a point that rides on a body.</summary>
/// <param name="Factor">Without a unit.</param>
/// <param name="Body">The body's number; 0 is the chassis.</param>
/// <param name="Point">In the body's own coordinates, mm.</param>
public readonly record struct VectorTerm(double Factor, int Body, Vector3d Point);
