using ClearanceCheck.Geometry;

namespace ClearanceCheck.Sweeping;

/// <summary>Where an extreme is seen: nodes of the two solids (0 for single points) and two points in the first body's frame, mm.</summary>
public readonly record struct Witness(int FirstNode, int SecondNode, Vector3d OnFirst, Vector3d OnSecond);
