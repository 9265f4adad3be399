using System.Globalization;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Numbers;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

/// <summary>The proof over a block against the solver inside it: an independent algorithm that must never leave the enclosure.</summary>
public sealed class EnclosureTests(ITestOutputHelper output)
{
    [Fact]
    public void Every_pose_and_second_derivative_in_a_random_block_of_a_random_axle_lies_inside()
    {
        var draws = new Draws(91);
        int proved = 0, folded = 0;
        const int Blocks = 84;
        for (int i = 0; i < Blocks; i++)
        {
            LinkageMotion motion = draws.Motion(i % Draws.Kinds, 120);
            int d = motion.Box.Dimensions;
            int kind = i % Draws.Kinds;
            // Several bodies on hinges need narrow blocks: the interval matrix of many turned directions is wide.
            double widest = kind is 3 or 6 ? 3 : 20;
            double[] centre = [.. Enumerable.Range(0, d).Select(_ => draws.In(-60, 60))], halves = [.. centre.Select(_ => draws.In(widest / 10, widest))];
            SolvedPose middle = motion.At(centre);
            if (!middle.IsSolved)
            {
                // Some random wishbones fold within the range; nothing is claimed there.
                kind.ShouldBeOneOf(3, 6);
                folded++;
                continue;
            }

            var proof = Enclosure.TryProve(motion.Linkage, middle.Bodies.ToArray(), centre, halves);
            if (proof is null)
            {
                output.WriteLine($"not proved: kind {kind}, half widths {string.Join(" x ", halves.Select(h => h.ToString("F1", CultureInfo.InvariantCulture)))} mm");
                continue;
            }

            proved++;
            for (int k = 0; k < 8; k++)
            {
                // Every other pose at a corner, where an enclosure is tightest.
                double[] at = [.. centre.Zip(halves, (c, h) => c + (h * (k % 2 == 0 ? draws.In(-1, 1) : (2 * draws.Whole(2)) - 1)))];
                SolvedPose pose = motion.At(at);
                pose.IsSolved.ShouldBeTrue();

                proof.Contains(pose.Bodies.Span).ShouldBeTrue($"linkage {i}");
                for (int coordinate = 0; coordinate < d; coordinate++)
                    Inside(LinkageDerivatives.Along(motion.Linkage, pose.Bodies.ToArray(), at, coordinate), proof.Jets[coordinate]);
            }
        }

        output.WriteLine($"{proved} of {Blocks} blocks up to 40 mm wide proved");
        folded.ShouldBeLessThanOrEqualTo(3);
        proved.ShouldBeGreaterThan(Blocks * 9 / 10);
    }

    [Fact]
    public void The_bound_on_the_second_derivative_is_less_than_six_times_the_largest_found_in_every_block_of_the_reference_axle()
    {
        LinkageMotion motion = ThreeLinkAxle.Motion();
        var bounds = new Curvature[2];
        double worst = 0;
        for (int left = -90; left <= 90; left += 60)
            for (int right = -90; right <= 90; right += 60)
            {
                const int Quarter = DyadicPose.Denominator / 4;
                var block = new DyadicCell(new((left + 90) / 60 * Quarter, (right + 90) / 60 * Quarter, 0, 0), new(Quarter, Quarter, 0, 0));
                motion.Curvatures(block, 0, 1, [ThreeLinkAxle.HubLeft, ThreeLinkAxle.HubRight], bounds).ShouldBe(CurvatureBasis.Enclosed);
                for (int k = 0; k < 2; k++)
                {
                    double largest = Largest(motion, left, right, k);
                    bounds[k].Length.ShouldBeGreaterThanOrEqualTo(largest);
                    output.WriteLine($"block ({left}, {right}), coordinate {k}: bound {bounds[k].Length:E3}, largest found {largest:E3}, ratio {bounds[k].Length / largest:F2}");
                    worst = Math.Max(worst, bounds[k].Length / largest);
                }
            }

        output.WriteLine($"largest ratio {worst:F2}");
        worst.ShouldBeLessThan(6);
    }

    [Theory]
    [InlineData(99, 5)]
    [InlineData(99.9, 0.2)]
    [InlineData(100, 1e-6)]
    [InlineData(100, 0)]
    public void A_block_that_holds_the_top_of_a_cranks_circle_is_not_proved(double height, double half)
    {
        // A crank of 100 mm set by the height of its pin: at 100 mm the height no longer decides the angle.
        (Linkage? linkage, _) = Linkage.Build(
            ["chassis", "crank"],
            [new Joint.Hinge("pivot", 0, 1, Vector3d.Zero, Vector3d.UnitY), new Joint.Travel("pin", 1, new(100, 0, 0), 0, 0)],
            1);
        double sine = height / 100;
        RigidMotion turned = new(Rotation.About(-Vector3d.UnitY, Math.Asin(sine)), Vector3d.Zero);

        Enclosure.TryProve(linkage!, [RigidMotion.Identity, turned], [height], [half]).ShouldBeNull();
        Enclosure.TryProve(linkage!, [RigidMotion.Identity, RigidMotion.Identity], [0], [30]).ShouldNotBeNull();
    }

    [Fact]
    public void The_ends_of_a_wide_block_of_a_strongly_curved_motion_lie_inside()
    {
        (Linkage? linkage, _) = Linkage.Build(
            ["chassis", "crank"],
            [new Joint.Hinge("pivot", 0, 1, Vector3d.Zero, Vector3d.UnitY), new Joint.Travel("pin", 1, new(100, 0, 0), 0, 0)],
            1);
        RigidMotion[] Turned(double height) => [RigidMotion.Identity, new(Rotation.About(-Vector3d.UnitY, Math.Asin(height / 100)), Vector3d.Zero)];
        int proved = 0;
        for (double centre = -80; centre <= 80; centre += 5)
            for (double half = 2; half <= 40 && Math.Abs(centre) + half < 99; half += 2)
            {
                if (Enclosure.TryProve(linkage!, Turned(centre), [centre], [half]) is not { } proof) continue;
                proved++;
                proof.Contains(Turned(centre - half)).ShouldBeTrue();
                proof.Contains(Turned(centre + half)).ShouldBeTrue();
            }

        proved.ShouldBeGreaterThan(150);
    }

    [Fact]
    public void A_pose_of_the_other_branch_is_not_inside()
    {
        (Linkage? linkage, _) = Linkage.Build(
            ["chassis", "crank"],
            [new Joint.Hinge("pivot", 0, 1, Vector3d.Zero, Vector3d.UnitY), new Joint.Travel("pin", 1, new(100, 0, 0), 0, 0)],
            1);
        Enclosure proof = Enclosure.TryProve(linkage!, [RigidMotion.Identity, RigidMotion.Identity], [0], [30]).ShouldNotBeNull();
        RigidMotion Turned(double radians) => new(Rotation.About(-Vector3d.UnitY, radians), Vector3d.Zero);

        proof.Contains([RigidMotion.Identity, Turned(Math.Asin(0.2))]).ShouldBeTrue();
        proof.Contains([RigidMotion.Identity, Turned(Math.PI - Math.Asin(0.2))]).ShouldBeFalse();
    }

    [Fact]
    public void Neighbouring_blocks_both_hold_the_poses_of_the_face_they_share()
    {
        var draws = new Draws(92);
        int faces = 0;
        for (int i = 0; i < 20; i++)
        {
            LinkageMotion motion = draws.Motion(i % 2, 120);
            double left = draws.In(-60, 60), right = draws.In(-60, 60);
            var one = Enclosure.TryProve(motion.Linkage, motion.At([left - 20, right]).Bodies.ToArray(), [left - 20, right], [20, 20]);
            var other = Enclosure.TryProve(motion.Linkage, motion.At([left + 20, right]).Bodies.ToArray(), [left + 20, right], [20, 20]);
            if (one is null || other is null) continue;
            faces++;
            for (int k = 0; k <= 10; k++)
            {
                SolvedPose shared = motion.At([left, right - 20 + (4 * k)]);

                one.Contains(shared.Bodies.Span).ShouldBeTrue();
                other.Contains(shared.Bodies.Span).ShouldBeTrue();
            }
        }

        faces.ShouldBeGreaterThan(15);
    }

    private static double Largest(LinkageMotion motion, double left, double right, int coordinate)
    {
        double largest = 0;
        for (int i = -6; i <= 6; i++)
            for (int j = -6; j <= 6; j++)
            {
                double[] at = [left + (5 * i), right + (5 * j)];
                MotionJet<Real> axle = LinkageDerivatives.Along(motion.Linkage, motion.At(at).Bodies.ToArray(), at, coordinate)[1];
                foreach (Vector3d hub in (ReadOnlySpan<Vector3d>)[ThreeLinkAxle.HubLeft, ThreeLinkAxle.HubRight])
                {
                    Vector3<Taylor2<Real>> path = axle.Apply(hub);
                    largest = Math.Max(largest, new Vector3d(path.X.Second.Value, path.Y.Second.Value, path.Z.Second.Value).Length);
                }
            }

        return largest;
    }

    private static void Inside(MotionJet<Real>[] at, MotionJet<Interval>[] over)
    {
        for (int body = 0; body < at.Length; body++)
        {
            Inside(at[body].Place, over[body].Place);
            Inside(at[body].ColumnX, over[body].ColumnX);
            Inside(at[body].ColumnY, over[body].ColumnY);
            Inside(at[body].ColumnZ, over[body].ColumnZ);
        }
    }

    private static void Inside(Vector3<Taylor2<Real>> at, Vector3<Taylor2<Interval>> over)
    {
        Inside(at.X, over.X);
        Inside(at.Y, over.Y);
        Inside(at.Z, over.Z);
    }

    // The solver's own rounding: 1e-9 mm for places, less for their derivatives.
    private static void Inside(Taylor2<Real> at, Taylor2<Interval> over)
    {
        at.Value.Value.ShouldBeInRange(over.Value.Low - 1e-9, over.Value.High + 1e-9);
        at.First.Value.ShouldBeInRange(over.First.Low - 1e-11, over.First.High + 1e-11);
        at.Second.Value.ShouldBeInRange(over.Second.Low - 1e-13, over.Second.High + 1e-13);
    }
}
