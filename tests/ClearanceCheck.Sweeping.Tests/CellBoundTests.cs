using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Tests.Cases;
using ClearanceCheck.Sweeping.Tests.Motions;

namespace ClearanceCheck.Sweeping.Tests;

/// <summary>No pose of a cell lies below the cell's bound; and each way to break the bound is found out by the same number of cells.</summary>
public sealed class CellBoundTests
{
    private const ulong Formulas = 140;
    private const int CellsPerCase = 12;

    [Fact]
    public void No_pose_of_a_cell_lies_below_its_bound()
    {
        CellProbe probe = Probe(new CellProbe(), system => system);

        TestContext.Current.TestOutputHelper?.WriteLine($"{probe.Cells} cells, {probe.Dropped} out of reach");
        probe.Broken.ShouldBe(0);
        probe.Cells.ShouldBeGreaterThan(1300);
        probe.Dropped.ShouldBeGreaterThan(50);
    }

    [Fact]
    public void No_pose_of_a_cell_of_a_solved_axle_lies_below_its_bound()
    {
        var probe = new CellProbe();
        for (ulong i = 0; i < (ulong)Long.Times(24); i++)
        {
            SweepCase pair = RandomCases.Draw((8 * i) + 7);
            probe.Look(pair, pair.System, i, 5);
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{probe.Cells} cells, {probe.Dropped} out of reach");
        probe.Broken.ShouldBe(0);
        probe.Cells.ShouldBeGreaterThan(60);
    }

    [Fact]
    public void A_curvature_of_three_tenths_is_found_out() =>
        Probe(new CellProbe(), system => new AlteredMotion(system) { CurvatureFactor = 0.3 }).Broken.ShouldBeGreaterThan(0);

    [Fact]
    public void A_curvature_of_zero_is_found_out() =>
        Probe(new CellProbe(), system => new AlteredMotion(system) { CurvatureFactor = 0 }).Broken.ShouldBeGreaterThan(20);

    [Fact]
    public void A_forgotten_corner_is_found_out() =>
        Probe(new CellProbe { ForgetsCorner = true }, system => system).Broken.ShouldBeGreaterThan(20);

    [Fact]
    public void The_curvature_of_another_frame_is_found_out() =>
        Probe(new CellProbe(), system => new AlteredMotion(system) { CurvatureOfTheWorld = true }).Broken.ShouldBeGreaterThan(0);

    [Fact]
    public void No_cell_is_dropped_for_a_stop_that_lets_it_through()
    {
        CellProbe probe = ProbeStops(system => system);

        probe.Broken.ShouldBe(0);
        probe.Cells.ShouldBeGreaterThan(60);
    }

    [Fact]
    public void A_stop_without_its_curvature_is_found_out() => ProbeStops(WithFlatStops).Broken.ShouldBeGreaterThan(10);

    [Fact]
    public void A_zero_curvature_of_a_solved_axle_is_found_out()
    {
        var probe = new CellProbe();
        for (ulong i = 0; i < 24; i++)
        {
            SweepCase pair = RandomCases.Draw((8 * i) + 7);
            probe.Look(pair, new AlteredMotion(pair.System) { CurvatureFactor = 0 }, i, 5);
        }

        probe.Broken.ShouldBeGreaterThan(0);
    }

    private static AlteredMotion WithFlatStops(IMovingSystem system) =>
        new(system) { OtherStops = [.. system.Stops.Select(s => new FlatStop(s))] };

    private static CellProbe ProbeStops(Func<IMovingSystem, IMovingSystem> asked)
    {
        var probe = new CellProbe();
        for (ulong seed = 0; seed < (ulong)Long.Times((int)Formulas); seed++) probe.LookAtStops(RandomCases.Draw(seed, linkages: false), asked, seed);
        TestContext.Current.TestOutputHelper?.WriteLine($"{probe.Broken} of {probe.Cells} cells broken");
        return probe;
    }

    private static CellProbe Probe(CellProbe probe, Func<IMovingSystem, IMovingSystem> asked)
    {
        ulong cases = (ulong)Long.Times((int)Formulas);
        for (ulong seed = 0; seed < cases; seed++)
        {
            SweepCase pair = RandomCases.Draw(seed, linkages: false);
            probe.Look(pair, asked(pair.System), seed, CellsPerCase);
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{probe.Broken} of {probe.Cells} cells broken");
        return probe;
    }
}
