using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Tests.Motions;
using ClearanceCheck.Sweeping.Vectors;

namespace ClearanceCheck.Sweeping.Tests.Vectors;

/// <summary>How far a vector leans along an axis.</summary>
public sealed class LeanTests
{
    private static readonly SweepSettings Settings = new() { ToleranceMm = 0.05, ReachMm = 1, MaximumCells = 6000 };

    [Theory]
    [InlineData(1, 100)]
    [InlineData(-1, 300)]
    public void A_rod_leans_most_towards_its_stud_where_its_far_end_goes_farthest_along_it(int way, double farthest)
    {
        FormulaMotion slider = new(new PoseBox([new("travel", false, -300, 100)]), [(0, [new Move.Slide(Vector3d.UnitZ, [1])])], []);
        var rod = SweptVector.Between(0, Vector3d.Zero, 1, new(800, 0, 0));

        Extreme most = VectorSweep.LargestLean(slider, 0, way * Vector3d.UnitZ, Vector3d.Zero, rod, Settings);

        most.Value.ShouldBe(Math.Atan2(farthest, 800) * 180 / Math.PI, 1e-6);
        most.Bound.ShouldBeInRange(most.Value, most.Value + 0.05);
    }

    [Fact]
    public void A_rod_that_leans_away_all_the_time_leans_least_there()
    {
        FormulaMotion slider = new(new PoseBox([new("travel", false, -300, -50)]), [(0, [new Move.Slide(Vector3d.UnitZ, [1])])], []);

        Extreme most = VectorSweep.LargestLean(slider, 0, Vector3d.UnitZ, Vector3d.Zero, SweptVector.Between(0, Vector3d.Zero, 1, new(800, 0, 0)), Settings);

        most.Value.ShouldBe(-Math.Atan2(50, 800) * 180 / Math.PI, 1e-6);
        most.Bound.ShouldBeInRange(most.Value, most.Value + 0.05);
    }

    [Fact]
    public void A_rod_that_swings_past_its_stud_is_bounded_where_it_leans_most()
    {
        // The end swings about x in a circle of 100 mm: highest in the middle of the range, where no corner is.
        FormulaMotion arm = new(new PoseBox([new("swing", true, -0.5, 0.7)]), [(0, [new Move.Turn(Vector3d.Zero, Vector3d.UnitX, [1])])], []);

        Extreme most = VectorSweep.LargestLean(arm, 0, Vector3d.UnitZ, Vector3d.Zero, SweptVector.Between(0, Vector3d.Zero, 1, new(400, 0, 100)), Settings);

        most.Value.ShouldBe(Math.Atan2(100, 400) * 180 / Math.PI, 1e-4);
        most.Bound.ShouldBeInRange(most.Value, most.Value + 0.05);
    }
}
