using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Tests.Cases;
using ClearanceCheck.Sweeping.Tests.Motions;

namespace ClearanceCheck.Sweeping.Tests;

/// <summary>Longest chords: what a hose or a brake line has to reach.</summary>
public sealed class ChordTests
{
    private static readonly SweepSettings Settings = new() { ToleranceMm = 0.1 };

    [Fact]
    public void A_pendulum_is_farthest_where_it_points_away()
    {
        FormulaMotion arm = new(new PoseBox([new("swing", true, -0.5, 0.7)]), [(0, [new Move.Turn(Vector3d.Zero, Vector3d.UnitX, [1])])], []);

        Extreme longest = Sweep.LongestChord(arm, 0, new(0, -300, 0), 1, new(0, 500, 0), Settings);

        longest.Value.ShouldBe(800, 1e-3);
        longest.Bound.ShouldBeInRange(longest.Value, 800.1);
        longest.Basins[0].Pose[0].ShouldBe(0, 1e-3);
    }

    [Fact]
    public void A_pendulum_that_never_points_away_is_farthest_at_the_end_of_its_travel()
    {
        FormulaMotion arm = new(new PoseBox([new("swing", true, 0.2, 0.9)]), [(0, [new Move.Turn(Vector3d.Zero, Vector3d.UnitX, [1])])], []);

        Extreme longest = Sweep.LongestChord(arm, 0, new(0, -300, 0), 1, new(0, 500, 0), Settings);

        longest.Value.ShouldBe(Math.Sqrt((300 * 300) + (500 * 500) + (2 * 300 * 500 * Math.Cos(0.2))), 1e-3);
        longest.Bound.ShouldBeInRange(longest.Value, longest.Value + 0.1);
    }

    [Fact]
    public void Parallel_links_carry_a_point_on_a_circle()
    {
        // Two turns that cancel: the platform stays level and its points go on circles of 400 about shifted centres.
        FormulaMotion links = new(
            new PoseBox([new("swing", true, -0.6, 0.6)]),
            [(0, [new Move.Turn(Vector3d.Zero, Vector3d.UnitX, [1]), new Move.Turn(new(0, 400, 0), Vector3d.UnitX, [-1])])], []);

        Extreme longest = Sweep.LongestChord(links, 0, new(0, 100, 250), 1, new(0, 450, 120), Settings);

        // The point is (0, 50, 120) from the circle's centre: farthest at one of the ends, seen from (0, 50, 130) over it.
        double far = Math.Max(Chord(-0.6), Chord(0.6));
        longest.Value.ShouldBe(far, 1e-3);
        longest.Bound.ShouldBeInRange(far, far + 0.1);

        static double Chord(double q)
        {
            double y = (400 * Math.Cos(q)) + 50 - 100, z = (400 * Math.Sin(q)) + 120 - 250;
            return Math.Sqrt((y * y) + (z * z));
        }
    }

    [Fact]
    public void A_chord_is_held_by_a_strap()
    {
        var strap = new LongestStop("strap", 0, new(0, 0, 100), 1, Vector3d.Zero, 150);
        FormulaMotion slider = new(new PoseBox([new("travel", false, -100, 100)]), [(0, [new Move.Slide(Vector3d.UnitZ, [1])])], [strap]);

        Extreme longest = Sweep.LongestChord(slider, 0, new(30, 0, 200), 1, Vector3d.Zero, Settings);

        longest.Value.ShouldBe(Math.Sqrt((30 * 30) + (250 * 250)), 1e-3);
        longest.Bound.ShouldBeInRange(longest.Value, longest.Value + 0.1);
    }

    [Fact]
    public void Bounds_lie_above_and_values_not_below_the_densest_samples()
    {
        for (ulong seed = 3000; seed < 3000 + (ulong)Long.Times(70); seed++)
        {
            SweepCase pair = RandomCases.Draw(seed, linkages: false);
            (Vector3d first, Vector3d second) = (pair.First.Anchors[0], pair.Second.Anchors[0]);

            Extreme longest = Sweep.LongestChord(pair.System, pair.FirstBody, first, pair.SecondBody, second, Settings with { MaximumCells = 3000 });

            double sampled = Longest(pair, first, second, seed);
            if (double.IsNaN(longest.Value)) continue;
            longest.Bound.ShouldBeGreaterThanOrEqualTo(longest.Value);
            longest.Bound.ShouldBeGreaterThanOrEqualTo(sampled - 1e-6);
            if (!longest.BudgetSpent) longest.Value.ShouldBeGreaterThanOrEqualTo(sampled - 0.1 - 1e-6);
        }
    }

    [Fact]
    public void A_chord_without_its_curvature_is_found_out()
    {
        int broken = 0;
        for (ulong seed = 3000; seed < 3070; seed++)
        {
            SweepCase pair = RandomCases.Draw(seed, linkages: false);
            (Vector3d first, Vector3d second) = (pair.First.Anchors[0], pair.Second.Anchors[0]);
            var flat = new AlteredMotion(pair.System) { CurvatureFactor = 0 };

            Extreme longest = Sweep.LongestChord(flat, pair.FirstBody, first, pair.SecondBody, second, Settings with { MaximumCells = 3000 });

            if (longest.Grade == Grade.Sampled || longest.Bound < Longest(pair, first, second, seed) - 1e-6) broken++;
        }

        broken.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void Exchanging_the_ends_gives_the_same_bits()
    {
        SweepCase pair = RandomCases.Draw(3001, linkages: false);

        Extreme one = Sweep.LongestChord(pair.System, 0, new(1, 2, 3), 1, new(100, 200, 300), Settings);
        Extreme other = Sweep.LongestChord(pair.System, 1, new(100, 200, 300), 0, new(1, 2, 3), Settings);

        (other.Value, other.Bound, other.Cells).ShouldBe((one.Value, one.Bound, one.Cells));
        other.Basins[0].Witness.OnFirst.ShouldBe(one.Basins[0].Witness.OnSecond);
    }

    [Fact]
    public void A_chord_that_no_rule_minds_is_refused()
    {
        FormulaMotion slider = new(new PoseBox([new("travel", false, -100, 100)]), [(0, [new Move.Slide(Vector3d.UnitZ, [1])])], []);

        Extreme longest = Sweep.LongestChord(slider, 0, Vector3d.Zero, 1, new(0, 0, 10), Settings with { CeilingMm = 500 });

        longest.RefusedAtRoot.ShouldBeTrue();
        longest.Bound.ShouldBeLessThanOrEqualTo(500);
        longest.Bound.ShouldBeGreaterThanOrEqualTo(110);
    }

    [Fact]
    public void A_chord_within_one_body_is_its_length()
    {
        FormulaMotion slider = new(new PoseBox([new("travel", false, -100, 100)]), [(0, [new Move.Slide(Vector3d.UnitZ, [1])])], []);

        Extreme longest = Sweep.LongestChord(slider, 1, Vector3d.Zero, 1, new(3, 4, 0), Settings);

        (longest.Value, longest.Bound).ShouldBe((5, 5));
    }

    private static double Longest(SweepCase pair, Vector3d first, Vector3d second, ulong seed)
    {
        var random = new SplitMix64(seed);
        var space = new ReachableSpace(pair.System);
        double longest = double.NegativeInfinity;
        for (int i = 0; i < 600; i++)
        {
            double[] pose = [.. pair.System.Box.Coordinates.Select(c => Math.Clamp(random.In(c.Low - (0.1 * (c.High - c.Low)), c.High + (0.1 * (c.High - c.Low))), c.Low, c.High))];
            SolvedPose at = pair.System.At(pose.AsSpan());
            if (space.LeastReserve(at) >= 0) longest = Math.Max(longest, (at.Relative(pair.FirstBody, pair.SecondBody).Apply(second) - first).Length);
        }

        return longest;
    }
}
