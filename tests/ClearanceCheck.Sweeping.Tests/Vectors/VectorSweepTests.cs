using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Subspaces;
using ClearanceCheck.Sweeping.Tests.Cases;
using ClearanceCheck.Sweeping.Tests.Motions;
using ClearanceCheck.Sweeping.Vectors;
using ClearanceCheck.Sweeping.Views;

namespace ClearanceCheck.Sweeping.Tests.Vectors;

/// <summary>Angles and near places over all poses: closed forms, dense samples, and bounds that are found out when they are broken.</summary>
public sealed class VectorSweepTests
{
    private const double Tolerance = 0.05;

    private static readonly SweepSettings Settings = new() { ToleranceMm = Tolerance, ReachMm = 1, MaximumCells = 6000 };

    [Fact]
    public void A_joint_bends_most_where_the_far_end_hangs_lowest()
    {
        // The far joint slides 300 mm down and 100 up, 800 mm ahead of a level flange.
        FormulaMotion slider = new(new PoseBox([new("travel", false, -300, 100)]), [(0, [new Move.Slide(Vector3d.UnitZ, [1])])], []);

        Extreme most = VectorSweep.LargestBend(slider, 0, Vector3d.UnitX, Vector3d.Zero, SweptVector.Between(0, Vector3d.Zero, 1, new(800, 0, 0)), Settings);

        most.Value.ShouldBe(Degrees(Math.Atan2(300, 800)), 1e-6);
        most.Bound.ShouldBeInRange(most.Value, most.Value + Tolerance);
        most.Basins[0].Pose[0].ShouldBe(-300, 1e-6);
        most.Basins[0].Witness.OnSecond.Z.ShouldBe(-300, 1e-6);
    }

    [Fact]
    public void A_bend_that_a_strap_ends_is_bounded_on_the_strap()
    {
        var strap = new LongestStop("strap", 0, new(0, 0, 400), 1, Vector3d.Zero, 550);
        FormulaMotion slider = new(new PoseBox([new("travel", false, -300, 100)]), [(0, [new Move.Slide(Vector3d.UnitZ, [1])])], [strap]);

        Extreme most = VectorSweep.LargestBend(slider, 0, Vector3d.UnitX, Vector3d.Zero, SweptVector.Between(0, Vector3d.Zero, 1, new(800, 0, 0)), Settings);

        most.Value.ShouldBe(Degrees(Math.Atan2(150, 800)), 1e-4);
        most.Bound.ShouldBeInRange(most.Value, most.Value + Tolerance);
    }

    [Fact]
    public void Beyond_a_quarter_turn_a_bend_is_a_quarter_turn()
    {
        FormulaMotion arm = new(new PoseBox([new("swing", true, 0.2, 2.5)]), [(0, [new Move.Turn(Vector3d.Zero, Vector3d.UnitZ, [1])])], []);

        Extreme most = VectorSweep.LargestBend(arm, 0, Vector3d.UnitX, Vector3d.Zero, SweptVector.Fixed(1, Vector3d.UnitX, Vector3d.Zero), Settings);

        most.Value.ShouldBe(90);
        most.Bound.ShouldBeInRange(90, 90 + 1e-5);
    }

    [Fact]
    public void Angles_in_a_plane_follow_a_turn_and_add_up()
    {
        // One body turns by the coordinate, the other by half of it the other way.
        FormulaMotion two = new(
            new PoseBox([new("swing", true, -0.4, 0.3)]),
            [(0, [new Move.Turn(Vector3d.Zero, Vector3d.UnitZ, [1])]), (0, [new Move.Turn(new(100, 0, 0), Vector3d.UnitZ, [-0.5])])], []);
        PlaneAngle Of(int body, double factor) => new(factor, SweptVector.Fixed(body, Vector3d.UnitX, Vector3d.Zero), Vector3d.UnitX, Vector3d.UnitY);

        Extreme one = VectorSweep.LeastAngle(two, 0, [Of(1, 1)], Vector3d.Zero, Settings);
        Extreme most = VectorSweep.LeastAngle(two, 0, [Of(1, -1)], Vector3d.Zero, Settings);
        Extreme both = VectorSweep.LeastAngle(two, 0, [Of(1, 1), Of(2, 4)], Vector3d.Zero, Settings);

        one.Value.ShouldBe(Degrees(-0.4), 1e-4);
        one.Bound.ShouldBeInRange(one.Value - Tolerance, one.Value);
        most.Value.ShouldBe(Degrees(-0.3), 1e-4);
        both.Value.ShouldBe(Degrees(0.3 - (2 * 0.3)), 1e-4);
        both.Bound.ShouldBeInRange(both.Value - Tolerance, both.Value);
    }

    [Fact]
    public void Two_places_come_nearest_where_they_pass()
    {
        FormulaMotion slider = new(new PoseBox([new("travel", false, -100, 150)]), [(0, [new Move.Slide(Vector3d.UnitZ, [1])])], []);

        Extreme least = VectorSweep.ShortestChord(slider, 0, new(0, 0, 40), 1, new(30, 0, 0), Settings);

        least.Value.ShouldBe(30, 1e-6);
        least.Bound.ShouldBeInRange(30 - Tolerance, 30);
        least.Basins[0].Pose[0].ShouldBe(40, 1e-2);
    }

    [Theory]
    [InlineData(Kind.Bend)]
    [InlineData(Kind.Angle)]
    [InlineData(Kind.Near)]
    public void Bounds_hold_against_the_densest_samples(Kind kind)
    {
        int asked = 0;
        for (ulong seed = 7000; seed < 7000 + (ulong)Long.Times(56); seed++)
        {
            SweepCase pair = RandomCases.Draw(seed, linkages: seed % 7 == 0);
            if (Question.Of(kind, pair, seed) is not { } question) continue;
            Extreme found = question.Least(pair.System);
            if (double.IsNaN(found.Value)) continue;
            asked++;
            double sampled = question.Sampled(pair, seed);
            found.Bound.ShouldBeLessThanOrEqualTo(found.Value);
            found.Bound.ShouldBeLessThanOrEqualTo(sampled + 1e-6, $"seed {seed}");
            if (!found.BudgetSpent) found.Value.ShouldBeLessThanOrEqualTo(sampled + Tolerance + 1e-6, $"seed {seed}");
        }

        asked.ShouldBeGreaterThan(20);
    }

    [Theory]
    [InlineData(Kind.Bend)]
    [InlineData(Kind.Angle)]
    [InlineData(Kind.Near)]
    public void A_bound_with_too_little_curvature_is_found_out(Kind kind)
    {
        int broken = 0;
        for (ulong seed = 7000; seed < 7120; seed++)
        {
            SweepCase pair = RandomCases.Draw(seed, linkages: false);
            if (Question.Of(kind, pair, seed) is not { } question) continue;
            Extreme found = question.Least(new AlteredMotion(pair.System) { CurvatureFactor = 0 });
            if (found.Grade == Grade.Sampled || found.Bound > question.Sampled(pair, seed) + 1e-6) broken++;
        }

        broken.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void What_is_held_at_a_stop_is_bounded_there_alone()
    {
        // Two slides: one to a stop that gives 1 mm, the other free; the near place of the second body goes with both.
        var stop = new LongestStop("strap", 0, new(0, 0, 500), 1, Vector3d.Zero, 560);
        FormulaMotion both = new(
            new PoseBox([new("travel", false, -100, 100), new("aside", false, -30, 50)]),
            [(0, [new Move.Slide(Vector3d.UnitZ, [1, 0])]), (1, [new Move.Slide(Vector3d.UnitY, [0, 1])])], [stop]);
        var held = new PoseSubspace(both, [], [stop, HeldStop.Of(stop, 1)]);

        Extreme longest = Sweep.LongestChord(held, 0, new(0, 0, -400), 2, Vector3d.Zero, Settings);
        Extreme everywhere = Sweep.LongestChord(both, 0, new(0, 0, -400), 2, Vector3d.Zero, Settings);

        longest.Value.ShouldBe(Math.Sqrt((341 * 341) + (50 * 50)), 0.3);
        longest.Bound.ShouldBeInRange(longest.Value, longest.Value + 0.3);
        everywhere.Value.ShouldBe(Math.Sqrt((500 * 500) + (50 * 50)), 0.1);
    }

    [Fact]
    public void A_kept_coordinate_leaves_the_others()
    {
        FormulaMotion both = new(
            new PoseBox([new("travel", false, -100, 100), new("aside", false, -30, 50)]),
            [(0, [new Move.Slide(Vector3d.UnitZ, [1, 0])]), (1, [new Move.Slide(Vector3d.UnitY, [0, 1])])], []);
        var slice = new PoseSubspace(both, [new HeldCoordinate(0, 17)], []);
        var point = new PoseSubspace(both, [new HeldCoordinate(0, 17), new HeldCoordinate(1, -7)], []);

        Extreme longest = Sweep.LongestChord(slice, 0, Vector3d.Zero, 2, Vector3d.Zero, Settings);
        Extreme only = Sweep.LongestChord(point, 0, Vector3d.Zero, 2, Vector3d.Zero, Settings);

        longest.Value.ShouldBe(Math.Sqrt((17 * 17) + (50 * 50)), 1e-6);
        slice.Full(longest.Basins[0].Pose).ShouldBe([17, 50]);
        only.Value.ShouldBe(Math.Sqrt((17 * 17) + (7 * 7)), 1e-9);
        only.Bound.ShouldBe(only.Value, 1e-4);
        point.Full(only.Basins[0].Pose).ShouldBe([17, -7]);
    }

    [Fact]
    public void A_set_without_a_reachable_pose_is_proved_empty()
    {
        var far = new ShortestStop("far", 0, Vector3d.Zero, 1, Vector3d.Zero, 500);
        FormulaMotion slider = new(new PoseBox([new("travel", false, -100, 100)]), [(0, [new Move.Slide(Vector3d.UnitZ, [1])])], []);

        Sweep.LongestChord(new PoseSubspace(slider, [], [far]), 0, Vector3d.Zero, 1, Vector3d.Zero, Settings).IsProvedEmpty.ShouldBeTrue();
        Sweep.LongestChord(slider, 0, Vector3d.Zero, 1, Vector3d.Zero, Settings).IsProvedEmpty.ShouldBeFalse();
    }

    [Theory]
    [InlineData(Kind.Bend)]
    [InlineData(Kind.Angle)]
    [InlineData(Kind.Near)]
    public void No_pose_of_a_cell_lies_below_its_bound_and_broken_bounds_are_found_out(Kind kind)
    {
        Broken(kind, 1, false, 40).ShouldBe(0);
        Broken(kind, 0.3, false, 120).ShouldBeGreaterThan(0);
        Broken(kind, 1, true, 120).ShouldBeGreaterThan(0);
    }

    // Cells in which a pose lies below the bound, with less curvature or without one corner if so asked.
    private static int Broken(Kind kind, double curvatureFactor, bool forgetsCorner, int cases)
    {
        int broken = 0;
        for (ulong seed = 9000; seed < 9000 + (ulong)Long.Times(cases); seed++)
        {
            SweepCase pair = RandomCases.Draw(seed, linkages: false);
            if (Question.Of(kind, pair, seed) is not { } question) continue;
            var random = new SplitMix64(seed ^ 0xCE11);
            IMovingSystem asked = new AlteredMotion(pair.System) { CurvatureFactor = curvatureFactor };
            for (int i = 0; i < 8; i++)
            {
                PoseBox box = pair.System.Box;
                DyadicCell? cell = i % 2 == 0
                    ? CellAim.Anywhere(random, box.Dimensions)
                    : CellAim.AtBottom(random, box, pose => question.At(pair.System.At(pose.AsSpan())), 4);
                if (cell is { } found && question.Bound(asked, found, forgetsCorner) is { } bound && question.SampledIn(pair.System, found, random) < bound - 1e-7) broken++;
            }
        }

        return broken;
    }

    private static double Degrees(double rad) => rad * 180 / Math.PI;

    public enum Kind
    {
        Bend,
        Angle,
        Near,
    }

    /// <summary>What is made least, by the sweep and pose by pose.</summary>
    private sealed record Question(Func<IMovingSystem, Extreme> Least, Func<ISweepObjective> Objective, Func<SolvedPose, double> At)
    {
        // Null for a cell that is out of reach.
        public double? Bound(IMovingSystem system, in DyadicCell cell, bool forgetsCorner)
        {
            ISweepObjective objective = Objective();
            var loader = new CellLoader(system, objective);
            if (loader.Load(cell) != LoadResult.Loaded) return null;
            int last = loader.Geometry.CornerCount - 1;
            if (forgetsCorner)
                foreach (TrackMotion track in loader.Geometry.Tracks) track.Corners[last] = track.Corners[last ^ 1];
            var outcome = new CellOutcome();
            outcome.Clear();
            objective.Examine(loader.Geometry, objective.Root, double.PositiveInfinity, outcome);
            return Math.Min(outcome.Bound, outcome.Settled);
        }

        public double SampledIn(IMovingSystem system, in DyadicCell cell, SplitMix64 random)
        {
            (double[] low, double[] high) = CellAim.Corners(system.Box, cell);
            var space = new ReachableSpace(system);
            double least = double.PositiveInfinity;
            for (int i = 0; i < 60; i++)
            {
                double[] pose = [.. low.Zip(high, (a, b) => a + ((b - a) * Math.Clamp(random.In(-0.3, 1.3), 0, 1)))];
                SolvedPose at = system.At(pose.AsSpan());
                if (space.LeastReserve(at) >= 0) least = Math.Min(least, At(at));
            }

            return least;
        }

        public static Question? Of(Kind kind, SweepCase pair, ulong seed)
        {
            var random = new SplitMix64(seed * 7919);
            (int a, int b) = (pair.FirstBody, pair.SecondBody);
            Vector3d from = pair.First.Anchors[0], to = pair.Second.Anchors[0];
            RigidMotion middle = pair.System.At(DyadicPose.Center(pair.System.Box.Dimensions)).Relative(a, b);
            Vector3d line = middle.Apply(to) - from;
            if (line.Length < 60) return null;
            Vector3d axis = (line.NormalizedOr(Vector3d.UnitX) + (0.7 * random.UnitVector())).NormalizedOr(Vector3d.UnitX);
            SweptVector vector = SweptVector.Between(a, from, b, to);
            Vector3d Now(SolvedPose at) => at.Relative(a, b).Apply(to) - from;
            switch (kind)
            {
                case Kind.Bend:
                    return new Question(
                        s => Negated(VectorSweep.LargestBend(s, a, axis, from, vector, Settings)),
                        () => new BendObjective(a, axis, from, vector),
                        p => -Math.Min(90, Degrees(Math.Acos(Math.Clamp(Vector3d.Dot(axis, Now(p).NormalizedOr(axis)), -1, 1)))));
                case Kind.Angle:
                    Vector3d across = axis.AnyPerpendicular().NormalizedOr(Vector3d.UnitY), turned = pair.Second.Anchors[0].AnyPerpendicular();
                    SweptVector fixedOne = SweptVector.Fixed(b, turned, to);
                    Vector3d start = middle.ApplyToDirection(turned.NormalizedOr(Vector3d.UnitX)), side = start.AnyPerpendicular().NormalizedOr(Vector3d.UnitY);
                    PlaneAngle one = new(1, vector, axis, across), two = new(-0.6, fixedOne, start, side);
                    return new Question(
                        s => VectorSweep.LeastAngle(s, a, [one, two], from, Settings),
                        () => new PlaneAngleObjective(a, [one, two], from),
                        p => Degrees(Math.Atan2(Vector3d.Dot(across, Now(p)), Vector3d.Dot(axis, Now(p))))
                            - (0.6 * Degrees(Math.Atan2(Vector3d.Dot(side, Turned(p)), Vector3d.Dot(start, Turned(p))))));

                    Vector3d Turned(SolvedPose p) => p.Relative(a, b).ApplyToDirection(turned.NormalizedOr(Vector3d.UnitX));
                default:
                    return new Question(s => VectorSweep.ShortestChord(s, a, from, b, to, Settings), () => new NearObjective(a, from, vector), p => Now(p).Length);
            }
        }

        public double Sampled(SweepCase pair, ulong seed)
        {
            var random = new SplitMix64(seed);
            var space = new ReachableSpace(pair.System);
            double least = double.PositiveInfinity;
            for (int i = 0; i < 1500; i++)
            {
                double[] pose = [.. pair.System.Box.Coordinates.Select(c => Math.Clamp(random.In(c.Low - (0.1 * (c.High - c.Low)), c.High + (0.1 * (c.High - c.Low))), c.Low, c.High))];
                SolvedPose at = pair.System.At(pose.AsSpan());
                if (at.IsSolved && space.LeastReserve(at) >= 0) least = Math.Min(least, At(at));
            }

            return least;
        }

        private static Extreme Negated(Extreme most) => most with { Value = -most.Value, Bound = -most.Bound };
    }
}
