using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Geometry.Tests.Oracle;
using ClearanceCheck.Geometry.Tests.Scenes;

namespace ClearanceCheck.Geometry.Tests.Gaps;

/// <summary>Where others fell: zero lengths, units, moves that do nothing, arguments exchanged.</summary>
public sealed class DegenerateShapeTests
{
    [Fact]
    public void Shapes_without_any_size_at_the_same_place_have_gap_zero_and_a_unit_direction()
    {
        var point = new Capsule(new(12, -7, 3), new(12, -7, 3), 0);
        var flat = new Disc(new(12, -7, 3), Vector3d.UnitY, 0, 0);

        foreach (PieceGap gap in new[] { CapsuleCapsule.Measure(point, point), DiscCapsule.Measure(flat, point) })
        {
            gap.Gap.ShouldBe(0);
            gap.OnFirst.IsFinite.ShouldBeTrue();
            gap.OnSecond.IsFinite.ShouldBeTrue();
            gap.Direction.Length.ShouldBe(1, 1e-15);
        }
    }

    [Theory]
    [InlineData(1e-9)]
    [InlineData(1e-6)]
    [InlineData(1 / 25.4)]
    [InlineData(1e6)]
    [InlineData(1e9)]
    public void The_unit_of_length_does_not_matter(double unit)
    {
        foreach (CapsulePair pair in PairSets.Capsules)
        {
            PieceGap gap = CapsuleCapsule.Measure(Scaled(pair.First, unit), Scaled(pair.Second, unit));

            (gap.Gap / unit).ShouldBe(pair.Gap, 1e-11);
        }
    }

    [Fact]
    public void A_move_that_does_nothing_changes_no_bit()
    {
        foreach (CapsulePair pair in PairSets.Capsules.Concat(PairSets.Degenerate))
            CapsuleCapsule.Measure(pair.First.Moved(RigidMotion.Identity), pair.Second.Moved(RigidMotion.Identity))
                .ShouldBe(CapsuleCapsule.Measure(pair.First, pair.Second));
        foreach (DiscPair pair in PairSets.Discs)
            DiscCapsule.Measure(pair.First, pair.Second.Moved(RigidMotion.Identity)).ShouldBe(DiscCapsule.Measure(pair.First, pair.Second));
    }

    [Fact]
    public void Nearly_parallel_segments_lose_nothing_to_cancellation_at_any_angle()
    {
        var g = new SplitMix64(31);
        for (int i = 0; i < 4000; i++)
        {
            Vector3d p = g.Cube(1000), u = g.UnitVector(), w = g.UnitVector();
            double length = g.In(1, 1000), angle = Math.Pow(10, g.In(-17, -1));
            Capsule a = new(p, p + (u * length), 3);
            Vector3d q = p + g.Cube(200) + (u * g.In(-length, length));
            Capsule b = new(q, q + ((u + (w * angle)) * g.In(1, 1000)), 5);

            CapsuleCapsule.Measure(a, b).Gap.ShouldBe(SlowGap.Capsules(a, b), 2e-12);
        }
    }

    [Fact]
    public void Nothing_is_ever_NaN()
    {
        var g = new SplitMix64(32);
        double[] lengths = [0, 1e-320, 1e-200, 1e-160, 1e-100, 1e-12, 1e-7, 1, 1000];
        foreach (double first in lengths)
            foreach (double second in lengths)
                for (int i = 0; i < 20; i++)
                {
                    Vector3d u = g.UnitVector(), p = i % 2 == 0 ? Vector3d.Zero : g.Cube(100);
                    Capsule a = new(Vector3d.Zero, u * first, 1), b = new(p, p + ((i % 4 < 2 ? u : g.UnitVector()) * second), 1);
                    PieceGap gap = CapsuleCapsule.Measure(a, b), disc = DiscCapsule.Measure(new Disc(Vector3d.Zero, u, first, second), b);

                    gap.Gap.ShouldBe(SlowGap.Capsules(a, b), 1e-12);
                    gap.Direction.Length.ShouldBe(1, 1e-14);
                    double.IsFinite(disc.Gap).ShouldBeTrue();
                    disc.Direction.Length.ShouldBe(1, 1e-14);
                }
    }

    [Fact]
    public void A_point_or_radius_that_is_no_number_is_refused()
    {
        Should.Throw<ArgumentException>(() => new CapsuleChain([], 1));
        Should.Throw<ArgumentException>(() => new CapsuleChain([new(double.NaN, 0, 0)], 1));
        Should.Throw<ArgumentException>(() => new CapsuleChain([Vector3d.Zero], -1));
        Should.Throw<ArgumentException>(() => new CapsuleChain([Vector3d.Zero], double.NaN));
        Should.Throw<ArgumentException>(() => new Disc(Vector3d.Zero, Vector3d.Zero, 1, 1));
        Should.Throw<ArgumentException>(() => new Disc(Vector3d.Zero, Vector3d.UnitX, double.PositiveInfinity, 1));
        Should.Throw<ArgumentException>(() => new Disc(new(0, double.NaN, 0), Vector3d.UnitX, 1, 1));
    }

    private static Capsule Scaled(in Capsule c, double unit) => new(c.From * unit, c.To * unit, c.Radius * unit);
}
