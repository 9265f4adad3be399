using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Tests.Oracle;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Tests;

/// <summary>The fixture's travel table, against an axle solved by another road.</summary>
public sealed class TravelTableTests
{
    // The fixture's shocks and stops: 520 mm open and 3 mm of bushing at each end; 75 mm of rubber that gives half.
    private const double OpenMm = 526, CrushedMm = 37.5;

    private static readonly Lazy<InspectionResult> Shared = new(() => OneLine.Inspect(OneLine.Vehicle()));

    private static TravelTable Table => Shared.Value.Travel.Single();

    [Fact]
    public void With_the_left_wheel_up_and_the_right_hanging_both_hubs_stand_where_brute_force_finds_them()
    {
        var axle = new IndependentAxle();
        double right = 0;
        // For each height of the left hub the right one hangs until its shock is open; the left one rises until its stop is crushed.
        double left = Root(0, 200, l =>
        {
            right = Root(-250, 0, r => OpenMm - ShockRight(axle, l, r));
            axle.Solve(l, right).ShouldBeTrue();
            return axle.Place([-606, 455, -345])[2] - (-118 - CrushedMm);
        });

        Value("articulated-left-up", "left.travel").ShouldBe(left, 1e-5);
        Value("articulated-left-up", "right.travel").ShouldBe(right, 1e-5);
        Value("articulated-left-up", "rear-shock-right.length").ShouldBe(OpenMm, 1e-6);
        Row("articulated-left-up").EndedBy.Select(e => e.Words).Order().ShouldBe(["Left rear bump stop crushed", "Right rear shock at full length"]);
    }

    [Fact]
    public void With_one_wheel_hanging_alone_its_shock_is_open()
    {
        var axle = new IndependentAxle();
        double right = Root(-250, 0, r => OpenMm - ShockRight(axle, 0, r));

        Value("right-droop", "right.travel").ShouldBe(right, 1e-6);
        Value("right-droop", "left.travel").ShouldBe(0);
        Value("right-droop", "right.hub-to-fender").ShouldBe(641 - right, 1e-6);
    }

    [Fact]
    public void Camber_toe_and_the_axle_s_place_are_those_of_the_hubs_found_by_the_other_road()
    {
        double left = Value("articulated-left-up", "left.travel"), right = Value("articulated-left-up", "right.travel");
        var axle = new IndependentAxle();
        axle.Solve(0, 0).ShouldBeTrue();
        (double[] rideLeft, double[] rideRight) = (axle.Place([-612, 738, -402]), axle.Place([-612, -738, -404]));
        axle.Solve(left, right).ShouldBeTrue();
        (double[] nowLeft, double[] nowRight) = (axle.Place([-612, 738, -402]), axle.Place([-612, -738, -404]));
        double[] across = [.. nowLeft.Zip(nowRight, (a, b) => a - b)];
        double length = Math.Sqrt(across.Sum(c => c * c));

        Value("articulated-left-up", "left.camber").ShouldBe(-Degrees(Math.Asin(across[2] / length)), 1e-7);
        Value("articulated-left-up", "left.toe").ShouldBe(Degrees(Math.Atan2(across[0], across[1])), 1e-7);
        Value("articulated-left-up", "axle.shift").ShouldBe((nowLeft[1] + nowRight[1] - rideLeft[1] - rideRight[1]) / 2, 1e-6);
        Value("articulated-left-up", "axle.forward").ShouldBe((nowLeft[0] + nowRight[0] - rideLeft[0] - rideRight[0]) / 2, 1e-6);
    }

    [Fact]
    public void The_stops_on_the_way_up_are_met_in_the_order_in_which_the_other_road_meets_them()
    {
        TravelPath up = Table.Paths.Single(p => p.Way == "both-up");
        var axle = new IndependentAxle();

        double left = Root(0, 200, z => Rise([-606, 455, -345], z)), right = Root(0, 200, z => Rise([-606, -455, -347], z));

        up.EndsWithoutStop.ShouldBeFalse();
        up.Met[0].Words.ShouldBe("Left rear bump stop crushed");
        up.Met[0].At.ShouldBe(left, 1e-6);
        up.Met[1].At.ShouldBe(right, 1e-6);
        up.Met.Select(m => m.At).ShouldBeInOrder();

        double Rise(double[] pad, double z)
        {
            axle.Solve(z, z).ShouldBeTrue();
            return axle.Place(pad)[2] - (-118 - CrushedMm);
        }
    }

    [Fact]
    public void Every_row_has_a_value_for_every_column_and_ride_height_is_zero()
    {
        Table.Rows.ShouldAllBe(r => r.Answer == "reached" && r.Values.Length == Table.Columns.Length && r.Values.All(v => v != null));
        Table.Rows[0].Pose.ShouldBe("ride-height");
        foreach (string column in new[] { "left.travel", "right.travel", "axle.shift", "axle.forward", "axle.yaw", "axle.tilt" }) Value("ride-height", column).ShouldBe(0, 1e-9);
        Value("ride-height", "left.hub-to-fender").ShouldBe(640);
        Table.Columns.Select(c => c.Id).ShouldBeUnique();
        Shared.Value.NotInspected.ShouldNotContain(i => i.What.Contains("beyond this stop", StringComparison.Ordinal));
    }

    [Fact]
    public void No_pose_of_the_table_ends_short_of_what_the_sweep_calls_the_farthest()
    {
        foreach (ReachCard card in Shared.Value.Reach)
        {
            string column = card.Coordinate.Split('.')[1] + ".travel";
            double[] travels = [.. Table.Rows.Select(r => Value(r.Pose, column))];
            travels.Min().ShouldBe(card.Lowest, 0.01);
            travels.Max().ShouldBe(card.Highest, 0.01);
        }
    }

    [Fact]
    public void A_shock_that_is_longer_at_ride_height_than_it_can_be_is_told_before_everything_that_was_not_inspected()
    {
        // 417.7 mm at ride height; open at 407 and 6 mm of bushings: 4.7 mm too long.
        Vehicle vehicle = OneLine.Vehicle();
        vehicle = vehicle.With(p => p.Path == "parts/rear-shock-left/open" ? p with { ValueMm = 407 } : p);

        InspectionResult result = OneLine.Inspect(vehicle);

        NotInspectedItem first = result.NotInspected[0];
        first.What.ShouldBe("At ride height the rear axle already stands 5 mm (3/16 in) beyond this stop: Left rear shock at full length");
        first.Why.ShouldStartWith("the readings contradict each other");
        TravelRow ride = result.Travel.Single().Rows[0];
        ride.Answer.ShouldBe("stopped");
        ride.Passed.Single().BeyondMm.ShouldBe(417.722621 - 413, 1e-5);
        result.Travel.Single().Rows.Single(r => r.Pose == "full-bump").Answer.ShouldBe("reached");
    }

    [Fact]
    public void Where_no_stop_is_in_the_file_the_table_says_so()
    {
        InspectionResult result = OneLine.Inspect(OneLine.Vehicle().Without("rear-bump-stop-left", "rear-bump-stop-right", "rear-shock-left", "rear-shock-right"));

        ImmutableArray<TravelEnd> ends = result.Travel.Single().Rows.Single(r => r.Pose == "full-bump").EndedBy;
        ends.ShouldAllBe(e => !e.IsStop && e.Words == "no stop in the file: the travel looked at ends here");
        ends.Length.ShouldBe(2);
        result.Travel.Single().Paths.ShouldAllBe(p => p.EndsWithoutStop);
    }

    private static double ShockRight(IndependentAxle axle, double left, double right)
    {
        axle.Solve(left, right).ShouldBeTrue();
        return IndependentAxle.Distance([-700, -400, 60], axle.Place([-660, -470, -457]));
    }

    private static double Degrees(double rad) => rad * 180 / Math.PI;

    private static TravelRow Row(string pose) => Table.Rows.Single(r => r.Pose == pose);

    private static double Value(string pose, string column) => Row(pose).Values[Table.Columns.Select(c => c.Id).ToList().IndexOf(column)].ShouldNotBeNull();

    // Where a function that rises through zero does so.
    private static double Root(double low, double high, Func<double, double> function)
    {
        for (int k = 0; k < 60; k++)
        {
            double middle = (low + high) / 2;
            if (function(middle) < 0) low = middle;
            else high = middle;
        }

        return low;
    }
}
