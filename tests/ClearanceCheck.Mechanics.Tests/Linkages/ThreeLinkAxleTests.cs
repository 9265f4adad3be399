using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

public sealed class ThreeLinkAxleTests
{
    [Fact]
    public void Every_pose_of_the_reference_table_is_met_within_a_millionth()
    {
        LinkageMotion motion = ThreeLinkAxle.Motion();

        foreach (double[] row in ThreeLinkAxleTable.Rows)
        {
            SolvedPose pose = motion.At(row.AsSpan(0, 2));

            pose.Answer.ShouldBe(PoseAnswerKind.Solved);
            Near(pose[1].Apply(ThreeLinkAxle.HubLeft), row.AsSpan(2, 3), 1e-6);
            Near(pose[1].Apply(ThreeLinkAxle.HubRight), row.AsSpan(5, 3), 1e-6);
            Near(pose[1].Rotation.ToRotationVector() * Trigonometry.DegreesPerRadian, row.AsSpan(8, 3), 1e-7);
        }
    }

    [Fact]
    public void Every_60_mm_block_of_the_travel_is_proved()
    {
        LinkageMotion motion = ThreeLinkAxle.Motion();
        Span<Curvature> bounds = stackalloc Curvature[2];

        for (int left = 0; left < 4; left++)
            for (int right = 0; right < 4; right++)
            {
                const int Quarter = DyadicPose.Denominator / 4;
                var block = new DyadicCell(new(left * Quarter, right * Quarter, 0, 0), new(Quarter, Quarter, 0, 0));

                motion.Curvatures(block, 0, 1, [ThreeLinkAxle.HubLeft], bounds).ShouldBe(CurvatureBasis.Enclosed);
            }
    }

    [Fact]
    public void The_proof_does_not_depend_on_where_zero_is()
    {
        Vector3d zero = new(-3100, 240, 760);
        Linkage moved = Linkage.Build(["chassis", "axle"], ThreeLinkAxle.Joints(zero), 2).Linkage.ShouldNotBeNull();
        LinkageMotion here = ThreeLinkAxle.Motion(), there = new(moved, here.Box, []);
        Curvature[] near = new Curvature[2], far = new Curvature[2];

        here.Curvatures(DyadicCell.Whole(2), 0, 1, [ThreeLinkAxle.HubLeft], near).ShouldBe(CurvatureBasis.Enclosed);
        there.Curvatures(DyadicCell.Whole(2), 0, 1, [zero + ThreeLinkAxle.HubLeft], far).ShouldBe(CurvatureBasis.Enclosed);

        for (int k = 0; k < 2; k++) far[k].Length.ShouldBe(near[k].Length, 1e-6 * near[k].Length);
        Near(there.At([80, -40])[1].Apply(zero + ThreeLinkAxle.HubLeft) - zero, Of(here.At([80, -40])[1].Apply(ThreeLinkAxle.HubLeft)), 1e-9);
    }

    private static double[] Of(Vector3d v) => [v.X, v.Y, v.Z];

    private static void Near(Vector3d actual, ReadOnlySpan<double> expected, double tolerance)
    {
        actual.X.ShouldBe(expected[0], tolerance);
        actual.Y.ShouldBe(expected[1], tolerance);
        actual.Z.ShouldBe(expected[2], tolerance);
    }
}
