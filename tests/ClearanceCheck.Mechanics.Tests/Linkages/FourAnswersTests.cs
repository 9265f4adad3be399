using System.Collections.Concurrent;
using System.Globalization;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

/// <summary>
/// Solved, unreachable (proved) or not solved: over many random linkages. Set CLEARANCECHECK_LONG=1 for 10,000 of them.
/// </summary>
public sealed class FourAnswersTests(ITestOutputHelper output)
{
    // Steering as far each way as 100 mm stands for: half a radian.
    private const double RadPerMm = 0.005;
    private static readonly bool IsLong = Environment.GetEnvironmentVariable("CLEARANCECHECK_LONG") == "1";

    [Fact]
    public void Fewer_than_one_pose_in_a_thousand_within_reach_is_not_solved_and_no_answer_is_ever_no_number()
    {
        int linkages = IsLong ? 10_000 : 1_200;
        var answers = new ConcurrentBag<(int Kind, Outcome Outcome)>();
        Parallel.For(0, linkages, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i =>
        {
            var draws = new Draws(1000 + i);
            (string[] bodies, Joint[] joints, int coordinates) = draws.Kind(i % Draws.AllKinds);
            LinkageMotion motion = Draws.Motion(bodies, joints, coordinates, 100);
            for (int k = 0; k < 2; k++)
            {
                double[] at = [.. Enumerable.Range(0, coordinates).Select(_ => draws.In(-100, 100))];
                if (i % Draws.AllKinds == Draws.Steered) at[2] *= RadPerMm;
                answers.Add((i % Draws.AllKinds, Judge(motion, at)));
            }
        });

        foreach (IGrouping<int, (int Kind, Outcome Outcome)> kind in answers.GroupBy(a => a.Kind).OrderBy(g => g.Key))
            output.WriteLine($"kind {kind.Key}: " + string.Join(", ", kind.GroupBy(a => a.Outcome).OrderBy(g => g.Key).Select(g => $"{g.Key} {g.Count()}")));
        int solved = Count(Outcome.Solved), missed = Count(Outcome.Missed);
        double percent = 100.0 * missed / (solved + missed);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{linkages} linkages: solved {solved}, unreachable {Count(Outcome.Unreachable)}, beyond a fold {Count(Outcome.BeyondFold)}, not solved within reach {missed} ({percent:F3} %)"));
        solved.ShouldBeGreaterThan(linkages * 2 * 9 / 10);
        percent.ShouldBeLessThan(0.1);

        int Count(Outcome outcome) => answers.Count(a => a.Outcome == outcome);
    }

    [Fact]
    public void Far_outside_only_what_geometry_forbids_is_called_unreachable_and_nothing_is_called_solved_wrongly()
    {
        int linkages = IsLong ? 3_000 : 300, unreachable = 0, notSolved = 0, solved = 0;
        for (int i = 0; i < linkages; i++)
        {
            var draws = new Draws(50_000 + i);
            Joint[] joints = draws.ThreeLinkAxle();
            LinkageMotion motion = Draws.Motion(["chassis", "axle"], joints, 2, 100);
            // Half of them about where the links of 900 mm just do not reach any more.
            double heave = draws.In(650, 1250) * (i % 4 < 2 ? 1 : -1);
            double[] at = i % 2 == 0 ? [draws.In(-2500, 2500), draws.In(-2500, 2500)] : [heave + draws.In(-40, 40), heave + draws.In(-40, 40)];
            SolvedPose pose = motion.At(at);
            if (pose.IsSolved) solved++;
            else if (pose.Answer == PoseAnswerKind.NotSolved) notSolved++;
            else unreachable++;

            if (pose.IsSolved) HoldsAllJoints(joints, pose, at);
            if (pose.Answer == PoseAnswerKind.Unreachable) ForbiddenByGeometry(joints, at).ShouldBeTrue($"axle {i} at {at[0]}, {at[1]}");
        }

        output.WriteLine($"{linkages} poses far outside: unreachable {unreachable}, not solved {notSolved}, solved {solved}");
        unreachable.ShouldBeGreaterThan(linkages / 2);
    }

    [Fact]
    public void A_cell_that_holds_a_solved_pose_is_never_called_unreachable()
    {
        for (int i = 0; i < 100; i++)
        {
            var draws = new Draws(70_000 + i);
            LinkageMotion motion = draws.Motion(i % 2 == 0 ? 0 : 5, 400);
            double[] at = [draws.In(-400, 400), draws.In(-400, 400)];
            if (!motion.At(at).IsSolved) continue;

            motion.IsUnreachable(CellAround(motion.Box, at, 1 << 14)).ShouldBeFalse();
            motion.IsUnreachable(CellAround(motion.Box, at, 1 << 22)).ShouldBeFalse();
        }

        // And a whole cell out of reach is called so: one hub 1,700 mm above the other, which is 1,590 mm away.
        LinkageMotion axle = ThreeLinkAxle.Motion(-1000, 1000);
        axle.IsUnreachable(CellAround(axle.Box, [900, -900], 1 << 20)).ShouldBeTrue();
    }

    [Theory]
    [InlineData(99.9999999)]
    [InlineData(100)]
    [InlineData(100.0001)]
    [InlineData(150)]
    [InlineData(1e9)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void At_and_beyond_the_top_of_a_cranks_circle_the_answer_is_not_solved(double height)
    {
        LinkageMotion motion = Draws.Motion(
            ["chassis", "crank"],
            [new Joint.Hinge("pivot", 0, 1, Vector3d.Zero, Vector3d.UnitY), new Joint.Travel("pin", 1, new(100, 0, 0), 0, 0)], 1, 200);

        SolvedPose pose = motion.At([height]);

        pose.Answer.ShouldBe(PoseAnswerKind.NotSolved);
    }

    [Theory]
    [InlineData(-99.99)]
    [InlineData(-60)]
    [InlineData(95)]
    [InlineData(99)]
    [InlineData(99.99)]
    [InlineData(99.9999)]
    public void Just_below_the_top_the_crank_is_still_solved_to_a_billionth(double height)
    {
        LinkageMotion motion = Draws.Motion(
            ["chassis", "crank"],
            [new Joint.Hinge("pivot", 0, 1, Vector3d.Zero, Vector3d.UnitY), new Joint.Travel("pin", 1, new(100, 0, 0), 0, 0)], 1, 200);

        Vector3d pin = motion.At([height])[1].Apply(new(100, 0, 0));

        (pin - new Vector3d(Math.Sqrt((100 - height) * (100 + height)), 0, height)).Length.ShouldBeLessThan(1e-9);
    }

    [Fact]
    public void A_crank_walked_between_any_two_heights_never_jumps_to_its_other_side()
    {
        var draws = new Draws(171);
        int solved = 0;
        const int Walks = 3000;
        for (int i = 0; i < Walks; i++)
        {
            double radius = draws.In(5, 120), from = radius * draws.In(-0.99, 0.99), to = radius * draws.In(-0.99, 0.99);
            Vector3d pin = new(radius, 0, 0);
            (Linkage? linkage, _) = Linkage.Build(
                ["chassis", "crank"], [new Joint.Hinge("pivot", 0, 1, Vector3d.Zero, Vector3d.UnitY), new Joint.Travel("pin", 1, pin, 0, 0)], 1);
            RigidMotion[] start = [RigidMotion.Identity, new(Rotation.About(-Vector3d.UnitY, Math.Asin(from / radius)), Vector3d.Zero)];

            RigidMotion[]? end = new LinkageSolver(linkage!).Solve(start, [from], [to]);

            if (end is null) continue;
            solved++;
            (end[1].Apply(pin) - new Vector3d(Math.Sqrt((radius - to) * (radius + to)), 0, to)).Length.ShouldBeLessThan(1e-9);
        }

        output.WriteLine($"{solved} of {Walks} walks solved");
        solved.ShouldBe(Walks);
    }

    [Fact]
    public void A_start_on_the_other_branch_leads_to_no_answer()
    {
        (Linkage? linkage, _) = Linkage.Build(
            ["chassis", "crank"], [new Joint.Hinge("pivot", 0, 1, Vector3d.Zero, Vector3d.UnitY), new Joint.Travel("pin", 1, new(100, 0, 0), 0, 0)], 1);
        RigidMotion[] turnedBack = [RigidMotion.Identity, new(Rotation.About(-Vector3d.UnitY, Math.PI - Math.Asin(0.2)), Vector3d.Zero)];

        new LinkageSolver(linkage!).Solve(turnedBack, [20], [30]).ShouldBeNull();
    }

    private static Outcome Judge(LinkageMotion motion, double[] at)
    {
        SolvedPose pose = motion.At(at);
        switch (pose.Answer)
        {
            case PoseAnswerKind.Solved:
                foreach (RigidMotion body in pose.Bodies.Span)
                    (body.Translation.IsFinite && double.IsFinite(body.Rotation.W + body.Rotation.X + body.Rotation.Y + body.Rotation.Z)).ShouldBeTrue();
                HoldsAllJoints(motion.Linkage.Joints, pose, at);
                return Outcome.Solved;
            case PoseAnswerKind.Unreachable:
                return Outcome.Unreachable;
            default:
                return IsReachedSlowly(motion, at) ? Outcome.Missed : Outcome.BeyondFold;
        }
    }

    // In steps of a tenth of a millimetre along the straight way: another way to go than the motion's, which goes by halves of the box.
    private static bool IsReachedSlowly(LinkageMotion motion, double[] at)
    {
        var solver = new LinkageSolver(motion.Linkage);
        RigidMotion[]? bodies = motion.Linkage.Start;
        double[] from = motion.Linkage.StartSettings;
        int steps = (int)Math.Ceiling(at.Max(Math.Abs) * 10);
        for (int step = 1; step <= steps; step++)
        {
            double[] next = [.. at.Select(x => x * step / steps)];
            bodies = solver.Solve(bodies, from, next);
            if (bodies is null) return false;
            from = next;
        }

        return true;
    }

    private static void HoldsAllJoints(IEnumerable<Joint> joints, SolvedPose pose, double[] at)
    {
        foreach (Joint joint in joints)
        {
            double off = joint switch
            {
                Joint.Rod j => (pose[j.FirstBody].Apply(j.FirstPoint) - pose[j.SecondBody].Apply(j.SecondPoint)).Length - j.LengthMm,
                Joint.Ball j => (pose[j.FirstBody].Apply(j.Point) - pose[j.SecondBody].Apply(j.Point)).Length,
                Joint.Hinge j => (pose[j.FirstBody].Apply(j.Point) - pose[j.SecondBody].Apply(j.Point)).Length
                    + (pose[j.FirstBody].Apply(j.Point + j.Axis) - pose[j.SecondBody].Apply(j.Point + j.Axis)).Length,
                Joint.Travel j => pose[j.Body].Apply(j.Point).Z - j.Point.Z - at[j.Coordinate],
                _ => 0,
            };
            if (!(Math.Abs(off) < 1e-9)) off.ShouldBe(0, 1e-9, joint.Name);
        }
    }

    // The axle with its hubs at the two heights, turned about the line between them through 720 angles: some rod is too short at each.
    private static bool ForbiddenByGeometry(Joint[] joints, double[] at)
    {
        Vector3d left = new(0, 795, at[0]), right = new(0, -795, at[1]);
        double span = 1590, rise = at[0] - at[1];
        if (Math.Abs(rise) > span) return true;
        Rotation roll = Rotation.About(Vector3d.UnitX, Math.Asin(rise / span));
        return joints.OfType<Joint.Rod>().Any(rod => Enumerable.Range(0, 720).All(k =>
        {
            Rotation turn = roll * Rotation.About(Vector3d.UnitY, k * Math.PI / 360);
            double height = (turn.Apply(rod.SecondPoint - new Vector3d(0, 795, 0)) + left).Z;
            return Math.Abs(height - rod.FirstPoint.Z) > rod.LengthMm;
        }));
    }

    private static DyadicCell CellAround(PoseBox box, double[] at, int size)
    {
        DyadicPose low = default, sizes = default;
        for (int k = 0; k < at.Length; k++)
        {
            int numerator = (int)((at[k] - box.Coordinates[k].Low) / box.Range(k) * DyadicPose.Denominator);
            low = low.With(k, Math.Min(numerator / size * size, DyadicPose.Denominator - size));
            sizes = sizes.With(k, size);
        }

        return new DyadicCell(low, sizes);
    }

    private enum Outcome
    {
        Solved,
        Unreachable,
        BeyondFold,
        Missed,
    }
}
