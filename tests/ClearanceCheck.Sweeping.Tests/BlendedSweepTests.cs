using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Tests.Motions;

namespace ClearanceCheck.Sweeping.Tests;

/// <summary>Wires between two bodies against rigid parts and against each other.</summary>
public sealed class BlendedSweepTests
{
    private static readonly SweepSettings Settings = new() { ToleranceMm = 0.3, MaximumCells = 800 };

    [Fact]
    public void A_wire_that_is_stretched_keeps_its_places_in_proportion()
    {
        // A zigzag between a fixed and a rising seat; the ball stands beside the middle of it at rest, and the wire's middle rises half as much.
        var system = new FormulaMotion(new PoseBox([new("rise", false, 0, 100)]), [(0, [new Move.Slide(Vector3d.UnitZ, [1])])], []);
        var wire = new BlendedChain(0, 1, [new(0, 0, 0), new(0, 0, 100), new(0, 0, 200)], [0, 0.5, 1], 3);
        var hook = new BlendedChain(0, 1, [new(0, 0, 100), new(30, 0, 100)], [0.5, 0.5], 3);

        // Against a post whose top is at z 130: the hook's middle passes it at a rise of 60 and is 50 above 100 at most.
        Extreme beside = Sweep.LeastGap(system, new RigidSolid(0, new CapsuleChain([new(20, 0, 160)], 4)), hook, Settings);

        beside.Value.ShouldBe(10 - 7, 1e-3);
        beside.Basins[0].Pose[0].ShouldBe(100, 1e-3);
        Sweep.LeastGap(system, wire, new RigidSolid(1, new CapsuleChain([new(40, 0, 200)], 4)), Settings).Value.ShouldBe(33, 1e-3);
    }

    [Fact]
    public void No_sampled_pose_lies_below_the_bound()
    {
        (int broken, int closed, int cases) = Look(system => system);

        TestContext.Current.TestOutputHelper?.WriteLine($"{closed} of {cases} closed");
        broken.ShouldBe(0);
        closed.ShouldBeGreaterThan(cases * 3 / 4);
    }

    [Fact]
    public void A_curvature_of_zero_is_found_out() => Look(system => new AlteredMotion(system) { CurvatureFactor = 0 }).Broken.ShouldBeGreaterThan(0);

    [Fact]
    public void Exchanging_the_parts_gives_the_same_bits()
    {
        for (ulong seed = 0; seed < 12; seed++)
        {
            (IMovingSystem system, SweptSolid a, SweptSolid b) = Draw(seed);
            Extreme one = Sweep.LeastGap(system, a, b, Settings), other = Sweep.LeastGap(system, b, a, Settings);

            (other.Value, other.Bound, other.Cells).ShouldBe((one.Value, one.Bound, one.Cells));
            if (!one.Basins.IsEmpty) other.Basins[0].Witness.OnFirst.ShouldBe(one.Basins[0].Witness.OnSecond);
        }
    }

    private static (int Broken, int Closed, int Cases) Look(Func<IMovingSystem, IMovingSystem> asked)
    {
        int cases = Long.Times(60), broken = 0, closed = 0;
        for (ulong seed = 0; seed < (ulong)cases; seed++)
        {
            (IMovingSystem system, SweptSolid a, SweptSolid b) = Draw(seed);
            Extreme least = Sweep.LeastGap(asked(system), a, b, Settings);
            double sampled = Sampled(system, a, b, seed);
            if (least.Bound > sampled + 1e-6 || least.Grade == Grade.Sampled) broken++;
            if (!least.BudgetSpent && least.Value <= sampled + Settings.ToleranceMm + 1e-6) closed++;
        }

        return (broken, closed, cases);
    }

    private static double Sampled(IMovingSystem system, SweptSolid a, SweptSolid b, ulong seed)
    {
        var random = new SplitMix64(seed ^ 0xB1E9D);
        int d = system.Box.Dimensions;
        (double Gap, double[] Pose) best = (double.PositiveInfinity, new double[d]);
        double At(double[] pose) => Sweep.GapAt(a, b, system.At(pose.AsSpan()));
        for (int i = 0; i < 400; i++)
        {
            double[] pose = [.. system.Box.Coordinates.Select(c => Math.Clamp(c.Low + ((c.High - c.Low) * random.In(-0.1, 1.1)), c.Low, c.High))];
            if (At(pose) is var gap && gap < best.Gap) best = (gap, pose);
        }

        for (double share = 0.05; share > 1e-4; share *= 0.5)
            for (int k = 0; k < 2 * d; k++)
            {
                double[] next = [.. best.Pose];
                PoseCoordinate c = system.Box.Coordinates[k / 2];
                next[k / 2] = Math.Clamp(next[k / 2] + ((k % 2 == 0 ? share : -share) * (c.High - c.Low)), c.Low, c.High);
                if (At(next) is var gap && gap < best.Gap) best = (gap, next);
            }

        return best.Gap;
    }

    // Two bodies that slide and turn; a helix between the chassis and one of them, or between the two, against a bar on any, or another helix.
    private static (IMovingSystem System, SweptSolid A, SweptSolid B) Draw(ulong seed)
    {
        var random = new SplitMix64((seed * 31) + 5);
        var system = new FormulaMotion(
            new PoseBox([new("travel", false, -80, 80), new("turn", true, -0.4, 0.4)]),
            [
                (0, [new Move.Slide(random.UnitVector(), [1, 0]), new Move.Turn(random.Cube(200), random.UnitVector(), [0, 1])]),
                (0, [new Move.Turn(random.Cube(200), random.UnitVector(), [1 / 400.0, 0.3])]),
            ], []);
        BlendedChain helix = Helix(random, seed % 3 == 0 ? 1 : 0, seed % 3 == 0 ? 2 : 1);
        if (seed % 5 == 4) return (system, helix, Helix(random, 0, 2));
        Vector3d near = helix.Points[random.Below(helix.Points.Length)] + (random.UnitVector() * random.In(20, 160));
        return (system, helix, new RigidSolid(random.Below(3), new CapsuleChain([near, near + (random.UnitVector() * 80)], random.In(2, 15))));
    }

    private static BlendedChain Helix(SplitMix64 random, int near, int far)
    {
        Vector3d from = random.Cube(120), axis = random.UnitVector(), e = axis.AnyPerpendicular(), f = Vector3d.Cross(axis, e);
        var points = ImmutableArray.CreateBuilder<Vector3d>();
        var shares = ImmutableArray.CreateBuilder<double>();
        for (int i = 0; i <= 30; i++)
        {
            double share = i / 30.0, angle = 2 * Math.PI * 3 * share;
            points.Add(from + (axis * (200 * share)) + (e * (50 * Math.Cos(angle))) + (f * (50 * Math.Sin(angle))));
            shares.Add(share);
        }

        return new BlendedChain(near, far, points.ToImmutable(), shares.ToImmutable(), 6);
    }
}
