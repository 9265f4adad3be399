using ClearanceCheck.Geometry;

namespace ClearanceCheck.Sweeping;

/// <summary>A pair of tree nodes still open in a cell, with the direction that separated it last: the children's first try.</summary>
internal readonly record struct OpenFeature(int First, int Second, Vector3d Direction);
