using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Geometry.Tests.Oracle;
using ClearanceCheck.Geometry.Tests.Scenes;

namespace ClearanceCheck.Geometry.Tests.Gaps;

public sealed class DiscCapsuleTests
{
    [Theory] // Printed by an independent program (scene-pairs.json of the peers, set disc_capsule, gap to the sharp cylinder).
    [InlineData(0, 99.4249895923, 6e-11)]
    [InlineData(1, 66.0813788407, 6e-11)]
    [InlineData(3, 734.742886445, 6e-10)]
    [InlineData(17, 193.339279687, 6e-10)]
    [InlineData(99, 146.066073576, 6e-10)]
    [InlineData(255, 483.044865496, 6e-10)]
    public void A_gap_printed_by_another_program_is_met_at_its_printed_digits(int index, double expected, double tolerance)
    {
        DiscPair pair = PairSets.Discs[index];

        DiscCapsule.Measure(pair.First, pair.Second).Gap.ShouldBe(expected, tolerance);
    }

    [Fact]
    public void The_sum_of_all_gaps_is_that_of_another_program()
    {
        PairSets.Discs.Count.ShouldBe(4096);

        // sum_of_gaps of seed 404 in the peers' scene-pairs.json.
        PairSets.Discs.Sum(p => DiscCapsule.Measure(p.First, p.Second).Gap).ShouldBe(1260013.399926030, 2e-8);
    }

    [Fact]
    public void No_gap_is_off_by_more_than_1e_9_mm_from_bisection_in_higher_precision()
    {
        foreach (DiscPair pair in PairSets.Discs)
            DiscCapsule.Measure(pair.First, pair.Second).Gap.ShouldBe(pair.Gap, 1e-9);
    }

    [Fact]
    public void Witnesses_lie_on_both_surfaces_the_gap_apart_along_the_direction_which_separates_by_the_gap()
    {
        foreach (DiscPair pair in PairSets.Discs)
        {
            PieceGap gap = DiscCapsule.Measure(pair.First, pair.Second);

            GapAssert.WitnessesAgree(gap, 1e-9);
            GapAssert.OffSurface(pair.First, gap.OnFirst).ShouldBeLessThan(1e-9);
            GapAssert.OffSurface(pair.Second, gap.OnSecond).ShouldBeLessThan(1e-9);
            GapAssert.Separation(pair.First, pair.Second, gap.Direction).ShouldBe(gap.Gap, 1e-8);
        }
    }

    [Fact]
    public void Moving_mirroring_or_turning_the_axis_round_changes_no_gap()
    {
        var g = new SplitMix64(41);
        foreach (DiscPair pair in PairSets.Discs)
        {
            (Disc disc, Capsule capsule) = (pair.First, pair.Second);
            double gap = DiscCapsule.Measure(disc, capsule).Gap;
            RigidMotion m = g.Motion(1000);
            Disc moved = new(m.Apply(disc.Center), m.ApplyToDirection(disc.Axis), disc.RadiusMm, disc.HalfWidthMm);
            Disc mirrored = new(Mirror(disc.Center), Mirror(disc.Axis), disc.RadiusMm, disc.HalfWidthMm);
            Disc turned = new(disc.Center, -disc.Axis, disc.RadiusMm, disc.HalfWidthMm);

            DiscCapsule.Measure(moved, capsule.Moved(m)).Gap.ShouldBe(gap, 1e-9);
            DiscCapsule.Measure(mirrored, new(Mirror(capsule.From), Mirror(capsule.To), capsule.Radius)).Gap.ShouldBe(gap, 1e-9);
            DiscCapsule.Measure(turned, capsule).Gap.ShouldBe(gap, 1e-9);
            DiscCapsule.Measure(disc, new(capsule.To, capsule.From, capsule.Radius)).Gap.ShouldBe(gap, 1e-9);
        }
    }

    [Fact]
    public void An_overlapping_pair_reports_a_separation_that_is_never_above_the_true_gap()
    {
        var g = new SplitMix64(42);
        int inside = 0;
        for (int i = 0; i < 1500; i++)
        {
            Disc disc = new(g.Cube(50), g.UnitVector(), g.In(50, 400), g.In(20, 180));
            Vector3d p = g.Cube(250);
            var capsule = new Capsule(p, p + g.Cube(150), g.In(2, 25));

            PieceGap gap = DiscCapsule.Measure(disc, capsule);

            GapAssert.WitnessesAgree(gap, 1e-9);
            GapAssert.Separation(disc, capsule, gap.Direction).ShouldBe(gap.Gap, 1e-8);
            if (gap.Gap > -capsule.Radius + 1e-6) continue;
            inside++;
            gap.Gap.ShouldBeLessThanOrEqualTo(-DeepestBall(disc, capsule) - capsule.Radius + 1e-9);
        }

        inside.ShouldBeGreaterThan(500);
    }

    [Theory] // A thin bar through a wheel, 30 mm inside its face, or 10 mm inside its tread: the way out is along the axis or the radius.
    [InlineData(0, 130, -30 - 4)]
    [InlineData(450, 0, -10 - 4)]
    public void A_bar_inside_a_tire_is_as_deep_as_the_nearest_way_out(double aside, double along, double expected)
    {
        Disc tire = new(Vector3d.Zero, Vector3d.UnitY, 460, 160);
        var bar = new Capsule(new(-5, along, aside), new(5, along, aside), 4);

        // The ends of the second bar lie 0.03 mm nearer to the tread than its middle.
        DiscCapsule.Measure(tire, bar).Gap.ShouldBe(expected, aside == 0 ? 1e-12 : 0.03);
    }

    [Fact]
    public void A_discs_support_is_the_largest_of_its_rim_points()
    {
        var g = new SplitMix64(56);
        for (int i = 0; i < 200; i++)
        {
            Disc disc = new(g.Cube(100), g.UnitVector() * g.In(0.1, 9), g.In(10, 500), g.In(10, 200));
            Vector3d n = g.UnitVector(), e = disc.Axis.AnyPerpendicular(), f = Vector3d.Cross(disc.Axis, e);
            double most = double.NegativeInfinity;
            for (int k = 0; k < 7200; k++)
            {
                double angle = Math.PI * k / 3600;
                Vector3d rim = disc.Center + (((e * Math.Cos(angle)) + (f * Math.Sin(angle))) * disc.RadiusMm);
                most = Math.Max(most, Math.Max(
                    Vector3d.Dot(n, rim + (disc.Axis * disc.HalfWidthMm)), Vector3d.Dot(n, rim - (disc.Axis * disc.HalfWidthMm))));
            }

            disc.Axis.Length.ShouldBe(1, 1e-15);
            // A rim sampled every 0.05 degrees is short by at most radius x (1 - cos 0.025 deg).
            disc.Support(n).ShouldBeInRange(most - 1e-9, most + 1e-4);
        }
    }

    // A ball about a point of the bar's axis that lies inside the disc lies in both: no direction separates by more than minus its width.
    private static double DeepestBall(Disc disc, in Capsule capsule)
    {
        double deepest = 0;
        for (int i = 0; i <= 1000; i++)
        {
            Vector3d from = Vector3d.Lerp(capsule.From, capsule.To, i / 1000.0) - disc.Center;
            double z = Vector3d.Dot(from, disc.Axis), rho = (from - (disc.Axis * z)).Length;
            deepest = Math.Max(deepest, Math.Min(disc.RadiusMm - rho, disc.HalfWidthMm - Math.Abs(z)));
        }

        return deepest;
    }

    private static Vector3d Mirror(Vector3d v) => new(v.X, -v.Y, v.Z);
}
