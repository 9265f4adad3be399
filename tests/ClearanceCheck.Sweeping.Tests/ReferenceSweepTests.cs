using ClearanceCheck.Sweeping.Tests.Cases;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Sweeping.Tests;

/// <summary>A tire (plain disc) against a brake line over travel and steering, its motion given by formula.</summary>
/// <remarks>
/// Known answer, from an independent C++ program: least gap 6.43005 mm at left 78.110 mm, right 110 mm, steering 27.457 degrees,
/// proved not below 6.42996 mm by a search with 80-bit checks; stepping 5 mm and 1 degree finds 6.929 mm.
/// </remarks>
public sealed class ReferenceSweepTests
{
    [Fact]
    public void The_reference_sweep_closes_within_a_tenth_of_a_millimetre_in_700_cells()
    {
        Extreme least = Run(new ReferenceSweepMotion());

        TestContext.Current.TestOutputHelper?.WriteLine($"gap {least.Value:F5}, never less than {least.Bound:F5}, {least.Cells} cells at {string.Join(", ", least.Basins[0].Pose)}");
        least.Value.ShouldBe(6.43005, 2e-3);
        least.Bound.ShouldBeLessThanOrEqualTo(6.43005);
        least.Bound.ShouldBeGreaterThan(6.43005 - 0.1);
        least.Cells.ShouldBeLessThanOrEqualTo(700);
        least.Basins[0].Pose[0].ShouldBe(78.110, 0.5);
        least.Basins[0].Pose[1].ShouldBe(110, 1e-6);
        (least.Basins[0].Pose[2] * 180 / Math.PI).ShouldBe(27.457, 0.1);
    }

    private static Extreme Run(ReferenceSweepMotion motion) => Sweep.LeastGap(
        motion, 0, new CapsuleChain(ReferenceLine.Points, ReferenceLine.RadiusMm),
        1, SolidDisc.Of(ReferenceSweepMotion.TireCentre, Vector3d.UnitY, ReferenceSweepMotion.TireRadiusMm, ReferenceSweepMotion.TireHalfWidthMm),
        new SweepSettings { ToleranceMm = 0.1 });
}
