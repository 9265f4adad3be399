using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

/// <summary>A pose's answer is a function of the pose alone: not of who asked before, nor of the thread.</summary>
public sealed class PoseOrderTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(5)]
    public void Shuffled_and_parallel_asking_give_the_same_bits(int kind)
    {
        var draws = new Draws(131 + kind);
        (string[] bodies, Joint[] joints, int coordinates) = draws.Kind(kind);
        LinkageMotion Fresh() => Draws.Motion(bodies, joints, coordinates, 110);
        DyadicPose[] poses = [.. Enumerable.Range(0, 120).Select(_ => Random(draws, coordinates)).Distinct()];
        double[][] free = [.. Enumerable.Range(0, 40).Select(_ => Enumerable.Range(0, coordinates).Select(_ => draws.In(-110, 110)).ToArray())];
        LinkageMotion first = Fresh();
        RigidMotion[][] expected = [.. poses.Select(p => first.At(p).Bodies.ToArray()), .. free.Select(p => first.At(p.AsSpan()).Bodies.ToArray())];

        for (int round = 0; round < 3; round++)
        {
            LinkageMotion motion = Fresh();
            int[] order = [.. Enumerable.Range(0, expected.Length).OrderBy(_ => draws.Whole(1 << 30))];
            var found = new RigidMotion[expected.Length][];
            Parallel.ForEach(order, new ParallelOptions { MaxDegreeOfParallelism = round == 0 ? 1 : 4 }, i =>
                found[i] = (i < poses.Length ? motion.At(poses[i]) : motion.At(free[i - poses.Length].AsSpan())).Bodies.ToArray());

            for (int i = 0; i < expected.Length; i++) found[i].ShouldBe(expected[i]);
            motion.Solves.ShouldBe(first.Solves);
        }
    }

    [Fact]
    public void Curvature_bounds_do_not_depend_on_the_order_of_asking_either()
    {
        var draws = new Draws(141);
        Joint[] joints = draws.ThreeLinkAxle();
        DyadicCell[] cells = [.. Enumerable.Range(0, 30).Select(_ => new DyadicCell(Random(draws, 2, 4), new(1 << 20, 1 << 20, 0, 0)))];
        Curvature[][] forward = Bounds(cells), backward = Bounds([.. cells.Reverse()]);

        for (int i = 0; i < cells.Length; i++) backward[cells.Length - 1 - i].ShouldBe(forward[i]);

        Curvature[][] Bounds(DyadicCell[] order)
        {
            LinkageMotion motion = Draws.Motion(["chassis", "axle"], joints, 2, 120);
            return [.. order.Select(cell =>
            {
                var bounds = new Curvature[2];
                motion.Curvatures(cell, 0, 1, [ThreeLinkAxle.HubLeft], bounds);
                return bounds;
            })];
        }
    }

    [Fact]
    public void Every_dyadic_pose_leads_back_to_the_centre_of_the_box_in_a_few_steps()
    {
        var draws = new Draws(151);
        for (int i = 0; i < 2000; i++)
        {
            int dimensions = 1 + draws.Whole(4), steps = 0;
            DyadicPose pose = Random(draws, dimensions, 24);
            while (pose.TryParent(dimensions, out DyadicPose parent))
            {
                parent.ShouldNotBe(pose);
                pose = parent;
                (++steps).ShouldBeLessThan(200);
            }

            pose.ShouldBe(DyadicPose.Center(dimensions));
        }
    }

    private static DyadicPose Random(Draws draws, int dimensions, int bits = 7)
    {
        DyadicPose pose = default;
        for (int d = 0; d < dimensions; d++) pose = pose.With(d, draws.Whole((1 << bits) + (bits == 4 ? 0 : 1)) << (DyadicPose.Bits - bits));
        return pose;
    }
}
