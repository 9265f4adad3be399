using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Numbers;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

/// <summary>Half leaf springs in rigid pieces: what they hold, where they stand, how their paths bend.</summary>
public sealed class LeafPieceTests(ITestOutputHelper output)
{
    private const int Axle = 1, FirstPiece = 4;
    private const double Width = 64, Below = 38, Above = 4;
    private static readonly int[] Looking = [0, Axle, 2, FirstPiece + 3, FirstPiece + 14];

    [Fact]
    public void The_pieces_hold_every_section_of_the_bent_and_twisted_leaf()
    {
        var draws = new Draws(171);
        double bent = 0, twisted = 0, least = double.PositiveInfinity;
        int poses = 0;
        for (int i = 0; i < 40; i++)
        {
            LinkageMotion motion = Random(draws, 160);
            for (int k = 0; k < 15; k++)
            {
                SolvedPose pose = motion.At([draws.In(-160, 160), draws.In(-160, 160)]);
                if (!pose.IsSolved) continue;
                poses++;
                for (int f = 0; f < motion.Followers.Length; f++)
                {
                    var piece = (LeafPiece)motion.Followers[f];
                    LeafPieceBox box = piece.Box(Width, Below, Above);
                    (Vector3d middle, Vector3d along, Vector3d across, Vector3d up) = piece.Measured;
                    double share = (piece.Index + (k % 3 == 0 ? k % 2 : draws.In(0, 1))) / LeafPiece.Count;
                    BentSection section = BentSection.Of(piece.Leaf, pose.Bodies.Span, share);
                    (bent, twisted) = (Math.Max(bent, Math.Abs(section.Turn)), Math.Max(twisted, Math.Abs(section.Twist)));
                    for (int corner = 0; corner < 4; corner++)
                    {
                        Vector3d at = section.At((corner % 2 == 0 ? -0.5 : 0.5) * Width, corner / 2 == 0 ? -Below : Above);
                        Vector3d arm = pose[FirstPiece + f].Inverse.Apply(at) - middle;
                        Math.Abs(Vector3d.Dot(arm, along)).ShouldBeLessThanOrEqualTo(box.HalfAlongMm);
                        Math.Abs(Vector3d.Dot(arm, across)).ShouldBeLessThanOrEqualTo(box.HalfAcrossMm);
                        Vector3d.Dot(arm, up).ShouldBeInRange(-box.DownMm, box.UpMm);
                        least = Math.Min(least, Math.Min(box.UpMm - Vector3d.Dot(arm, up), Vector3d.Dot(arm, up) + box.DownMm));
                    }
                }
            }
        }

        output.WriteLine($"{poses} poses, turned by up to {bent:F3} rad, twisted by up to {twisted:F3}, {least:F3} mm to spare");
        poses.ShouldBeGreaterThan(400);
        bent.ShouldBeGreaterThan(0.6);
        twisted.ShouldBeGreaterThan(0.15);
        least.ShouldBeLessThan(1.5);
    }

    [Fact]
    public void What_is_added_to_a_leaf_stays_below_three_millimetres_up_and_down()
    {
        LeafPieceBox box = ((LeafPiece)Random(new Draws(172), 100).Followers[0]).Box(Width, Below, Above);

        (box.DownMm - Below).ShouldBeInRange(0.5, 3);
        (box.UpMm - Above).ShouldBe(box.DownMm - Below, 1e-9);
        (box.HalfAcrossMm - (Width / 2)).ShouldBeInRange(0.5, 3);
    }

    [Fact]
    public void A_piece_stands_where_it_was_measured_before_anything_moves()
    {
        LinkageMotion motion = Random(new Draws(173), 100);
        RigidMotion[] still = [.. Enumerable.Repeat(RigidMotion.Identity, FirstPiece)];

        foreach (Follower piece in motion.Followers) (piece.Pose(still)!.Value.Apply(new Vector3d(300, 500, -20)) - new Vector3d(300, 500, -20)).Length.ShouldBeLessThan(1e-9);
    }

    [Fact]
    public void The_read_derivatives_are_those_of_the_poses_whichever_body_looks()
    {
        const double H = 1;
        var draws = new Draws(174);
        for (int i = 0; i < 60; i++)
        {
            LinkageMotion motion = Random(draws, 120);
            double[] at = [draws.In(-80, 80), draws.In(-80, 80)];
            int coordinate = draws.Whole(2), frame = Looking[i % Looking.Length], piece = FirstPiece + draws.Whole(24);
            (int looks, int body) = i % 2 == 0 ? (frame, piece) : (piece, frame);
            Vector3d point = draws.Near(0, 500, -50, 300);
            MotionJet<Real>[] own = LinkageDerivatives.Along(motion.Linkage, motion.LinkageBodies(motion.At(at)), at, coordinate);
            MotionJet<Real>[] jets = [.. own, .. motion.Followers.Select(f => f.Jet<Real>(own))];
            Vector3<Taylor2<Real>> path = RelativePath.Of<Real>(motion.Followers, jets, looks, body, point);
            Vector3d before = Path(-H), here = Path(0), after = Path(H);

            (Vector(path, t => t.Value) - here).Length.ShouldBeLessThan(1e-8);
            (Vector(path, t => t.First) - ((after - before) / (2 * H))).Length.ShouldBeLessThan(2e-4);
            (Vector(path, t => t.Second) - ((after + before - (2 * here)) / (H * H))).Length.ShouldBeLessThan(1e-5);

            Vector3d Path(double step)
            {
                double[] moved = [.. at];
                moved[coordinate] += step;
                return motion.At(moved).Relative(looks, body).Apply(point);
            }
        }
    }

    [Fact]
    public void No_second_difference_exceeds_the_proved_bound_and_pieces_are_proved_wherever_their_axle_is()
    {
        const double Step = 5;
        var draws = new Draws(175);
        var bounds = new Curvature[2];
        LinkageMotion motion = Random(draws, 55);
        double loosest = 0;
        motion.Curvatures(DyadicCell.Whole(2), 0, Axle, [Vector3d.Zero], bounds).ShouldBe(CurvatureBasis.Enclosed);
        for (int i = 0; i < 40; i++)
        {
            int piece = FirstPiece + draws.Whole(4 * LeafPiece.Count), other = Looking[i % Looking.Length];
            (int frame, int body) = i % 2 == 0 ? (other, piece) : (piece, other);
            if (frame == body) continue;
            Vector3d anchor = draws.Near(0, 500, -60, 500);
            motion.Curvatures(DyadicCell.Whole(2), frame, body, [anchor], bounds).ShouldBe(CurvatureBasis.Enclosed);
            for (int k = 0; k < 12; k++)
            {
                double[] at = [draws.In(-49, 49), draws.In(-49, 49)];
                int coordinate = draws.Whole(2);
                Vector3d bend = Bend(motion, at, coordinate, Step, frame, body, anchor);
                Curvature b = bounds[coordinate];
                bend.X.ShouldBeInRange(b.LowX - 1e-11, b.HighX + 1e-11);
                bend.Y.ShouldBeInRange(b.LowY - 1e-11, b.HighY + 1e-11);
                bend.Z.ShouldBeInRange(b.LowZ - 1e-11, b.HighZ + 1e-11);
                bend.Length.ShouldBeLessThanOrEqualTo(b.Length + 1e-11);
            }

            if (frame != 0 || body < FirstPiece) continue;
            double own = Math.Max(bounds[0].Length, bounds[1].Length);
            motion.Curvatures(DyadicCell.Whole(2), 0, Axle, [anchor], bounds);
            loosest = Math.Max(loosest, own / Math.Max(bounds[0].Length, bounds[1].Length));
        }

        output.WriteLine($"a piece's bound is at most {loosest:F1} times the axle's own");
        loosest.ShouldBeInRange(0.1, 30);
    }

    [Fact]
    public void A_leaf_that_is_twisted_too_far_leaves_the_pose_without_an_answer_and_the_block_without_a_bound()
    {
        // An axle that only rolls, about the line on which clamp and eye lie: at 50 mm of its pin by 30 degrees.
        (Linkage? linkage, _) = Linkage.Build(
            ["chassis", "axle"], [new Joint.Hinge("roll", 0, 1, Vector3d.Zero, Vector3d.UnitX), new Joint.Travel("pin", 1, new(0, 100, 0), 0, 0)], 1);
        var leaf = new Joint.Leaf("leaf", 1, new(60, 0, 0), Vector3d.UnitX, Vector3d.UnitZ, 0, new(606, 0, 10), 1e8, 100);
        var motion = new LinkageMotion(linkage!, new PoseBox([new("pin", false, -60, 60)]), [], [new LeafPiece("piece", leaf, 5)]);
        var bounds = new Curvature[1];
        const int Sixteenth = DyadicPose.Denominator / 16;

        motion.At([30]).IsSolved.ShouldBeTrue();
        motion.At([50]).Answer.ShouldBe(PoseAnswerKind.NotSolved);
        motion.Curvatures(new DyadicCell(new(8 * Sixteenth, 0, 0, 0), new(Sixteenth, 0, 0, 0)), 0, 2, [leaf.Eye], bounds).ShouldBe(CurvatureBasis.Enclosed);
        motion.Curvatures(new DyadicCell(new(15 * Sixteenth, 0, 0, 0), new(Sixteenth, 0, 0, 0)), 0, 2, [leaf.Eye], bounds).ShouldBe(CurvatureBasis.Unknown);
    }

    [Fact]
    public void A_piece_that_is_none_of_the_leafs_or_rides_on_nothing_is_refused()
    {
        LinkageMotion motion = Random(new Draws(177), 100);
        Joint.Leaf leaf = motion.Linkage.Joints.OfType<Joint.Leaf>().First();
        LeafPiece[] wrong =
        [
            new("p", leaf, LeafPiece.Count), new("p", leaf, -1), new("p", leaf with { SeatBody = 9 }, 0), new("p", leaf with { EyeBody = -1 }, 0),
            new("p", leaf with { Eye = leaf.Clamp + (leaf.Along * 300) + new Vector3d(0, 0, 300) }, 0),
        ];

        foreach (LeafPiece piece in wrong) Should.Throw<ArgumentException>(() => new LinkageMotion(motion.Linkage, motion.Box, [], [piece]));
    }

    private static LinkageMotion Random(Draws draws, double range)
    {
        (string[] bodies, Joint[] joints, int coordinates) = draws.Kind(10);
        Linkage linkage = Linkage.Build(bodies, joints, coordinates).Linkage!;
        ImmutableArray<Follower> pieces = [.. linkage.Joints.OfType<Joint.Leaf>().SelectMany(l => Enumerable.Range(0, LeafPiece.Count).Select(i => new LeafPiece($"{l.Name} {i}", l, i)))];
        return new LinkageMotion(linkage, new PoseBox([new("left", false, -range, range), new("right", false, -range, range)]), [], pieces);
    }

    private static Vector3d Bend(LinkageMotion motion, double[] at, int coordinate, double step, int frame, int body, Vector3d anchor)
    {
        return (At(step) + At(-step) - (2 * At(0))) / (step * step);

        Vector3d At(double by)
        {
            double[] moved = [.. at];
            moved[coordinate] += by;
            return motion.At(moved).Relative(frame, body).Apply(anchor);
        }
    }

    private static Vector3d Vector(Vector3<Taylor2<Real>> path, Func<Taylor2<Real>, Real> part) => new(part(path.X).Value, part(path.Y).Value, part(path.Z).Value);
}
