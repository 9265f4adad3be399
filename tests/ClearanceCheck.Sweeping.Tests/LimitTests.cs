using ClearanceCheck.Sweeping.Tests.Cases;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Tests.Motions;

namespace ClearanceCheck.Sweeping.Tests;

/// <summary>Where a search ends early, and what it says then.</summary>
public sealed class LimitTests
{
    private static readonly CapsuleChain Line = new(ReferenceLine.Points, ReferenceLine.RadiusMm);
    private static readonly Revolved Tire = SolidDisc.Of(ReferenceSweepMotion.TireCentre, Vector3d.UnitY, ReferenceSweepMotion.TireRadiusMm, ReferenceSweepMotion.TireHalfWidthMm);
    private static readonly RigidMotion Nowhere = RigidMotion.Identity with { Translation = new(double.NaN, 0, 0) };

    // A ball that slides 100 up and down over another: the gap is 300 + q - 30.
    private static readonly FormulaMotion Slider =
        new(new PoseBox([new("travel", false, -100, 100)]), [(0, [new Move.Slide(Vector3d.UnitZ, [1])])], []);

    [Fact]
    public void A_pair_beyond_the_ceiling_is_refused_at_first_sight()
    {
        var motion = new ReferenceSweepMotion();
        CapsuleChain far = new(ReferenceLine.Points.Select(p => p + new Vector3d(-2500, 0, 0)), ReferenceLine.RadiusMm);

        Extreme least = Sweep.LeastGap(motion, 0, far, 1, Tire, new SweepSettings { CeilingMm = 30 });

        least.RefusedAtRoot.ShouldBeTrue();
        least.Cells.ShouldBe(1);
        least.Bound.ShouldBeGreaterThanOrEqualTo(30);
        least.Value.ShouldBeGreaterThan(least.Bound);
        motion.Solves.ShouldBeLessThan(40);
    }

    [Fact]
    public void A_pair_that_comes_near_the_ceiling_is_not_refused()
    {
        Extreme least = Sweep.LeastGap(new ReferenceSweepMotion(), 0, Line, 1, Tire, new SweepSettings { CeilingMm = 30 });

        least.RefusedAtRoot.ShouldBeFalse();
        least.Value.ShouldBe(6.43005, 2e-3);
        least.Bound.ShouldBeInRange(6.33, 6.43005);
    }

    [Fact]
    public void A_ceiling_ends_the_search_with_a_bound_at_the_ceiling_or_above()
    {
        Extreme least = Sweep.LeastGap(new ReferenceSweepMotion(), 0, Line, 1, Tire, new SweepSettings { CeilingMm = 4 });

        least.RefusedAtRoot.ShouldBeFalse();
        least.Bound.ShouldBeInRange(4, 6.43005);
        least.BudgetSpent.ShouldBeFalse();
        least.Cells.ShouldBeLessThan(575);
    }

    [Fact]
    public void A_spent_budget_leaves_a_looser_bound_that_holds()
    {
        double before = double.NegativeInfinity;
        foreach (int budget in new[] { 1, 10, 100, 300 })
        {
            Extreme least = Sweep.LeastGap(new ReferenceSweepMotion(), 0, Line, 1, Tire, new SweepSettings { MaximumCells = budget });

            least.BudgetSpent.ShouldBeTrue();
            least.Cells.ShouldBe(budget);
            least.Bound.ShouldBeInRange(before, 6.43005);
            before = least.Bound;
        }
    }

    [Fact]
    public void A_search_ends_at_the_floor()
    {
        CapsuleChain through = new(ReferenceLine.Points.Select(p => p + new Vector3d(100, 60, 0)), ReferenceLine.RadiusMm);

        Extreme least = Sweep.LeastGap(new ReferenceSweepMotion(), 0, through, 1, Tire, new SweepSettings { FloorMm = 0 });

        least.Value.ShouldBeLessThan(0);
        least.Bound.ShouldBeLessThanOrEqualTo(least.Value);
        least.Cells.ShouldBeLessThan(10);
    }

    [Fact]
    public void A_region_that_could_not_be_solved_is_reported()
    {
        Extreme least = Run(new AlteredMotion(Slider) { Pose = q => q[0] < -60 ? AlteredMotion.NotSolved : null });

        least.UnsolvedRegions.ShouldBeGreaterThan(0);
        // What is known speaks of the rest only, down to the smallest cells beside the hole.
        least.Value.ShouldBeGreaterThan(300 - 60 - 30 - 1e-6);
        least.Bound.ShouldBeLessThanOrEqualTo(least.Value);
    }

    [Fact]
    public void A_corner_of_two_coordinates_that_could_not_be_solved_is_reported()
    {
        var two = new FormulaMotion(
            new PoseBox([new("a", false, -100, 100), new("b", true, -0.3, 0.3)]),
            [(0, [new Move.Slide(Vector3d.UnitZ, [1, 0]), new Move.Turn(new(0, 200, 0), Vector3d.UnitX, [0, 1])])], []);

        Extreme least = Run(new AlteredMotion(two) { Pose = q => q[0] < -90 && q[1] > 0.27 ? AlteredMotion.NotSolved : null });

        least.UnsolvedRegions.ShouldBeInRange(1, 100);
    }

    [Fact]
    public void A_motion_that_could_not_be_solved_anywhere_is_never_clear()
    {
        Extreme least = Run(new AlteredMotion(Slider) { Pose = _ => AlteredMotion.NotSolved });

        least.UnsolvedRegions.ShouldBeGreaterThan(0);
        least.Value.ShouldBe(double.NaN);
        least.Bound.ShouldBe(double.NegativeInfinity);
    }

    [Fact]
    public void A_region_without_curvature_is_reported()
    {
        Extreme least = Run(new AlteredMotion(Slider) { IsUnknown = cell => cell.Low[0] < DyadicPose.Denominator / 8 });

        least.UnsolvedRegions.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void A_motion_without_any_curvature_has_no_bound()
    {
        Extreme least = Run(new AlteredMotion(Slider) { IsUnknown = _ => true });

        least.UnsolvedRegions.ShouldBeGreaterThan(0);
        least.Value.ShouldBe(170, 1e-3);
        least.Bound.ShouldBe(double.NegativeInfinity);
    }

    [Fact]
    public void A_curvature_that_is_no_number_counts_as_none()
    {
        Extreme least = Run(new AlteredMotion(Slider) { CurvatureFactor = double.NaN });

        least.UnsolvedRegions.ShouldBeGreaterThan(0);
        least.Bound.ShouldBe(double.NegativeInfinity);
    }

    [Fact]
    public void A_region_that_is_proved_to_be_out_of_reach_is_dropped()
    {
        var half = new AlteredMotion(Slider)
        {
            Pose = q => q[0] < 0 ? new SolvedPose(PoseAnswerKind.Unreachable, default) : null,
            IsOut = cell => cell.Low[0] + cell.Size[0] <= DyadicPose.Denominator / 2,
        };

        Extreme least = Run(half);

        least.UnsolvedRegions.ShouldBe(0);
        least.Value.ShouldBe(270, 1e-3);
        least.Bound.ShouldBeInRange(269.9, 270);
    }

    [Fact]
    public void A_motion_that_is_out_of_reach_everywhere_is_never_clear()
    {
        Extreme least = Run(new AlteredMotion(Slider) { Pose = _ => new SolvedPose(PoseAnswerKind.Unreachable, default), IsOut = _ => true });

        least.Value.ShouldBe(double.NaN);
        least.Bound.ShouldBe(double.NegativeInfinity);
        least.RefusedAtRoot.ShouldBeFalse();
    }

    [Fact]
    public void Poses_that_are_no_numbers_count_as_not_solved()
    {
        SolvedPose broken = new(PoseAnswerKind.Solved, new[] { RigidMotion.Identity, Nowhere });

        Extreme some = Run(new AlteredMotion(Slider) { Pose = q => q[0] < -60 ? broken : null });
        Extreme all = Run(new AlteredMotion(Slider) { Pose = _ => broken });

        some.UnsolvedRegions.ShouldBeGreaterThan(0);
        some.Value.ShouldBeGreaterThan(209);
        all.UnsolvedRegions.ShouldBeGreaterThan(0);
        all.Value.ShouldBe(double.NaN);
        all.Bound.ShouldBe(double.NegativeInfinity);
    }

    [Fact]
    public void The_gap_in_a_pose_that_is_no_number_is_no_number() =>
        Sweep.GapAt(Line, Tire, Nowhere).Gap.ShouldBe(double.NaN);

    private static Extreme Run(IMovingSystem system) => Sweep.LeastGap(
        system, 0, new CapsuleChain([new(0, 0, -300)], 10), 1, new CapsuleChain([Vector3d.Zero], 20), new SweepSettings());
}
