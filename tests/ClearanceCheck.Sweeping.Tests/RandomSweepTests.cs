using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Tests.Cases;
using ClearanceCheck.Sweeping.Tests.Motions;

namespace ClearanceCheck.Sweeping.Tests;

/// <summary>Whole sweeps of random mechanisms against samples that go down from the best.</summary>
public sealed class RandomSweepTests(RandomSweeps sweeps) : IClassFixture<RandomSweeps>
{
    private const double RoundingMm = 1e-6;

    [Fact]
    public void No_sampled_pose_lies_below_the_bound()
    {
        foreach ((_, Extreme extreme, double proved, double sampled) in sweeps.All)
        {
            extreme.Bound.ShouldBeLessThanOrEqualTo(sampled + RoundingMm);
            proved.ShouldBeLessThanOrEqualTo(sampled + RoundingMm);
            if (double.IsNaN(extreme.Value)) extreme.Bound.ShouldBe(double.NegativeInfinity);
            else extreme.Bound.ShouldBeLessThanOrEqualTo(extreme.Value);
            extreme.Grade.ShouldNotBe(Grade.Sampled);
        }
    }

    [Fact]
    public void A_search_that_was_not_cut_short_ends_within_its_tolerance_of_the_least_sample()
    {
        int closed = 0;
        foreach ((_, Extreme extreme, _, double sampled) in sweeps.All)
        {
            if (extreme.BudgetSpent || double.IsNaN(extreme.Value)) continue;
            closed++;
            (extreme.Value - extreme.Bound).ShouldBeLessThanOrEqualTo(RandomSweeps.ToleranceMm + RoundingMm);
            extreme.Value.ShouldBeLessThanOrEqualTo(sampled + RandomSweeps.ToleranceMm + RoundingMm);
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"no pose found in {sweeps.All.Count(s => double.IsNaN(s.Extreme.Value))}, although there is one in {sweeps.All.Count(s => double.IsNaN(s.Extreme.Value) && double.IsFinite(s.Sampled))}");
        TestContext.Current.TestOutputHelper?.WriteLine($"{closed} of {sweeps.All.Count} closed, {sweeps.All.Count(s => s.Extreme.Value < 0)} overlap, {sweeps.All.Sum(s => s.Extreme.Cells)} cells");
        closed.ShouldBeGreaterThan(sweeps.All.Count * 4 / 5);
    }

    [Fact]
    public void Between_a_quarter_and_a_half_of_the_cases_overlap_and_about_half_have_stops()
    {
        (sweeps.All.Count(s => s.Extreme.Value < 0) / (double)sweeps.All.Count).ShouldBeInRange(0.25, 0.5);
        (sweeps.All.Count(s => s.Case.System.Stops.Length > 0) / (double)sweeps.All.Count).ShouldBeInRange(0.35, 0.65);
    }

    [Fact]
    public void Each_basin_has_its_value_at_its_pose_and_no_stop_passed_by_more_than_the_give()
    {
        foreach ((SweepCase pair, Extreme extreme, _, _) in sweeps.All)
            foreach (Basin basin in extreme.Basins)
            {
                SolvedPose at = pair.System.At(basin.Pose.AsSpan());
                double gap = Sweep.GapAt(new RigidSolid(pair.FirstBody, pair.First), new RigidSolid(pair.SecondBody, pair.Second), at);
                gap.ShouldBe(basin.Value, 1e-9, $"{pair} at {string.Join(", ", basin.Pose)}");
                (basin.Witness.OnFirst - basin.Witness.OnSecond).Length.ShouldBe(Math.Abs(gap), 1e-6);
                new ReachableSpace(pair.System).LeastReserve(at).ShouldBeGreaterThanOrEqualTo(-RandomSweeps.Settings.StopGiveMm);
                for (int k = 0; k < basin.Pose.Length; k++)
                    basin.Pose[k].ShouldBeInRange(pair.System.Box.Coordinates[k].Low, pair.System.Box.Coordinates[k].High);
            }
    }

    [Fact]
    public void Basins_are_sorted_within_reach_and_apart()
    {
        foreach ((SweepCase pair, Extreme extreme, _, _) in sweeps.All)
        {
            if (extreme.Basins.IsEmpty) continue;
            extreme.Basins[0].Value.ShouldBe(extreme.Value);
            for (int i = 1; i < extreme.Basins.Length; i++)
            {
                Basin basin = extreme.Basins[i];
                basin.Value.ShouldBeInRange(extreme.Basins[i - 1].Value, extreme.Value + RandomSweeps.Settings.ReachMm);
                for (int j = 0; j < i; j++) Apart(pair.System.Box, basin, extreme.Basins[j]).ShouldBeTrue();
            }
        }
    }

    [Fact]
    public void A_sweep_with_zero_curvature_is_found_out_by_the_samples_or_by_the_search_itself()
    {
        int bySamples = 0, bySearch = 0;
        foreach ((SweepCase pair, _, _, double sampled) in sweeps.All.Take(110))
        {
            Extreme extreme = pair.With(new AlteredMotion(pair.System) { CurvatureFactor = 0 }).LeastGap(RandomSweeps.Settings);
            if (extreme.Bound > sampled + RoundingMm) bySamples++;
            if (extreme.Grade == Grade.Sampled) bySearch++;
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"found out by samples {bySamples}, by the search {bySearch}");
        bySearch.ShouldBeGreaterThan(1);
    }

    private static bool Apart(PoseBox box, Basin a, Basin b)
    {
        for (int k = 0; k < a.Pose.Length; k++)
            if (Math.Abs(a.Pose[k] - b.Pose[k]) > 0.005 * box.Range(k)) return true;
        return false;
    }
}
