using ClearanceCheck.Geometry;

namespace ClearanceCheck.Sweeping.Views;

/// <summary>A body whose motion a search follows, with the points of it that bound what the search looks at.</summary>
/// <param name="Body">The body's number.</param>
/// <param name="Anchors">In the body's own coordinates; the curvature bound holds for their hull.</param>
internal sealed record SweptTrack(int Body, Vector3d[] Anchors);
