using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

public sealed class LinkageBuildTests
{
    [Fact]
    public void A_missing_link_names_the_body_that_is_loose()
    {
        LinkageFault fault = FaultOf(["chassis", "axle"], ThreeLinkAxle.Joints().Where(j => j.Name != "upper"));

        fault.Kind.ShouldBe(LinkageFaultKind.Loose);
        fault.Names.ShouldBe(["axle"]);
    }

    [Fact]
    public void Only_the_loose_one_of_two_bodies_is_named()
    {
        Joint ball = new Joint.Ball("arm pivot", 0, 2, new(300, 0, 0));

        FaultOf(["chassis", "axle", "arm"], ThreeLinkAxle.Joints().Append(ball)).Names.ShouldBe(["arm"]);
    }

    [Fact]
    public void A_setting_that_the_links_leave_no_freedom_for_is_named()
    {
        // A fifth rod leaves one freedom of six: the second height is already decided.
        Joint fifth = new Joint.Rod("fifth", 0, new(-700, -240, 190), 1, new(-30, -250, 150));

        foreach (IEnumerable<Joint> joints in (IEnumerable<Joint>[])[ThreeLinkAxle.Joints().Prepend(fifth), ThreeLinkAxle.Joints().OrderBy(j => j is Joint.Rod).Append(fifth)])
        {
            LinkageFault fault = FaultOf(["chassis", "axle"], joints);

            fault.Kind.ShouldBe(LinkageFaultKind.SettingWithoutFreedom);
            fault.Names.ShouldBe(["right"]);
        }
    }

    [Fact]
    public void A_rod_of_no_length_is_named()
    {
        Joint none = new Joint.Rod("stub", 0, new(1, 2, 3), 1, new(1, 2, 3));

        LinkageFault fault = FaultOf(["chassis", "axle"], ThreeLinkAxle.Joints().Append(none));

        fault.Kind.ShouldBe(LinkageFaultKind.NoLength);
        fault.Names.ShouldBe(["stub"]);
    }

    [Fact]
    public void A_rod_fitted_twice_is_left_out_named_and_still_checked_in_every_pose()
    {
        Joint twin = new Joint.Rod("twin", 0, new(85, 470, 172), 1, new(55, -445, 83));
        Linkage linkage = Built(["chassis", "axle"], ThreeLinkAxle.Joints().Append(twin), 2);
        var motion = new LinkageMotion(linkage, ThreeLinkAxle.Motion().Box, []);

        linkage.Redundant.ShouldBe(["twin"]);
        foreach (double[] row in ThreeLinkAxleTable.Rows)
        {
            SolvedPose pose = motion.At(row.AsSpan(0, 2));

            pose.IsSolved.ShouldBeTrue();
            (pose[1].Apply(ThreeLinkAxle.HubLeft) - new Vector3d(row[2], row[3], row[4])).Length.ShouldBeLessThan(1e-6);
        }
    }

    [Fact]
    public void A_redundancy_that_is_only_apparent_is_never_answered_with_a_wrong_pose()
    {
        // In line with the track bar but half as long: the same equation where it was measured, another one everywhere else.
        Vector3d frame = new(85, 470, 172), axle = new(55, -445, 83);
        Joint half = new Joint.Rod("half bar", 0, Vector3d.Lerp(frame, axle, 0.5), 1, axle);
        Linkage linkage = Built(["chassis", "axle"], ThreeLinkAxle.Joints().Append(half), 2);
        var motion = new LinkageMotion(linkage, ThreeLinkAxle.Motion().Box, []);

        linkage.Redundant.ShouldBe(["half bar"]);
        motion.At([0, 0]).IsSolved.ShouldBeTrue();
        motion.At([60, 60]).Answer.ShouldBe(PoseAnswerKind.NotSolved);
        motion.At([-80, 20]).Answer.ShouldBe(PoseAnswerKind.NotSolved);
    }

    [Fact]
    public void Which_equation_of_a_redundant_joint_is_left_out_does_not_spoil_the_others()
    {
        // Two balls whose line lies nearly level: leaving out the height of the second would leave it to a hundredth of the rest.
        Linkage linkage = Built(
            ["chassis", "beam"],
            [new Joint.Ball("front", 0, 1, new(0, 0, 0)), new Joint.Ball("rear", 0, 1, new(-900, 500, 9)), new Joint.Travel("hub", 1, new(0, 800, 0), 0, 0)],
            1);

        linkage.Redundant.ShouldBe(["rear"]);
        SquareMatrix.Factor(linkage.Derivatives(linkage.Start, [], linkage.StartSettings), linkage.Unknowns).Inverse().Max(Math.Abs).ShouldBeLessThan(10);
    }

    [Fact]
    public void A_link_on_two_balls_keeps_the_spin_it_was_measured_with()
    {
        var draws = new Draws(111);
        for (int i = 0; i < 10; i++)
        {
            (string[] bodies, Joint[] joints, int coordinates) = draws.Kind(5);
            var motion = Draws.Motion(bodies, joints, coordinates, 120);
            Vector3d line = (((Joint.Ball)joints[1]).Point - ((Joint.Ball)joints[0]).Point).NormalizedOr(Vector3d.UnitX);

            motion.Linkage.Joints.OfType<Joint.SpinHold>().Select(j => j.Name).ShouldBe(["spin of lower left", "spin of track bar"]);
            for (int k = 0; k < 5; k++)
            {
                SolvedPose pose = motion.At([draws.In(-110, 110), draws.In(-110, 110)]);

                Vector3d.Dot(pose[2].Rotation.ToRotationVector(), line).ShouldBe(0, 1e-12);
                foreach (Joint.Ball ball in joints.OfType<Joint.Ball>())
                    (pose[ball.FirstBody].Apply(ball.Point) - pose[ball.SecondBody].Apply(ball.Point)).Length.ShouldBeLessThan(1e-9);
            }
        }
    }

    private static Linkage Built(string[] bodies, IEnumerable<Joint> joints, int coordinates)
    {
        (Linkage? linkage, LinkageFault? fault) = Linkage.Build(bodies, joints, coordinates);
        fault.ShouldBeNull();
        return linkage.ShouldNotBeNull();
    }

    private static LinkageFault FaultOf(string[] bodies, IEnumerable<Joint> joints)
    {
        (Linkage? linkage, LinkageFault? fault) = Linkage.Build(bodies, joints, 2);
        linkage.ShouldBeNull();
        return fault.ShouldNotBeNull();
    }
}
