using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Sweeping.Tests.Cases;
using ClearanceCheck.Sweeping.Tests.Motions;

namespace ClearanceCheck.Sweeping.Tests;

/// <summary>What must not change the answer.</summary>
public sealed class SymmetryTests
{
    private static readonly SweepSettings Settings = new() { ToleranceMm = 0.5, MaximumCells = 600 };

    [Fact]
    public void Exchanging_the_parts_gives_the_same_bits_and_the_witness_exchanged()
    {
        for (ulong seed = 2000; seed < 2060; seed++)
        {
            SweepCase pair = RandomCases.Draw(seed, linkages: false);
            Extreme one = pair.LeastGap(Settings);
            Extreme other = new SweepCase(pair.System, pair.SecondBody, pair.Second, pair.FirstBody, pair.First).LeastGap(Settings);

            (other.Value, other.Bound, other.Cells, other.Basins.Length).ShouldBe((one.Value, one.Bound, one.Cells, one.Basins.Length));
            for (int i = 0; i < one.Basins.Length; i++)
            {
                Basin a = one.Basins[i], b = other.Basins[i];
                b.Pose.ShouldBe(a.Pose);
                (b.Witness.FirstNode, b.Witness.SecondNode).ShouldBe((a.Witness.SecondNode, a.Witness.FirstNode));
                b.Witness.OnSecond.ShouldBe(a.Witness.OnFirst);
                b.Witness.OnFirst.ShouldBe(a.Witness.OnSecond);
            }
        }
    }

    [Fact]
    public void Exchanging_parts_of_one_body_gives_the_same_bits()
    {
        var random = new SplitMix64(5);
        for (int i = 0; i < 200; i++)
        {
            var first = new CapsuleChain([random.Cube(100), random.Cube(100), random.Cube(100)], random.In(0, 9));
            var second = new CapsuleChain([random.Cube(100), random.Cube(100), random.Cube(100)], random.In(0, 9));

            Extreme one = Sweep.StillGap(first, second), other = Sweep.StillGap(second, first);

            other.Value.ShouldBe(one.Value);
            other.Basins[0].Witness.OnFirst.ShouldBe(one.Basins[0].Witness.OnSecond);
        }
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Carrying_the_whole_mechanism_elsewhere_or_mirroring_it_changes_nothing(bool mirrored)
    {
        var random = new SplitMix64(77);
        for (ulong seed = 2100; seed < 2160; seed++)
        {
            SweepCase pair = RandomCases.Draw(seed, linkages: false);
            var moved = new Moved(new RigidMotion(Rotation.About(random.UnitVector(), random.In(-3, 3)), random.Cube(900)), mirrored);

            Extreme one = pair.LeastGap(Settings), other = moved.Case(pair).LeastGap(Settings);

            if (double.IsNaN(one.Value))
            {
                other.Value.ShouldBe(double.NaN);
                continue;
            }

            // Where pieces overlap ways out tie, and rounding picks one.
            if (one.Value <= 0) continue;
            // A solid of revolution is made of facets that begin somewhere on its circle: they stick out by at most their excess.
            double facets = pair.First is Revolved a ? 2 * a.FacetMm : pair.Second is Revolved b ? 2 * b.FacetMm : 0;
            other.Value.ShouldBe(one.Value, 1e-6 + facets, $"seed {seed}");
            if (!one.BudgetSpent) other.Bound.ShouldBe(one.Bound, Settings.ToleranceMm + facets);
        }
    }

    [Fact]
    public void The_tree_gives_what_all_pairs_of_pieces_give()
    {
        var random = new SplitMix64(9);
        for (ulong seed = 2200; seed < 2300; seed++)
        {
            SweepCase pair = RandomCases.Draw(seed, linkages: false);
            var oracle = new PoseOracle(pair);
            double[] pose = [.. oracle.Box.Coordinates.Select(c => random.In(c.Low, c.High))];
            double tree = Sweep.GapAt(pair.First, pair.Second, pair.System.At(pose.AsSpan()).Relative(pair.FirstBody, pair.SecondBody)).Gap;
            // Where pieces overlap the tree's answer is "at least".
            if (tree < 0) continue;

            tree.ShouldBe(oracle.GapBeyondStops(pose), 1e-9);
        }
    }

    [Fact]
    public void Many_pairs_at_once_in_any_order_give_the_same_bits_and_the_same_number_of_solved_poses()
    {
        (string[] alone, long solvesAlone) = AllPairs(parallel: false);
        for (int run = 0; run < 2; run++)
        {
            (string[] together, long solvesTogether) = AllPairs(parallel: true);
            together.ShouldBe(alone);
            solvesTogether.ShouldBe(solvesAlone);
        }
    }

    private static (string[] Results, long Solves) AllPairs(bool parallel)
    {
        var shared = (LinkageMotion)RandomCases.Draw(2007).System;
        var random = new SplitMix64(31);
        CapsuleChain[] lines = [.. Enumerable.Range(0, 12).Select(_ => new CapsuleChain([random.Cube(500), random.Cube(500), random.Cube(500)], 5))];
        var tube = new CapsuleChain([new(0, -700, 0), new(0, 700, 0)], 40);
        var results = new string[lines.Length];
        void Run(int i) => results[i] = Bits(Sweep.LeastGap(shared, 0, lines[i], 1, tube, Settings));
        if (parallel) Parallel.ForEach(Enumerable.Range(0, lines.Length).OrderBy(i => (i * 7) % 12), new ParallelOptions { MaxDegreeOfParallelism = 4 }, Run);
        else for (int i = 0; i < lines.Length; i++) Run(i);
        return (results, shared.Solves);
    }

    private static string Bits(Extreme e) => string.Join(
        ' ', [Hex(e.Value), Hex(e.Bound), $"{e.Cells} {e.Grade}", .. e.Basins.Select(b => Hex(b.Value) + string.Concat(b.Pose.Select(Hex)))]);

    private static string Hex(double x) => BitConverter.DoubleToInt64Bits(x).ToString("x16", System.Globalization.CultureInfo.InvariantCulture);
}
