using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Mechanics.Tests.Linkages;

namespace ClearanceCheck.Mechanics.Tests.Poses;

/// <summary>A cell may only be dropped when a stop is certainly passed: the estimate of the reserve is never below the reserve.</summary>
public sealed class StopTests
{
    public enum Kind
    {
        Longest,
        Shortest,
        Height,
    }

    [Theory]
    [InlineData(Kind.Longest)]
    [InlineData(Kind.Shortest)]
    [InlineData(Kind.Height)]
    public void The_cells_estimate_is_never_below_the_reserve(Kind kind)
    {
        var draws = new Draws(161);
        int tight = 0;
        for (int i = 0; i < 80; i++)
        {
            LinkageMotion motion = draws.Motion(0, 120);
            Stop stop = Draw(kind, draws, seenFromTheAxle: i % 2 == 1);
            DyadicCell cell = DrawCell(draws);
            for (int k = 0; k < 12; k++) Check(motion, stop, cell, draws, ref tight);
        }

        // The estimate is of use only when it comes near: within a tenth of a millimetre for many cells.
        tight.ShouldBeGreaterThan(50);
    }

    [Fact]
    public void A_reserve_is_what_the_words_say()
    {
        RigidMotion raised = new(Rotation.Identity, new(0, 0, 30));
        Vector3d top = new(0, 0, 500), bottom = Vector3d.Zero;

        new LongestStop("shock", 0, top, 1, bottom, 520).Reserve(RigidMotion.Identity).ShouldBe(20);
        new LongestStop("shock", 0, top, 1, bottom, 480).Reserve(RigidMotion.Identity).ShouldBe(-20);
        new ShortestStop("shock", 0, top, 1, bottom, 460).Reserve(raised).ShouldBe(10);
        new ShortestStop("shock", 0, top, 1, bottom, 480).Reserve(raised).ShouldBe(-10);
        new HeightStop("bump stop", 0, top, 1, bottom, Vector3d.UnitZ, 450).Reserve(raised).ShouldBe(20);
        new HeightStop("bump stop", 0, top, 1, bottom, Vector3d.UnitZ, 480).Reserve(raised).ShouldBe(-10);
    }

    [Fact]
    public void A_curvature_along_a_direction_is_the_most_that_its_box_reaches_below_zero()
    {
        var draws = new Draws(162);
        for (int i = 0; i < 1000; i++)
        {
            Vector3d a = draws.Near(0, 0, 0, 3), b = draws.Near(0, 0, 0, 3), n = draws.Near(0, 0, 0, 1).NormalizedOr(Vector3d.UnitX);
            var box = new Curvature(Math.Min(a.X, b.X), Math.Max(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.Y, b.Y), Math.Min(a.Z, b.Z), Math.Max(a.Z, b.Z), 100);
            double lowest = double.PositiveInfinity;
            for (int corner = 0; corner < 8; corner++)
                lowest = Math.Min(lowest, Vector3d.Dot(n, new(
                    (corner & 1) == 0 ? box.LowX : box.HighX, (corner & 2) == 0 ? box.LowY : box.HighY, (corner & 4) == 0 ? box.LowZ : box.HighZ)));

            box.Along(n).ShouldBe(Math.Max(0, -lowest), 1e-12);
            (box with { Length = 0.5 }).Along(n).ShouldBeLessThanOrEqualTo(0.5);
            Curvature.Ball(2).Along(n).ShouldBe(2, 1e-12);
        }
    }

    private static void Check(LinkageMotion motion, Stop stop, DyadicCell cell, Draws draws, ref int tight)
    {
        double u = draws.In(0, 1), v = draws.In(0, 1);
        double[] at = [Between(0, u), Between(1, v)];
        Vector3d direction = stop.EstimateDirection(Relative(motion.At(cell.Center(2))));
        var bounds = new Curvature[2];
        motion.Curvatures(cell, stop.FirstBody, stop.SecondBody, [stop.SecondPoint], bounds).ShouldNotBe(CurvatureBasis.Unknown);

        // Interpolated between the corners, which is at most their largest: the claim that the largest rests on.
        double estimate = 0;
        for (int corner = 0; corner < 4; corner++)
            estimate += ((corner & 1) == 0 ? 1 - u : u) * ((corner & 2) == 0 ? 1 - v : v) * stop.CornerEstimate(Relative(motion.At(cell.Corner(corner, 2))), direction);
        for (int k = 0; k < 2; k++)
        {
            double width = cell.Width(k, motion.Box);
            estimate += stop.EstimateCurvature(bounds[k], direction) * width * width / 8;
        }

        double reserve = stop.Reserve(Relative(motion.At(at)));
        reserve.ShouldBeLessThanOrEqualTo(estimate + 1e-9);
        if (estimate - reserve < 0.1) tight++;

        RigidMotion Relative(SolvedPose pose)
        {
            pose.IsSolved.ShouldBeTrue();
            return pose.Relative(stop.FirstBody, stop.SecondBody);
        }

        double Between(int k, double share) =>
            motion.Box.ValueAt(k, cell.Low[k]) + (share * cell.Width(k, motion.Box));
    }

    private static Stop Draw(Kind kind, Draws draws, bool seenFromTheAxle)
    {
        Vector3d upper = draws.Near(-100, 450, 500, 150), lower = draws.Near(-60, 550, -50, 150);
        (int first, Vector3d firstPoint, int second, Vector3d secondPoint) = seenFromTheAxle ? (1, lower, 0, upper) : (0, upper, 1, lower);
        return kind switch
        {
            Kind.Longest => new LongestStop("shock at full length", first, firstPoint, second, secondPoint, 600),
            Kind.Shortest => new ShortestStop("shock bottomed", first, firstPoint, second, secondPoint, 400),
            _ => new HeightStop("bump stop", first, firstPoint, second, secondPoint, draws.Near(0, 0, seenFromTheAxle ? -1 : 1, 0.3).NormalizedOr(Vector3d.UnitZ), 60),
        };
    }

    private static DyadicCell DrawCell(Draws draws)
    {
        DyadicPose low = default, size = default;
        for (int k = 0; k < 2; k++)
        {
            int width = DyadicPose.Denominator >> (2 + draws.Whole(4));
            size = size.With(k, width);
            low = low.With(k, draws.Whole(DyadicPose.Denominator / width) * width);
        }

        return new DyadicCell(low, size);
    }
}
