namespace ClearanceCheck.Geometry.Gaps;

/// <summary>The signed gap of two convex pieces with its witness, in one frame, mm.</summary>
/// <param name="Gap">Distance between the surfaces; negative when they overlap.</param>
/// <param name="Direction">
/// Unit vector n from the second piece towards the first: (least n.x over the first) - (largest n.x over the second) is the gap,
/// or, where the pieces overlap and no closed form is at hand, a lower bound of it.
/// </param>
/// <param name="OnFirst">The first piece's surface point nearest to the second.</param>
/// <param name="OnSecond">The second piece's surface point nearest to the first.</param>
public readonly record struct PieceGap(double Gap, Vector3d Direction, Vector3d OnFirst, Vector3d OnSecond);
