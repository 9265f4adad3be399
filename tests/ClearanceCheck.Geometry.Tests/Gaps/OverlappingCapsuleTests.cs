using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Geometry.Tests.Scenes;

namespace ClearanceCheck.Geometry.Tests.Gaps;

/// <summary>On the other side of zero: one signed function, no hand-over where surfaces touch or axes cross.</summary>
public sealed class OverlappingCapsuleTests
{
    [Fact]
    public void A_gap_is_negative_when_surfaces_overlap_and_is_still_the_separation_along_the_direction()
    {
        var g = new SplitMix64(21);
        int overlapping = 0;
        for (int i = 0; i < 4000; i++)
        {
            Capsule a = Draw(g), b = Draw(g);
            PieceGap gap = CapsuleCapsule.Measure(a, b);

            gap.Gap.ShouldBe(SlowGap.Capsules(a, b), 1e-12);
            GapAssert.Separation(a, b, gap.Direction).ShouldBe(gap.Gap, 1e-9);
            GapAssert.WitnessesAgree(gap, 1e-11);
            if (gap.Gap < 0) overlapping++;
        }

        overlapping.ShouldBeInRange(500, 3500);
    }

    [Fact]
    public void Axes_that_pass_within_rounding_of_each_other_still_have_a_direction_that_separates_by_the_gap()
    {
        var g = new SplitMix64(22);
        for (int i = 0; i < 4000; i++)
        {
            // Two segments whose common normal is known, at a distance from 1e-15 to 1e-3 mm, crossing inside both.
            Vector3d at = g.Cube(500), u = g.UnitVector(), v = g.UnitVector();
            Vector3d n = Vector3d.Cross(u, v);
            if (n.Length < 0.1) continue;
            n = n.NormalizedOr(Vector3d.UnitZ) * Math.Pow(10, g.In(-15, -3));
            Capsule a = new(at - (u * g.In(20, 200)), at + (u * g.In(20, 200)), g.In(2, 25));
            Capsule b = new(at + n - (v * g.In(20, 200)), at + n + (v * g.In(20, 200)), g.In(2, 25));

            PieceGap gap = CapsuleCapsule.Measure(a, b);

            gap.Gap.ShouldBe(SlowGap.Capsules(a, b), 1e-12);
            GapAssert.Separation(a, b, gap.Direction).ShouldBe(gap.Gap, 1e-9);
            GapAssert.Separation(b, a, CapsuleCapsule.Measure(b, a).Direction).ShouldBe(gap.Gap, 1e-9);
        }
    }

    [Fact]
    public void An_end_that_nearly_lies_on_the_other_axis_still_has_a_direction_that_separates_by_the_gap()
    {
        var g = new SplitMix64(23);
        for (int i = 0; i < 4000; i++)
        {
            Vector3d at = g.Cube(500), u = g.UnitVector();
            Vector3d n = Vector3d.Cross(u, g.UnitVector()).NormalizedOr(Vector3d.UnitZ);
            Vector3d end = at + (n * Math.Pow(10, g.In(-15, -3)));
            Capsule a = new(at - (u * g.In(20, 200)), at + (u * g.In(20, 200)), g.In(2, 25));
            Vector3d away = (n + (u * g.In(-0.9, 0.9))).NormalizedOr(n);
            Capsule b = new(end, end + (away * g.In(0, 200)), g.In(2, 25));

            PieceGap gap = CapsuleCapsule.Measure(a, b);

            gap.Gap.ShouldBe(SlowGap.Capsules(a, b), 1e-12);
            GapAssert.Separation(a, b, gap.Direction).ShouldBe(gap.Gap, 1e-9);
        }
    }

    [Fact]
    public void The_same_capsule_twice_overlaps_by_its_own_thickness()
    {
        var g = new SplitMix64(24);
        for (int i = 0; i < 500; i++)
        {
            Capsule a = Draw(g);

            PieceGap gap = CapsuleCapsule.Measure(a, a);

            gap.Gap.ShouldBe(-2 * a.Radius, 1e-12);
            GapAssert.Separation(a, a, gap.Direction).ShouldBe(gap.Gap, 1e-9);
            GapAssert.WitnessesAgree(gap, 1e-11);
        }
    }

    private static Capsule Draw(SplitMix64 g)
    {
        Vector3d p = g.Cube(60);
        return new Capsule(p, p + g.Cube(80), g.In(2, 25));
    }
}
