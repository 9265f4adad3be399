using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Geometry.Tests.Scenes;

namespace ClearanceCheck.Geometry.Tests.Gaps;

public sealed class CapsuleCapsuleTests
{
    // Set and index, then the gap as an independent program printed it (12 digits; scene-pairs.json of the peers, 80-bit arithmetic).
    public static TheoryData<string, int, double, double> Printed => new()
    {
        { "random", 0, 247.374500307, 6e-10 },
        { "random", 1, 285.597596727, 6e-10 },
        { "random", 3, 55.1364912965, 6e-11 },
        { "random", 17, 89.6347361708, 6e-11 },
        { "random", 99, 250.120292364, 6e-10 },
        { "random", 255, 37.4179761065, 6e-11 },
        { "degenerate", 0, 40.5986269409, 6e-11 },
        { "degenerate", 1, 121.085986301, 6e-10 },
        { "degenerate", 2, 106.730132069, 6e-10 },
        { "degenerate", 3, 138.910991465, 6e-10 },
        { "degenerate", 4, 107.256793995, 6e-10 },
        { "degenerate", 5, 2.17923448158e-06, 1e-12 },
        { "degenerate", 6, 20.3559177465, 6e-11 },
        { "degenerate", 7, 110.64659359, 6e-10 },
        { "degenerate", 13, 1.50412176764e-07, 1e-12 },
        { "degenerate", 254, 101.163108707, 6e-10 },
    };

    [Theory]
    [MemberData(nameof(Printed))]
    public void A_gap_printed_by_another_program_is_met_at_its_printed_digits(string set, int index, double expected, double tolerance)
    {
        CapsulePair pair = (set == "random" ? PairSets.Capsules : PairSets.Degenerate)[index];

        CapsuleCapsule.Measure(pair.First, pair.Second).Gap.ShouldBe(expected, tolerance);
    }

    [Fact]
    public void The_sums_of_all_gaps_are_those_of_another_program()
    {
        PairSets.Capsules.Count.ShouldBe(4096);
        PairSets.Degenerate.Count.ShouldBe(4096);

        // sum_of_gaps of seeds 101 and 505 in the peers' scene-pairs.json, nine decimals.
        PairSets.Capsules.Sum(p => CapsuleCapsule.Measure(p.First, p.Second).Gap).ShouldBe(859308.476931939, 2e-9);
        PairSets.Degenerate.Sum(p => CapsuleCapsule.Measure(p.First, p.Second).Gap).ShouldBe(370887.433437401, 2e-9);
    }

    [Fact]
    public void No_gap_is_off_by_more_than_1e_12_mm_from_the_search_over_all_feature_pairs()
    {
        foreach (CapsulePair pair in PairSets.Capsules.Concat(PairSets.Degenerate))
            CapsuleCapsule.Measure(pair.First, pair.Second).Gap.ShouldBe(pair.Gap, 1e-12, $"kind {pair.Kind}");
    }

    [Fact]
    public void Witnesses_lie_on_both_surfaces_the_gap_apart_and_along_the_direction()
    {
        foreach (CapsulePair pair in PairSets.Capsules.Concat(PairSets.Degenerate))
        {
            PieceGap gap = CapsuleCapsule.Measure(pair.First, pair.Second);

            // A million mm away a double is 1.2e-10 mm wide.
            double tolerance = pair.Kind == 6 ? 1e-9 : 1e-12;
            GapAssert.WitnessesAgree(gap, tolerance);
            GapAssert.OffSurface(pair.First, gap.OnFirst).ShouldBeLessThan(tolerance);
            GapAssert.OffSurface(pair.Second, gap.OnSecond).ShouldBeLessThan(tolerance);
        }
    }

    [Fact]
    public void The_separation_along_the_direction_is_the_gap()
    {
        foreach (CapsulePair pair in PairSets.Capsules.Concat(PairSets.Degenerate))
        {
            PieceGap gap = CapsuleCapsule.Measure(pair.First, pair.Second);

            GapAssert.Separation(pair.First, pair.Second, gap.Direction).ShouldBe(gap.Gap, 1e-9, $"kind {pair.Kind}");
        }
    }

    [Fact]
    public void Exchanging_the_capsules_mirrors_the_answer()
    {
        foreach (CapsulePair pair in PairSets.Capsules.Concat(PairSets.Degenerate))
        {
            PieceGap gap = CapsuleCapsule.Measure(pair.First, pair.Second), swapped = CapsuleCapsule.Measure(pair.Second, pair.First);

            swapped.Gap.ShouldBe(gap.Gap, 1e-12);
            GapAssert.Near(swapped.Direction, -gap.Direction, 1e-9);
            // The nearest points of parallel capsules may be anywhere along them; their place is decided only when they are not.
            if (pair.Kind is 0 or 1) continue;
            GapAssert.Near(swapped.OnFirst, gap.OnSecond, 1e-6);
            GapAssert.Near(swapped.OnSecond, gap.OnFirst, 1e-6);
        }
    }

    [Fact]
    public void Moving_or_mirroring_both_capsules_changes_no_gap()
    {
        var g = new SplitMix64(7);
        foreach (CapsulePair pair in PairSets.Capsules.Concat(PairSets.Degenerate.Where(p => p.Kind != 6)))
        {
            double gap = CapsuleCapsule.Measure(pair.First, pair.Second).Gap;
            RigidMotion motion = g.Motion(1000);

            CapsuleCapsule.Measure(pair.First.Moved(motion), pair.Second.Moved(motion)).Gap.ShouldBe(gap, 1e-9);
            CapsuleCapsule.Measure(Mirrored(pair.First), Mirrored(pair.Second)).Gap.ShouldBe(gap, 1e-9);
        }
    }

    [Fact]
    public void The_ends_of_a_capsule_may_be_exchanged()
    {
        foreach (CapsulePair pair in PairSets.Capsules.Concat(PairSets.Degenerate))
        {
            var turned = new Capsule(pair.Second.To, pair.Second.From, pair.Second.Radius);

            CapsuleCapsule.Measure(pair.First, turned).Gap.ShouldBe(pair.Gap, 1e-12, $"kind {pair.Kind}");
        }
    }

    private static Capsule Mirrored(in Capsule c) => new(new(c.From.X, -c.From.Y, c.From.Z), new(c.To.X, -c.To.Y, c.To.Z), c.Radius);
}
