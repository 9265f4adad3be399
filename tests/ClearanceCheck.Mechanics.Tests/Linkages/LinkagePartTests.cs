using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Numbers;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

/// <summary>Parts of a linkage that move by themselves, and linkages solved and proved in two stages: both against the whole solved at once.</summary>
public sealed class LinkagePartTests
{
    private const int Axle = 1;
    private const int KnuckleLeft = 2;
    private const int PitmanArm = 4;

    [Fact]
    public void An_axle_does_not_hang_on_its_steering()
    {
        LinkageMotion whole = SteeringTests.CrossOver();

        MovingPart part = ((IMovingSystem)whole).PartFor([0, Axle]).ShouldNotBeNull();

        part.Coordinates.ShouldBe([0, 1]);
        part.Bodies.ShouldBe([0, Axle]);
    }

    [Fact]
    public void A_pitman_arm_hangs_on_the_steering_alone() =>
        ((IMovingSystem)SteeringTests.CrossOver()).PartFor([PitmanArm]).ShouldNotBeNull().Coordinates.ShouldBe([2]);

    [Fact]
    public void A_knuckle_that_a_drag_link_steers_hangs_on_everything() => ((IMovingSystem)SteeringTests.CrossOver()).PartFor([KnuckleLeft]).ShouldBeNull();

    [Fact]
    public void A_part_is_the_same_one_whoever_asks()
    {
        LinkageMotion whole = SteeringTests.CrossOver();

        whole.PartFor([Axle])!.System.ShouldBeSameAs(whole.PartFor([Axle, 0])!.System);
    }

    [Theory]
    [InlineData("cross-over steering", new[] { Axle })]
    [InlineData("steered axle on soft arms", new[] { Axle })]
    [InlineData("steered axle on soft arms", new[] { 2 })]
    public void A_part_stands_where_the_whole_stands(string name, int[] bodies)
    {
        LinkageMotion whole = Named(name);
        MovingPart part = ((IMovingSystem)whole).PartFor(bodies).ShouldNotBeNull();
        foreach (double[] pose in (double[][])[[-70, 40, 0.3], [60, 80, -0.4], [0, 0, 0.1]])
        {
            RigidMotion[] all = Whole(whole, pose);
            SolvedPose own = part.System.At([.. part.Coordinates.Select(c => pose[c])]);

            foreach (int body in bodies) ShouldBeNear(own[part.Bodies.IndexOf(body)], all[body], 1e-7);
        }
    }

    [Fact]
    public void A_soft_axle_and_what_it_drives_are_solved_in_two_stages_to_the_same_place()
    {
        LinkageMotion motion = SteeredSoftAxle();
        motion.Stages.ShouldNotBeNull().Rest.Unknowns.ShouldBe(3);
        motion.Linkage.Unknowns.ShouldBeGreaterThan(20);
        foreach (double[] pose in (double[][])[[-60, 45, 0.3], [70, 70, -0.45], [0, -75, 0]])
        {
            SolvedPose staged = motion.At((ReadOnlySpan<double>)pose);
            RigidMotion[] all = Whole(motion, pose);

            staged.IsSolved.ShouldBeTrue();
            for (int body = 1; body < all.Length; body++) ShouldBeNear(staged[body], all[body], 1e-7);
        }
    }

    [Fact]
    public void What_is_proved_in_two_stages_holds_the_derivatives_of_the_whole()
    {
        LinkageMotion motion = SteeredSoftAxle();
        const int Eighth = DyadicPose.Denominator / 8;
        var random = new Random(7);
        int inside = 0;
        foreach (DyadicPose low in (DyadicPose[])[new(2 * Eighth, 2 * Eighth, 0, 0), new(3 * Eighth, 5 * Eighth, 6 * Eighth, 0), new(5 * Eighth, 4 * Eighth, 2 * Eighth, 0)])
        {
            List<ProvedPart> parts = motion.ProvedOver(new DyadicCell(low, new(Eighth, Eighth, Eighth, 0))).ShouldNotBeNull();
            for (int draw = 0; draw < 12; draw++)
            {
                double[] pose = [.. Enumerable.Range(0, 3).Select(k => motion.Box.ValueAt(k, low[k] + random.Next(Eighth)))];
                ProvedPart part = parts.First(p => p.Settings.Zip(pose).All(x => x.First.Contains(x.Second)));
                RigidMotion[] all = Whole(motion, pose);
                for (int k = 0; k < 3; k++)
                {
                    MotionJet<Real>[] seen = LinkageDerivatives.Along(motion.Linkage, all, pose, k);
                    for (int body = 1; body < all.Length; body++)
                    {
                        Vector3d point = new(40, 620, -30);
                        Vector3<Taylor2<Real>> at = seen[body].Apply(point);
                        Vector3<Taylor2<Interval>> bound = part.Jets[k][body].Apply(point);
                        foreach ((Taylor2<Real> is_, Taylor2<Interval> within) in new[] { (at.X, bound.X), (at.Y, bound.Y), (at.Z, bound.Z) })
                        {
                            Holds(within.Value, is_.Value.Value).ShouldBeTrue();
                            Holds(within.First, is_.First.Value).ShouldBeTrue();
                            Holds(within.Second, is_.Second.Value).ShouldBeTrue();
                            inside++;
                        }
                    }
                }
            }
        }

        inside.ShouldBeGreaterThan(1000);

        static bool Holds(Interval within, double value) => (within + Interval.Symmetric(1e-7)).Contains(value);
    }

    [Fact]
    public void A_pose_found_by_chords_is_the_one_that_is_found_from_afar()
    {
        LinkageMotion motion = SoftAxleTests.ArmsAsBodies();
        foreach (double[] pose in (double[][])[[-61.3, 44.2], [17.7, 83.1], [5.5, -2.25]])
        {
            RigidMotion[] afar = Whole(motion, pose);

            SolvedPose near = motion.At((ReadOnlySpan<double>)pose);

            for (int body = 1; body < afar.Length; body++) ShouldBeNear(near[body], afar[body], 1e-9);
        }
    }

    [Fact]
    public void A_linkage_measured_again_is_solved_as_if_it_were_built_anew()
    {
        Joint[] joints = SteeredJoints(0), moved = SteeredJoints(1.5);
        string[] bodies = SteeredBodies;
        Linkage first = Linkage.Build(bodies, joints, 3).Linkage!, again = first.Again(moved).ShouldNotBeNull(), anew = Linkage.Build(bodies, moved, 3).Linkage!;

        double[] pose = [-40, 60, 0.25];
        RigidMotion[] one = new LinkageSolver(again).Solve(again.Start, again.StartSettings, pose).ShouldNotBeNull();
        RigidMotion[] other = new LinkageSolver(anew).Solve(anew.Start, anew.StartSettings, pose).ShouldNotBeNull();

        for (int body = 1; body < one.Length; body++) ShouldBeNear(one[body], other[body], 1e-9);
        first.Again(joints[1..]).ShouldBeNull();
    }

    private static RigidMotion[] Whole(LinkageMotion motion, double[] pose) =>
        new LinkageSolver(motion.Linkage).Solve(motion.Linkage.Start, motion.Linkage.StartSettings, pose).ShouldNotBeNull();

    private static void ShouldBeNear(RigidMotion one, RigidMotion other, double withinMm)
    {
        foreach (Vector3d point in (Vector3d[])[new(0, 0, 0), new(500, -300, 200)]) (one.Apply(point) - other.Apply(point)).Length.ShouldBeLessThan(withinMm);
    }

    private static LinkageMotion Named(string name) => name == "cross-over steering" ? SteeringTests.CrossOver() : SteeredSoftAxle();

    private static string[] SteeredBodies => ["chassis", "axle", "arm L", "arm R", "knuckle L", "knuckle R", "pitman arm"];

    // The axle on soft arms of the reference table, with invented knuckles, rods and pitman arm.
    private static Joint[] SteeredJoints(double byMm) =>
    [
        .. SoftAxleTests.ArmsAsBodies().Linkage.Joints.Where(j => j is not Joint.SpinHold),
        new Joint.Hinge("kingpin L", 1, 4, new(6, 690 + byMm, -98), new(-18, -38, 200)), new Joint.Hinge("kingpin R", 1, 5, new(6, -690, -98), new(-18, 38, 200)),
        new Joint.Hinge("pitman", 0, 6, new(310, 395, 205), new(8, 5, 100)),
        new Joint.Rod("tie rod", 4, new(-172, 618, -22), 5, new(-172, -618, -22)),
        new Joint.Rod("drag link", 6, new(165, 392, 118 + byMm), 5, new(150, -640, 62)),
        new Joint.Turn("steering", 6, 2, 0),
    ];

    private static LinkageMotion SteeredSoftAxle()
    {
        (Linkage? linkage, LinkageFault? fault) = Linkage.Build(SteeredBodies, SteeredJoints(0), 3);
        fault.ShouldBeNull();
        return new LinkageMotion(linkage!, new PoseBox([new("left", false, -80, 80), new("right", false, -80, 80), new("steer", true, -0.5, 0.5)]), []);
    }
}
