using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Sweeping.Tests.Cases;

/// <summary>A plain solid cylinder as a solid of revolution.</summary>
internal static class SolidDisc
{
    public static Revolved Of(Vector3d centre, Vector3d axis, double radiusMm, double halfWidthMm, double coarseMm = 0.0006) => new(
        centre, axis, [new Section([new(radiusMm, -halfWidthMm), new(radiusMm, halfWidthMm), new(0, halfWidthMm), new(0, -halfWidthMm)], 0)], coarseMm);
}
