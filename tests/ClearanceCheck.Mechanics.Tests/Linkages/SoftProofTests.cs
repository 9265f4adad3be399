using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

/// <summary>Soft and steered motions: proved block by block, and standing where their energy is least.</summary>
public sealed class SoftProofTests
{
    private const int Quarter = DyadicPose.Denominator / 4;

    [Theory]
    [InlineData("arms rigid on the axle", 1)]
    [InlineData("arms as bodies", 3)]
    [InlineData("arms whose bushings turn with their housings", 5)]
    [InlineData("four links", 1)]
    [InlineData("cross-over steering", 1)]
    [InlineData("double wishbones", 1)]
    public void Blocks_of_the_travel_are_proved_and_their_bounds_hold(string name, int everyOther)
    {
        (LinkageMotion motion, int body) = Named(name);
        int d = motion.Box.Dimensions;
        Vector3d point = new(40, 790, -30);
        var bounds = new Curvature[d];
        for (int block = 0; block < (d == 3 ? 64 : 16); block += everyOther)
        {
            var cell = new DyadicCell(
                new((block & 3) * Quarter, ((block >> 2) & 3) * Quarter, d == 3 ? (block >> 4) * Quarter : 0, 0), new(Quarter, Quarter, d == 3 ? Quarter : 0, 0));

            motion.Curvatures(cell, 0, body, [point], bounds).ShouldBe(CurvatureBasis.Enclosed, $"{name}, block {block}");

            for (int k = 0; k < d; k++)
            {
                double seen = SecondDerivative(motion, cell, body, point, k);
                seen.ShouldBeLessThanOrEqualTo(bounds[k].Length * (1 + 1e-4));
                bounds[k].Length.ShouldBeLessThan((40 * seen) + 1e-3 + (motion.Box.Coordinates[k].IsAngle ? 300 : 0), $"{name}, block {block}, coordinate {k}");
            }
        }
    }

    [Theory]
    [InlineData("arms rigid on the axle")]
    [InlineData("arms as bodies")]
    [InlineData("arms whose bushings turn with their housings")]
    [InlineData("four links")]
    [InlineData("leaf springs")]
    [InlineData("a sprung arm that turns on a soft axle")]
    public void What_holds_the_wheels_is_how_the_energy_grows_with_their_travel(string name)
    {
        // The envelope theorem: the slope of the least energy is the load of its constraint. A wrong force anywhere would break it.
        (LinkageMotion motion, _) = Named(name);
        const double Step = 0.05;
        foreach ((double left, double right) in ((double, double)[])[(-80, -40), (70, -90), (15, 100), (0, 0.5)])
            for (int k = 0; k < 2; k++)
            {
                double up = Energy(motion, left + (k == 0 ? Step : 0), right + (k == 1 ? Step : 0));
                double down = Energy(motion, left - (k == 0 ? Step : 0), right - (k == 1 ? Step : 0));

                double held = Loads(motion, left, right).Settings[k].Load;

                ((down - up) / (2 * Step)).ShouldBe(held, 0.01 + (1e-4 * Math.Abs(held)), $"{name} at {left}, {right}");
            }
    }

    [Fact]
    public void Neighbouring_blocks_meet_on_the_faces_they_share()
    {
        (LinkageMotion motion, _) = Named("four links");
        foreach (double right in (double[])[-90, -10, 45])
        {
            Enclosure left = Prove(motion, [-15, right]), other = Prove(motion, [15, right]);
            RigidMotion[] shared = motion.At([0.0, right]).Bodies.ToArray();

            left.Contains(shared).ShouldBeTrue();
            other.Contains(shared).ShouldBeTrue();
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void A_pose_where_the_energy_has_a_saddle_is_no_answer(int bars)
    {
        // Bars on a pin, each end on a spring to a point that it passes: beyond the springs' dead centre the bars snap through. Two alike do so at
        // once, which the determinant's sign does not show.
        (Linkage? linkage, _) = Linkage.Build(
            ["chassis", "slide", .. Enumerable.Range(0, bars).Select(b => $"bar {b}")],
            [
                new Joint.Slide("guide", 0, 1, Vector3d.Zero, Vector3d.UnitX), new Joint.Shift("slide", 1, 0, 0),
                .. Enumerable.Range(0, bars).SelectMany(b => new Joint[]
                {
                    new Joint.Hinge($"pin {b}", 0, 2 + b, Vector3d.Zero, Vector3d.UnitY),
                    new Joint.Spring($"spring {b}", 1, new(400, 0, 300), 2 + b, new(300, 0, 0), 20),
                    new Joint.Bushing($"stiff pin {b}", 0, 2 + b, Vector3d.Zero, Rotation.Identity, default, new(0, 2e4, 0), false),
                }),
            ],
            1);
        var motion = new LinkageMotion(linkage!, new PoseBox([new("slide", false, -3000, 100)]), []);
        int solved = 0;
        for (double at = 90; at > -2900; at -= 30)
        {
            SolvedPose pose = motion.At([at]);
            if (!pose.IsSolved) continue;
            solved++;
            double turn = pose[2].Rotation.ToRotationVector().Y;

            foreach (double beside in (double[])[-0.01, 0.01]) Bar(at, turn + beside).ShouldBeGreaterThan(Bar(at, turn));
        }

        solved.ShouldBeGreaterThan(20);

        // Started right beside a maximum of their energy, the solver finds it and has to refuse it.
        int tops = 0;
        for (double at = -200; at > -2900; at -= 100)
            for (double turn = -3; turn < 3; turn += 0.002)
            {
                if (!(Bar(at, turn) > Bar(at, turn - 0.002) && Bar(at, turn) > Bar(at, turn + 0.002))) continue;
                tops++;
                var bar = new RigidMotion(Rotation.About(Vector3d.UnitY, turn), default);
                motion.Near([RigidMotion.Identity, new RigidMotion(Rotation.Identity, new(at, 0, 0)), .. Enumerable.Repeat(bar, bars)], [at]).IsSolved.ShouldBeFalse($"{at}, {turn}");
            }

        tops.ShouldBeGreaterThan(5);

        static double Bar(double slide, double turn)
        {
            Vector3d end = Rotation.About(Vector3d.UnitY, turn).Apply(new(300, 0, 0));
            double stretch = (end - new Vector3d(400 + slide, 0, 300)).Length - new Vector3d(100, 0, 300).Length;
            return (10 * stretch * stretch) + (1e4 * turn * turn);
        }
    }

    private static (LinkageMotion Motion, int Body) Named(string name) => name switch
    {
        "arms rigid on the axle" => (SoftAxleTests.RigidArms(), 1),
        "arms as bodies" => (SoftAxleTests.ArmsAsBodies(), 1),
        "arms whose bushings turn with their housings" => (SoftAxleTests.ArmsAsBodies(true), 2),
        "four links" => (SoftAxleTests.FourLinks(), 1),
        "leaf springs" => (new Draws(10).Motion(10, 120), 1),
        "a sprung arm that turns on a soft axle" => (SprungArm(), 2),
        "cross-over steering" => (SteeringTests.CrossOver(), 3),
        _ => (SteeringTests.Wishbones(), 3),
    };

    // The arm hands its spring's force on to the axle, with the moment about the axle's own middle.
    private static LinkageMotion SprungArm()
    {
        (Linkage? linkage, LinkageFault? fault) = Linkage.Build(
            ["chassis", "axle", "arm"],
            [
                new Joint.Bushing("left", 0, 1, new(-955, 395, -25), Rotation.Identity, new(7000, 1500, 7000), new(4.6e6, 2.3e6, 4.6e6), false),
                new Joint.Bushing("right", 0, 1, new(-955, -395, -25), Rotation.Identity, new(7000, 1500, 7000), new(4.6e6, 2.3e6, 4.6e6), true),
                new Joint.Hinge("arm on the axle", 1, 2, new(120, 300, 40), new(0.2, 1, 0.1)),
                new Joint.Spring("spring", 0, new(420, 250, 380), 2, new(430, 310, 60), 400),
                new Joint.Bushing("rubber in the hinge", 1, 2, new(120, 300, 40), Rotation.Identity, default, new(0, 6e6, 0), true),
                new Joint.Travel("left", 1, new(0, 790, 0), 0, 0), new Joint.Travel("right", 1, new(0, -790, 0), 1, 0),
            ],
            2);
        fault.ShouldBeNull();
        return new LinkageMotion(linkage!, new PoseBox([new("left", false, -120, 120), new("right", false, -120, 120)]), []);
    }

    private static Enclosure Prove(LinkageMotion motion, double[] centre) =>
        Enclosure.TryProve(motion.Linkage, motion.At(centre).Bodies.ToArray(), centre, [15, 15]).ShouldNotBeNull();

    private static LinkageLoads Loads(LinkageMotion motion, double left, double right) =>
        LinkageLoads.Of(motion.Linkage, motion.At([left, right]).Bodies.Span, [left, right]);

    private static double Energy(LinkageMotion motion, double left, double right) => Loads(motion, left, right).Soft.Sum(s => s.EnergyNmm);

    private static double SecondDerivative(LinkageMotion motion, DyadicCell cell, int body, Vector3d point, int coordinate)
    {
        double largest = 0, step = motion.Box.Coordinates[coordinate].IsAngle ? 0.01 : 2;
        var at = new double[motion.Box.Dimensions];
        for (int i = 0; i < 5; i++)
        {
            for (int k = 0; k < at.Length; k++)
            {
                double share = k == coordinate ? (i + 0.5) / 5 : 0.37;
                at[k] = motion.Box.ValueAt(k, cell.Low[k]) + (share * cell.Width(k, motion.Box));
            }

            Vector3d middle = Point(0), up = Point(step), down = Point(-step);
            largest = Math.Max(largest, ((up + down) - (2 * middle)).Length / (step * step));
        }

        return largest;

        Vector3d Point(double by)
        {
            double[] moved = [.. at];
            moved[coordinate] += by;
            return motion.At(moved)[body].Apply(point);
        }
    }
}
