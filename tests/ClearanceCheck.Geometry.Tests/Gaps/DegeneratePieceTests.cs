using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Geometry.Tests.Scenes;

namespace ClearanceCheck.Geometry.Tests.Gaps;

/// <summary>Parallel, in one plane, on one line, without area or length, touching, sharing corners, the same twice, far away, no number.</summary>
public sealed class DegeneratePieceTests
{
    private const int Pairs = 400;

    [Theory]
    [MemberData(nameof(HullKinds.All), MemberType = typeof(HullKinds))]
    public void Pieces_on_a_grid_are_measured_like_any_others(HullShape first, HullShape second) =>
        Check(first, second, 801, (hull, _) => hull);

    [Theory]
    [MemberData(nameof(HullKinds.All), MemberType = typeof(HullKinds))]
    public void Pieces_of_a_grid_that_is_turned_and_carried_away_are_measured_like_any_others(HullShape first, HullShape second)
    {
        RigidMotion motion = new SplitMix64(802).Motion(500);
        Check(first, second, 803, (hull, _) => hull.With(motion.Apply));
    }

    [Theory]
    [MemberData(nameof(HullKinds.All), MemberType = typeof(HullKinds))]
    public void Pieces_a_million_mm_from_the_origin_are_measured_like_any_others(HullShape first, HullShape second) =>
        Check(first, second, 804, (hull, _) => hull.With(c => c + new Vector3d(1e6, -1e6, 1e6)));

    [Theory]
    [MemberData(nameof(HullKinds.All), MemberType = typeof(HullKinds))]
    public void Pieces_that_miss_a_grid_by_a_hair_are_measured_like_any_others(HullShape first, HullShape second)
    {
        RigidMotion motion = new SplitMix64(805).Motion(500);
        // A whole piece is off the grid, or turned by about 1e-9, as much as keeps a box a box.
        foreach (double hair in (double[])[1e-12, 1e-10, 1e-9, 1e-7, 1e-5, 1e-4, 1e-3])
            Check(first, second, 806, (hull, g) => hull.With(new RigidMotion(Rotation.About(g.UnitVector(), hair), g.Cube(hair)).Apply).With(motion.Apply), Pairs / 8, 1e-8);
    }

    [Theory]
    [MemberData(nameof(HullKinds.All), MemberType = typeof(HullKinds))]
    public void The_same_piece_twice_overlaps_by_its_least_width(HullShape shape, HullShape other)
    {
        var g = new SplitMix64(807);
        for (int i = 0; i < 50; i++)
        {
            Hull hull = HullScenes.Draw(i % 2 == 0 ? shape : other, g);
            Hull.Measure(hull, hull).Gap.ShouldBe(SlowHullGap<DoubleDouble>.Of(hull, hull), 1e-9);
            GapAssert.WitnessesAgree(Hull.Measure(hull, hull), 1e-9);
        }
    }

    [Theory]
    [MemberData(nameof(HullKinds.All), MemberType = typeof(HullKinds))]
    public void A_corner_or_radius_that_is_no_number_gives_no_number(HullShape first, HullShape second)
    {
        var g = new SplitMix64(808);
        for (int i = 0; i < 20; i++)
        {
            Hull a = HullScenes.Draw(first, g), b = HullScenes.Draw(second, g);
            for (int k = 0; k < a.Corners.Length; k++)
            {
                Hull wrong = a with { Corners = [.. a.Corners] };
                wrong.Corners[k] = (k % 3) switch { 0 => wrong.Corners[k] with { X = double.NaN }, 1 => wrong.Corners[k] with { Y = double.NaN }, _ => wrong.Corners[k] with { Z = double.NaN } };

                double.IsNaN(Hull.Measure(wrong, b).Gap).ShouldBeTrue($"corner {k} of the first");
                double.IsNaN(Hull.Measure(b, wrong).Gap).ShouldBeTrue($"corner {k} of the second");
            }

            double.IsNaN(Hull.Measure(a with { Radius = double.NaN }, b).Gap).ShouldBeTrue("radius");
        }
    }

    [Fact]
    public void Touching_pieces_have_gap_zero()
    {
        Hull box = Box(new(0, 0, 0), new(10, 20, 30));

        Hull.Measure(box, Box(new(10, 5, 5), new(15, 9, 9))).Gap.ShouldBe(0, 1e-12, "face on face");
        Hull.Measure(box, Box(new(10, 20, 5), new(15, 29, 9))).Gap.ShouldBe(0, 1e-12, "edge on edge");
        Hull.Measure(box, Box(new(10, 20, 30), new(15, 29, 39))).Gap.ShouldBe(0, 1e-12, "corner on corner");
        Hull.Measure(box, Box(new(2, 2, 2), new(4, 9, 7))).Gap.ShouldBe(-4, 1e-12, "one inside the other: 2 mm from the wall and 2 mm wide");
        Hull.Measure(box, new([new(10, 4, 4), new(50, 4, 4)], PieceKind.Simplex, 0)).Gap.ShouldBe(0, 1e-12, "an end on a face");
        Hull.Measure(box, new([new(13, 4, 4), new(50, 4, 4)], PieceKind.Simplex, 3)).Gap.ShouldBe(0, 1e-12, "a round end on a face");
    }

    private static string Text(Hull hull) =>
        $"{string.Join(" ", hull.Corners.Select(c => $"({c.X:R} {c.Y:R} {c.Z:R})"))} r {hull.Radius:R}";

    private static Hull Box(Vector3d corner, Vector3d opposite)
    {
        var corners = new Vector3d[8];
        new SolidBox(corner, opposite).Corners(0, corners);
        return new(corners, PieceKind.Box, 0);
    }

    private static void Check(HullShape first, HullShape second, ulong seed, Func<Hull, SplitMix64, Hull> change, int pairs = Pairs, double below = 1e-9)
    {
        var g = new SplitMix64(seed);
        for (int i = 0; i < pairs; i++)
        {
            Hull a = change(Lattice.Draw(first, g), g), b = change(Lattice.Draw(second, g), g);
            PieceGap gap = Hull.Measure(a, b);
            string pair = $"pair {i}: {Text(a)} and {Text(b)}";

            // Where edges are parallel but for a hair, the search may end on the side of a smaller gap.
            double exact = SlowHullGap<DoubleDouble>.Of(a, b);
            gap.Gap.ShouldBeInRange(exact - below, exact + 1e-9, pair);
            gap.Direction.Length.ShouldBe(1, 1e-14, pair);
            // Hulls that all but touch have a direction that is as good as their corners allow.
            double core = gap.Gap + a.Radius + b.Radius;
            if (core > 1e-4 || core < -1e-9) a.SeparationFrom(b, gap.Direction).ShouldBeGreaterThanOrEqualTo(gap.Gap - 1e-7, pair);
            else a.SeparationFrom(b, gap.Direction).ShouldBeGreaterThanOrEqualTo(gap.Gap - 1e-4, pair);
        }
    }
}
