using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Tests.Scenes;

namespace ClearanceCheck.Geometry.Tests.Gaps;

/// <summary>Every pair of shapes against a search over all features and all axes that knows nothing but corners.</summary>
public sealed class SignedGapTests
{
    // In the usual run every eighth pair is checked in 31 digits, all others in doubles; a long run checks all in 31 digits.
    private static readonly int Every = Environment.GetEnvironmentVariable("CLEARANCECHECK_LONG") == "1" ? 1 : 8;

    public static TheoryData<HullShape, HullShape, double> Kinds => new()
    {
        { HullShape.Triangle, HullShape.Capsule, 1e-11 },
        { HullShape.Triangle, HullShape.Triangle, 1e-11 },
        { HullShape.Box, HullShape.Capsule, 1e-9 },
        { HullShape.Box, HullShape.Triangle, 1e-9 },
        { HullShape.Box, HullShape.Box, 1e-9 },
        { HullShape.Stave, HullShape.Capsule, 1e-9 },
        { HullShape.Stave, HullShape.Triangle, 1e-9 },
        { HullShape.Stave, HullShape.Box, 1e-9 },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_gap_is_that_of_the_search_over_all_features_and_axes(HullShape first, HullShape second, double tolerance)
    {
        int index = 0, overlapping = 0;
        foreach ((Hull a, Hull b) in HullScenes.Pairs(first, second, 600 + (ulong)((4 * (int)first) + (int)second)))
        {
            PieceGap gap = Hull.Measure(a, b);

            if (index % Every == 0) gap.Gap.ShouldBe(SlowHullGap<DoubleDouble>.Of(a, b), tolerance, $"pair {index}, 31 digits");
            else gap.Gap.ShouldBe(SlowHullGap<PlainReal>.Of(a, b), 1e-9, $"pair {index}");
            if (gap.Gap < -a.Radius - b.Radius) overlapping++;
            index++;
        }

        index.ShouldBe(HullScenes.Count);
        overlapping.ShouldBeGreaterThan(HullScenes.Count / 3);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_direction_separates_by_the_gap_and_the_witnesses_stand_that_far_apart(HullShape first, HullShape second, double tolerance)
    {
        int index = 0;
        foreach ((Hull a, Hull b) in HullScenes.Pairs(first, second, 700 + (ulong)((4 * (int)first) + (int)second)))
        {
            PieceGap gap = Hull.Measure(a, b);

            GapAssert.WitnessesAgree(gap, Math.Max(tolerance, 1e-10));
            a.SeparationFrom(b, gap.Direction).ShouldBe(gap.Gap, 1e-9, $"pair {index}");
            OutsideBy(gap.OnFirst, a).ShouldBeLessThan(1e-8, $"pair {index}");
            if (gap.Gap >= -a.Radius - b.Radius) OutsideBy(gap.OnSecond, b).ShouldBeLessThan(1e-8, $"pair {index}");
            index++;
        }
    }

    // By how much a point lies outside of a piece, seen from directions all around.
    private static double OutsideBy(Vector3d point, Hull hull)
    {
        double most = double.NegativeInfinity;
        for (int x = -2; x <= 2; x++)
            for (int y = -2; y <= 2; y++)
                for (int z = -2; z <= 2; z++)
                {
                    Vector3d n = new Vector3d(x, y, z).NormalizedOr(Vector3d.UnitX);
                    most = Math.Max(most, new Hull([point], hull.Kind, 0).SeparationFrom(hull, n));
                }

        return most;
    }
}
