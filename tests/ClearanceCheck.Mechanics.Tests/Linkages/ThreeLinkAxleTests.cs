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

    private static void Near(Vector3d actual, ReadOnlySpan<double> expected, double tolerance)
    {
        actual.X.ShouldBe(expected[0], tolerance);
        actual.Y.ShouldBe(expected[1], tolerance);
        actual.Z.ShouldBe(expected[2], tolerance);
    }
}
