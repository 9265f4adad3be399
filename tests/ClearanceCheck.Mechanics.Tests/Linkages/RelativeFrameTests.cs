using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

/// <summary>A curvature belongs to a pair of bodies: seen from a turning body the same point runs another path.</summary>
public sealed class RelativeFrameTests
{
    // A second difference over steps of this many mm; poses are right to 1e-12 mm, so it is right to 1e-12 / 25.
    private const double StepMm = 5;
    private const double Rounding = 1e-11;

    [Theory]
    [InlineData(0, 1)] // axle against the chassis
    [InlineData(1, 0)] // chassis seen from the axle
    [InlineData(1, 2)] // lower link seen from the axle
    [InlineData(2, 1)] // axle seen from the lower link
    [InlineData(3, 2)] // lower link seen from the track bar
    public void The_bound_holds_for_second_differences_of_the_path_in_the_turning_frame(int frame, int body)
    {
        var draws = new Draws(101);
        for (int i = 0; i < 4; i++)
        {
            LinkageMotion motion = draws.Motion(5, 120);
            (Vector3d anchor, Curvature[] bounds) = BoundOf(motion, draws, frame, body);

            for (int k = 0; k < 20; k++)
                Excess(motion, draws, frame, body, anchor, bounds).ShouldBeLessThanOrEqualTo(Rounding, $"axle {i}");
        }
    }

    [Theory]
    [InlineData(1, 0)]
    [InlineData(1, 2)]
    public void The_worlds_curvature_would_not_bound_the_path_in_the_turning_frame(int frame, int body)
    {
        var draws = new Draws(102);
        int broken = 0;
        for (int i = 0; i < 4; i++)
        {
            LinkageMotion motion = draws.Motion(5, 120);
            (Vector3d anchor, Curvature[] bounds) = BoundOf(motion, draws, 0, body);
            for (int k = 0; k < 20; k++)
                if (Excess(motion, draws, frame, body, anchor, bounds) > 1e-5) broken++;
        }

        broken.ShouldBeGreaterThan(12);
    }

    [Fact]
    public void A_bound_for_two_anchors_holds_for_every_point_between_them()
    {
        var draws = new Draws(103);
        var bounds = new Curvature[2];
        for (int i = 0; i < 10; i++)
        {
            LinkageMotion motion = draws.Motion(0, 120);
            Vector3d one = draws.Near(0, 795, 0, 400), other = draws.Near(0, -795, 0, 400);
            motion.Curvatures(DyadicCell.Whole(2), 0, 1, [one, other], bounds).ShouldNotBe(CurvatureBasis.Unknown);

            for (int k = 0; k < 20; k++)
                Excess(motion, draws, 0, 1, Vector3d.Lerp(one, other, draws.In(0, 1)), bounds).ShouldBeLessThanOrEqualTo(Rounding);
        }
    }

    private static (Vector3d Anchor, Curvature[] Bounds) BoundOf(LinkageMotion motion, Draws draws, int frame, int body)
    {
        var bounds = new Curvature[2];
        Vector3d anchor = draws.Near(-400, 200, 100, 600);
        motion.Curvatures(DyadicCell.Whole(2), frame, body, [anchor], bounds).ShouldNotBe(CurvatureBasis.Unknown);
        return (anchor, bounds);
    }

    // By how much a second difference at a random pose leaves the bound, mm per mm squared.
    private static double Excess(LinkageMotion motion, Draws draws, int frame, int body, Vector3d anchor, Curvature[] bounds)
    {
        double[] at = [draws.In(-115, 115), draws.In(-115, 115)];
        int coordinate = draws.Whole(2);
        Vector3d Path(double step)
        {
            double[] moved = [.. at];
            moved[coordinate] += step;
            SolvedPose pose = motion.At(moved);
            pose.IsSolved.ShouldBeTrue();
            return pose.Relative(frame, body).Apply(anchor);
        }

        Vector3d bend = (Path(StepMm) + Path(-StepMm) - (2 * Path(0))) / (StepMm * StepMm);
        Curvature b = bounds[coordinate];
        double beyond = Math.Max(b.LowX - bend.X, bend.X - b.HighX);
        beyond = Math.Max(beyond, Math.Max(b.LowY - bend.Y, bend.Y - b.HighY));
        beyond = Math.Max(beyond, Math.Max(b.LowZ - bend.Z, bend.Z - b.HighZ));
        return Math.Max(beyond, bend.Length - b.Length);
    }
}
