using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Tests.Motions;

namespace ClearanceCheck.Sweeping.Tests;

/// <summary>Bounds of single cells, worked out by hand.</summary>
public sealed class CellGeometryTests
{
    private const double SlackMm = 1e-5;

    [Fact]
    public void A_bound_is_the_lowest_corner_less_the_remainders()
    {
        var cell = new CellGeometry(2, 0, 0);

        Bound(cell, [5, 3, 8, 4], [0.5, 0.25]).ShouldBe(2.25, SlackMm);
    }

    [Fact]
    public void A_stop_cancels_the_slope_towards_it()
    {
        // f falls from 10 to -10, the reserve from 1 to -1: at the stop, in the middle, f is 0. Its curvature counts ten times.
        var cell = new CellGeometry(1, 1, 0);
        cell.StopCorners[0] = 1;
        cell.StopCorners[1] = -1;
        cell.StopRemainders[0] = 0.02;

        Bound(cell, [10, -10], [0.5]).ShouldBe(-0.5 - 0.2, 2 * SlackMm);
    }

    [Fact]
    public void A_stop_that_leaves_nothing_of_a_cell_raises_its_bound_beyond_all()
    {
        // Either stop alone lets a part of the cell through, both together nothing.
        var cell = new CellGeometry(1, 2, 0);
        (cell.StopCorners[0], cell.StopCorners[1], cell.StopCorners[2], cell.StopCorners[3]) = (1, -3, -3, 1);

        Bound(cell, [10, -10], [0.5]).ShouldBeGreaterThan(1000);
    }

    [Fact]
    public void Two_functions_are_averaged_with_both_remainders()
    {
        // (1 - m) f + m g has corners +-10 (1 - 2 m) and the remainder 1 + 2 m: best at the half.
        var cell = new CellGeometry(1, 0, 0);
        var loss = new CellLoss(new double[1], new double[1]);

        cell.Bound([-10, 10], [1], [10, -10], [3], loss).ShouldBe(-2, SlackMm);
    }

    [Fact]
    public void The_second_function_may_stand_alone_but_no_more()
    {
        // g is better throughout; f - g times more than one would be a bound of nothing.
        var cell = new CellGeometry(1, 0, 0);
        var loss = new CellLoss(new double[1], new double[1]);

        cell.Bound([-10, -4], [1], [-3, -2], [0.5], loss).ShouldBe(-3.5, SlackMm);
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(1, -1)]
    [InlineData(-1, 1)]
    [InlineData(-1, -1)]
    public void Crossing_pieces_are_bounded_on_whichever_side_the_kernel_looks(int along, int up)
    {
        // The second capsule's axis swings on an arc of 200 that just touches the first's from above or below: never apart by more than -2 r.
        var arm = new FormulaMotion(
            new PoseBox([new("swing", true, -0.3, 0.3)]), [(0, [new Move.Turn(new(0, 0, up * 200), Vector3d.UnitY, [1])])], []);
        var objective = new GapObjective(
            0, new RigidSolid(0, new CapsuleChain([new(-90, 0, 0), new(90, 0, 0)], 6)), new RigidSolid(1, new CapsuleChain([new(0, -70 * along, 0), new(0, 70 * along, 0)], 6)));
        var loader = new CellLoader(arm, objective);
        var outcome = new CellOutcome();
        loader.Load(DyadicCell.Whole(1)).ShouldBe(LoadResult.Loaded);
        outcome.Clear();

        objective.Examine(loader.Geometry, objective.Root, double.PositiveInfinity, outcome);

        outcome.Bound.ShouldBeLessThanOrEqualTo(-12);
        outcome.CentreValue.ShouldBe(-12, 1e-9);
    }

    [Fact]
    public void The_loss_says_which_coordinate_costs_the_bound()
    {
        var cell = new CellGeometry(2, 0, 0);
        double[] loss = new double[2];

        cell.Bound([0, 4, 1, 5], [0.5, 0.25], new CellLoss(loss, new double[2]));

        loss[0].ShouldBe(2 + 0.5, 1e-12);
        loss[1].ShouldBe(0.5 + 0.25, 1e-12);
    }

    private static double Bound(CellGeometry cell, double[] corners, double[] remainders) =>
        cell.Bound(corners, remainders, new CellLoss(new double[cell.Dimensions], new double[cell.Dimensions]));
}
