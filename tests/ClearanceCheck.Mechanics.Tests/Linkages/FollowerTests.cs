using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Numbers;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

/// <summary>Bodies that lie along the line of two points of others: a shock's tube and rod, a link.</summary>
public sealed class FollowerTests(ITestOutputHelper output)
{
    private const int Tube = 2, Rod = 3, Link = 4;
    private static readonly Vector3d Top = new(110, 400, 470), Bottom = new(60, 520, 20), LinkFrame = new(-920, 430, -15), LinkAxle = new(-20, 505, -88);

    private static readonly ImmutableArray<Follower> Followers =
    [
        new LineFollower("tube", 0, Top, 1, Bottom),
        new LineFollower("rod", 1, Bottom, 0, Top),
        new LineFollower("link", 0, LinkFrame, 1, LinkAxle),
    ];

    [Fact]
    public void A_follower_turns_as_Rodrigues_formula_says_about_the_normal_of_its_old_and_new_axis()
    {
        var draws = new Draws(141);
        for (int i = 0; i < 75; i++)
        {
            LinkageMotion motion = Random(draws);
            SolvedPose pose = motion.At([draws.In(-120, 120), draws.In(-120, 120)]);
            for (int f = 0; f < motion.Followers.Length; f++)
            {
                var follower = (LineFollower)motion.Followers[f];
                Vector3d at = pose[follower.FirstBody].Apply(follower.FirstPoint), reach = pose[follower.SecondBody].Apply(follower.SecondPoint) - at;
                Vector3d before = Unit(follower.SecondPoint - follower.FirstPoint), now = Unit(reach), normal = Vector3d.Cross(before, now);
                double angle = Math.Atan2(normal.Length, Vector3d.Dot(before, now));
                Vector3d axis = Unit(normal), point = draws.Near(0, 300, 200, 500), arm = point - follower.FirstPoint;
                Vector3d turned = (arm * Math.Cos(angle)) + (Vector3d.Cross(axis, arm) * Math.Sin(angle)) + (axis * (Vector3d.Dot(axis, arm) * (1 - Math.Cos(angle))));

                RigidMotion own = pose[motion.Linkage.Bodies.Length + f];
                (own.Apply(point) - (at + turned)).Length.ShouldBeLessThan(1e-9);
                (own.Apply(follower.FirstPoint) - at).Length.ShouldBeLessThan(1e-9);
                Vector3d end = own.Apply(follower.SecondPoint) - at;
                Vector3d.Cross(end, now).Length.ShouldBeLessThan(1e-9);
                Vector3d.Dot(end, now).ShouldBe((follower.SecondPoint - follower.FirstPoint).Length, 1e-9);
            }
        }
    }

    [Fact]
    public void The_read_derivatives_are_those_of_the_poses_whichever_body_looks()
    {
        const double H = 1;
        var draws = new Draws(142);
        for (int i = 0; i < 75; i++)
        {
            LinkageMotion motion = Random(draws);
            double[] at = [draws.In(-100, 100), draws.In(-100, 100)];
            int coordinate = draws.Whole(2), frame = i % 5, body = i / 5 % 5;
            Vector3d point = draws.Near(0, 300, 200, 500);
            MotionJet<Real>[] own = LinkageDerivatives.Along(motion.Linkage, motion.LinkageBodies(motion.At(at)), at, coordinate);
            MotionJet<Real>[] jets = [.. own, .. motion.Followers.Select(f => f.Jet<Real>(own))];
            Vector3<Taylor2<Real>> path = RelativePath.Of<Real>(motion.Followers, jets, frame, body, point);
            Vector3d before = Path(-H), here = Path(0), after = Path(H);

            (Vector(path, t => t.Value) - here).Length.ShouldBeLessThan(1e-9);
            // The third and fourth derivatives, about 1e-5 and 1e-7 a mm here, are what a difference leaves out.
            (Vector(path, t => t.First) - ((after - before) / (2 * H))).Length.ShouldBeLessThan(2e-5);
            (Vector(path, t => t.Second) - ((after + before - (2 * here)) / (H * H))).Length.ShouldBeLessThan(1e-6);

            Vector3d Path(double step)
            {
                double[] moved = [.. at];
                moved[coordinate] += step;
                return motion.At(moved).Relative(frame, body).Apply(point);
            }
        }
    }

    [Theory]
    [InlineData(0, Tube)]
    [InlineData(0, Rod)]
    [InlineData(1, Tube)]
    [InlineData(1, Rod)]
    [InlineData(Tube, 1)]
    [InlineData(Rod, 1)]
    [InlineData(Rod, 0)]
    [InlineData(Tube, Rod)]
    [InlineData(1, Link)]
    [InlineData(Link, 1)]
    public void No_second_difference_of_a_random_axle_exceeds_the_bound(int frame, int body)
    {
        const double Step = 5;
        var draws = new Draws(143);
        var bounds = new Curvature[2];
        for (int i = 0; i < 2; i++)
        {
            LinkageMotion motion = Random(draws);
            Vector3d anchor = draws.Near(80, 450, 250, 300);
            motion.Curvatures(DyadicCell.Whole(2), frame, body, [anchor], bounds).ShouldBe(CurvatureBasis.Enclosed);
            for (int k = 0; k < 30; k++)
            {
                double[] at = [draws.In(-115, 115), draws.In(-115, 115)];
                int coordinate = draws.Whole(2);
                Vector3d bend = Bends(motion, at, coordinate, Step, frame, body, [anchor])[0];
                Curvature b = bounds[coordinate];
                bend.Length.ShouldBeLessThanOrEqualTo(b.Length + 1e-11);
                bend.X.ShouldBeInRange(b.LowX - 1e-11, b.HighX + 1e-11);
                bend.Y.ShouldBeInRange(b.LowY - 1e-11, b.HighY + 1e-11);
                bend.Z.ShouldBeInRange(b.LowZ - 1e-11, b.HighZ + 1e-11);
            }
        }
    }

    [Theory]
    [InlineData(0, Tube)]
    [InlineData(0, Rod)]
    [InlineData(0, Link)]
    [InlineData(1, Tube)]
    [InlineData(1, Rod)]
    [InlineData(Tube, 1)]
    [InlineData(Rod, 0)]
    [InlineData(Rod, Tube)]
    public void The_bound_is_less_than_eight_times_the_largest_found_in_every_block_of_the_reference_axle(int frame, int body)
    {
        var motion = new LinkageMotion(ThreeLinkAxle.Linkage(), ThreeLinkAxle.Motion().Box, [], Followers);
        Vector3d[] anchors = body == Link ? [LinkFrame, LinkAxle] : [Top + new Vector3d(30, 0, 0), Bottom + new Vector3d(30, 0, 0)];
        var bounds = new Curvature[2];
        double worst = 0;
        const int Quarter = DyadicPose.Denominator / 4;
        for (int left = 0; left < 4; left++)
            for (int right = 0; right < 4; right++)
            {
                var block = new DyadicCell(new(left * Quarter, right * Quarter, 0, 0), new(Quarter, Quarter, 0, 0));
                motion.Curvatures(block, frame, body, anchors, bounds).ShouldBe(CurvatureBasis.Enclosed);
                for (int k = 0; k < 2; k++)
                {
                    double largest = 0;
                    for (int i = 0; i < 4; i++)
                    {
                        double[] at = [-118 + (60 * left) + (i % 2 * 56), -118 + (60 * right) + (i / 2 * 56)];
                        foreach (Vector3d bend in Bends(motion, at, k, 2, frame, body, anchors)) largest = Math.Max(largest, bend.Length);
                    }

                    bounds[k].Length.ShouldBeGreaterThanOrEqualTo(largest);
                    worst = Math.Max(worst, bounds[k].Length / largest);
                }
            }

        output.WriteLine($"largest ratio {worst:F2}");
        worst.ShouldBeLessThan(8);
    }

    [Fact]
    public void The_bound_over_a_block_holds_at_both_its_ends_where_the_curvature_changes_most()
    {
        // A crank of 100 mm set by the height of its pin: from 40 to 80 mm the pin's second derivative grows from 0.013 to 0.046 a mm.
        (Linkage? linkage, _) = Linkage.Build(
            ["chassis", "crank"],
            [new Joint.Hinge("pivot", 0, 1, Vector3d.Zero, Vector3d.UnitY), new Joint.Travel("pin", 1, new(100, 0, 0), 0, 0)],
            1);
        var motion = new LinkageMotion(linkage!, new PoseBox([new("pin", false, -80, 80)]), [], [new LineFollower("rod", 1, new(100, 0, 0), 0, new(500, 0, 0))]);
        var bounds = new Curvature[1];
        const int Quarter = DyadicPose.Denominator / 4;
        for (int block = 0; block < 4; block++)
        {
            motion.Curvatures(new DyadicCell(new(block * Quarter, 0, 0, 0), new(Quarter, 0, 0, 0)), 0, 2, [new(100, 0, 0)], bounds).ShouldBe(CurvatureBasis.Enclosed);
            for (int i = 0; i <= 12; i++)
            {
                double height = -80 + (40 * block) + 0.5 + (3.25 * i);
                bounds[0].Length.ShouldBeGreaterThanOrEqualTo(Bends(motion, [height], 0, 0.4, 0, 2, [new(100, 0, 0)])[0].Length, $"height {height}");
            }
        }
    }

    [Fact]
    public void A_follower_between_two_points_of_the_chassis_stands_still()
    {
        var motion = new LinkageMotion(ThreeLinkAxle.Linkage(), ThreeLinkAxle.Motion().Box, [], [new LineFollower("brace", 0, Top, 0, LinkFrame)]);
        var bounds = new Curvature[2];

        RigidMotion pose = motion.At([100, -40])[2];
        (pose.Apply(Bottom) - Bottom).Length.ShouldBeLessThan(1e-12);
        motion.Curvatures(DyadicCell.Whole(2), 0, 2, [Bottom], bounds).ShouldBe(CurvatureBasis.Enclosed);
        bounds[0].Length.ShouldBeLessThan(1e-200);
    }

    [Fact]
    public void A_follower_whose_points_may_meet_has_no_bound_but_takes_none_from_the_axle()
    {
        var motion = new LinkageMotion(ThreeLinkAxle.Linkage(), ThreeLinkAxle.Motion().Box, [], [new LineFollower("short", 0, new(60, 520, 30), 1, new(60, 520, 20))]);
        var bounds = new Curvature[2];

        motion.Curvatures(DyadicCell.Whole(2), 0, 2, [Top], bounds).ShouldBe(CurvatureBasis.Unknown);
        motion.Curvatures(DyadicCell.Whole(2), 1, 2, [Top], bounds).ShouldBe(CurvatureBasis.Unknown);
        motion.Curvatures(DyadicCell.Whole(2), 2, 1, [Top], bounds).ShouldBe(CurvatureBasis.Unknown);
        motion.Curvatures(DyadicCell.Whole(2), 0, 1, [Top], bounds).ShouldBe(CurvatureBasis.Enclosed);
    }

    [Fact]
    public void A_follower_without_a_direction_leaves_the_pose_without_an_answer()
    {
        var follower = new LineFollower("post", 0, new(0, 0, 50), 1, new(0, 0, 0));
        RigidMotion Lifted(double mm) => new(Rotation.Identity, new(0, 0, mm));

        follower.Pose([RigidMotion.Identity, Lifted(49)]).ShouldNotBeNull();
        follower.Pose([RigidMotion.Identity, Lifted(50)]).ShouldBeNull();
        follower.Pose([RigidMotion.Identity, Lifted(100)]).ShouldBeNull();
        (Linkage? linkage, _) = Linkage.Build(
            ["chassis", "crank"],
            [new Joint.Hinge("pivot", 0, 1, Vector3d.Zero, Vector3d.UnitY), new Joint.Travel("pin", 1, new(100, 0, 0), 0, 0)],
            1);
        // The crank's pin at 60 mm of height is at (80, 0, 60): there the follower's two points meet.
        var motion = new LinkageMotion(linkage!, new PoseBox([new("pin", false, -80, 80)]), [], [new LineFollower("rod", 0, new(80, 0, 60), 1, new(100, 0, 0))]);

        motion.At([60]).Answer.ShouldBe(PoseAnswerKind.NotSolved);
        motion.At([59]).Answer.ShouldBe(PoseAnswerKind.Solved);
    }

    [Fact]
    public void A_pose_is_found_from_one_nearby_whether_its_followers_are_given_or_not()
    {
        var motion = new LinkageMotion(ThreeLinkAxle.Linkage(), ThreeLinkAxle.Motion().Box, [], Followers);
        double[] at = [70, -30];
        SolvedPose whole = motion.At(at);
        whole.Bodies.Length.ShouldBe(5);

        foreach (ReadOnlyMemory<RigidMotion> near in (ReadOnlyMemory<RigidMotion>[])[whole.Bodies, whole.Bodies[..2]])
        {
            SolvedPose found = motion.Near(near.Span, at);
            found.Bodies.Length.ShouldBe(5);
            for (int body = 0; body < 5; body++) (found[body].Apply(Bottom) - whole[body].Apply(Bottom)).Length.ShouldBeLessThan(1e-9);
        }
    }

    [Fact]
    public void A_follower_on_another_follower_or_without_length_is_refused()
    {
        LinkageMotion plain = ThreeLinkAxle.Motion();
        foreach (LineFollower wrong in (LineFollower[])[new LineFollower("f", 2, Top, 0, Bottom), new LineFollower("f", 0, Top, -1, Bottom), new LineFollower("f", 0, Top, 1, Top)])
            Should.Throw<ArgumentException>(() => new LinkageMotion(plain.Linkage, plain.Box, [], [wrong]));
    }

    private static LinkageMotion Random(Draws draws)
    {
        (string[] bodies, Joint[] joints, int coordinates) = draws.Kind(0);
        Vector3d top = draws.Near(80, 430, 470, 80), bottom = draws.Near(60, 520, 20, 80), frame = draws.Near(-920, 430, -15), axle = draws.Near(-20, 505, -88);
        return new LinkageMotion(
            Linkage.Build(bodies, joints, coordinates).Linkage!,
            new PoseBox([new("left", false, -122, 122), new("right", false, -122, 122)]),
            [],
            [new LineFollower("tube", 0, top, 1, bottom), new LineFollower("rod", 1, bottom, 0, top), new LineFollower("link", 0, frame, 1, axle)]);
    }

    private static Vector3d[] Bends(LinkageMotion motion, double[] at, int coordinate, double step, int frame, int body, Vector3d[] anchors)
    {
        RigidMotion after = At(step), before = At(-step), here = At(0);
        return [.. anchors.Select(a => (after.Apply(a) + before.Apply(a) - (2 * here.Apply(a))) / (step * step))];

        RigidMotion At(double by)
        {
            double[] moved = [.. at];
            moved[coordinate] += by;
            return motion.At(moved).Relative(frame, body);
        }
    }

    private static Vector3d Vector(Vector3<Taylor2<Real>> path, Func<Taylor2<Real>, Real> part) => new(part(path.X).Value, part(path.Y).Value, part(path.Z).Value);

    private static Vector3d Unit(Vector3d v) => v / v.Length;
}
