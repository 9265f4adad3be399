using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities.Preloads;
using ClearanceCheck.Quantities.Reserves;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Quantities.Slack;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Tests;

/// <summary>
/// Pose sets on an axle with straps and bump stops 400 mm beside the middle: a strap is taut 60 mm below ride height and a stop crushed 80 mm
/// above, and hubs 700 mm out go farther than either when one side is up and the other down.
/// </summary>
public sealed class PoseSetTests
{
    [Theory]
    // With one side up 80 and the other down 60 the line through both is 10 up in the middle and 70 more for each 400 mm: a hub 112.5 mm down.
    [InlineData(PoseSet.AllPoses, 112.5)]
    [InlineData(PoseSet.Droop, 112.5)]
    [InlineData(PoseSet.Articulated, 112.5)]
    [InlineData(PoseSet.Bump, 112.5)]
    [InlineData(PoseSet.FullDroop, 60)]
    [InlineData(PoseSet.FullBump, -80)]
    [InlineData(PoseSet.RideHeight, 0)]
    public void A_hose_beside_the_hub_is_longest_where_the_set_lets_the_hub_down(PoseSet set, double lowest)
    {
        (ByHand hand, Part hose) = Stopped(700);

        Measurement measured = new HoseSlackQuantity().Measure(new MeasureRequest(hand.Motion(), hose, null, double.PositiveInfinity) { Over = set });

        measured.NotEvaluated.ShouldBeNull();
        double chord = 500 / (1 + (measured.Value / 100)), bound = 500 / (1 + (measured.Bound / 100));
        // A pose within 0.5 mm of a stop counts as on it, which the hub feels 700/400 times; rods of 12 m and the roll take a little.
        chord.ShouldBe(240 + lowest, 2.5);
        bound.ShouldBeInRange(chord, chord + 2.5);
        measured.Places[0].EndsAtNoStop.ShouldBeFalse();
    }

    [Theory]
    [InlineData(PoseSet.Droop, 60)]
    [InlineData(PoseSet.Articulated, -10)]
    [InlineData(PoseSet.Bump, -10)]
    public void A_hose_in_the_middle_tells_sets_apart(PoseSet set, double lowest)
    {
        (ByHand hand, Part hose) = Stopped(0);

        Measurement measured = new HoseSlackQuantity().Measure(new MeasureRequest(hand.Motion(), hose, null, double.PositiveInfinity) { Over = set });

        (500 / (1 + (measured.Value / 100))).ShouldBe(240 + lowest, 1.5);
    }

    [Fact]
    public void What_is_found_on_a_stop_is_as_uncertain_as_the_stop()
    {
        (ByHand hand, Part hose) = Stopped(0);

        Measurement measured = new HoseSlackQuantity().Measure(new MeasureRequest(hand.Motion(), hose, null, double.PositiveInfinity) { Over = PoseSet.FullDroop });

        // 500 / 300 mm: each strap's length, typed within 6, carries half of the middle's height.
        double perMm = 100 * 500 / (300.0 * 300.0);
        measured.Places[0].StandardUncertainty.ShouldBe(perMm * ByHand.U(6) * Math.Sqrt(0.5), 0.05);
        measured.Places[0].ActiveStops.ShouldBe(["left-strap taut", "right-strap taut"]);
    }

    [Fact]
    public void Without_a_stop_the_end_of_the_travel_looked_at_stands_for_it_and_is_told()
    {
        var hand = new ByHand { Limit = 60 };
        Part hose = Hose(hand, 0);

        Measurement measured = new HoseSlackQuantity().Measure(new MeasureRequest(hand.Motion(), hose, null, double.PositiveInfinity) { Over = PoseSet.FullDroop });

        (500 / (1 + (measured.Value / 100))).ShouldBe(300, 0.1);
        measured.Places[0].EndsAtNoStop.ShouldBeTrue();
    }

    [Theory]
    [InlineData(300, 20)]
    [InlineData(350, -30)]
    public void A_shock_keeps_what_the_bump_stops_leave_it(double closed, double reserve)
    {
        (ByHand hand, _) = Stopped(0, shockClosed: closed);
        VehicleMotion motion = hand.Motion();
        Part shock = motion.Vehicle.Parts.Single(p => p.Id == "left-shock");

        Measurement measured = new ReserveQuantity().Measure(new MeasureRequest(motion, shock, null, double.PositiveInfinity));

        // 400 mm at ride height over the stop that lets its side up by 80.
        measured.NotEvaluated.ShouldBeNull();
        measured.Value.ShouldBe(reserve, 0.6);
        measured.Bound.ShouldBeInRange(measured.Value - 0.6, measured.Value);
        measured.Places[0].ActiveStops.ShouldContain("left-bump crushed");
    }

    [Fact]
    public void A_shock_that_is_long_enough_for_the_strap_has_reserve()
    {
        (ByHand hand, _) = Stopped(0, shockClosed: 300);
        VehicleMotion motion = hand.Motion();
        Part shock = motion.Vehicle.Parts.Single(p => p.Id == "left-shock");

        Measurement measured = new OpenReserveQuantity().Measure(new MeasureRequest(motion, shock, null, double.PositiveInfinity));

        // Open 500, and 400 + 60 where the strap is taut.
        measured.Value.ShouldBe(40, 0.6);
        measured.Places[0].ActiveStops.ShouldContain("left-strap taut");
    }

    [Fact]
    public void A_spring_keeps_the_preload_that_its_free_length_leaves()
    {
        (ByHand hand, _) = Stopped(0);
        Part coil = hand.Add("coil", "coil-spring", "rear/axle", new PartForm.Coil(
            new Place("rear/axle", hand.Point(new(0, 0, 0), 0)), new Place(Vehicle.Chassis, hand.Point(new(0, 0, 240), 0)), hand.Length(120, 0), hand.Length(14, 0), 6)
        { FreeLength = hand.Length(320, 2) });

        Measurement measured = new PreloadQuantity().Measure(new MeasureRequest(hand.Motion(), coil, null, double.PositiveInfinity));

        measured.Value.ShouldBe(20, 0.6);
        measured.Bound.ShouldBeInRange(measured.Value - 0.6, measured.Value);
    }

    // Straps taut at 160 mm, 100 mm at ride height; bump stops crushed at 50 mm, 130 mm at ride height.
    private static (ByHand Hand, Part Hose) Stopped(double y, double shockClosed = 0)
    {
        var hand = new ByHand { Limit = 250, RodWithin = 0 };
        Part hose = Hose(hand, y);
        foreach ((string side, double at) in new[] { ("left", 400.0), ("right", -400.0) })
        {
            hand.Add($"{side}-strap", "limit-strap", Vehicle.Chassis, new PartForm.LimitStrap(
                new Place(Vehicle.Chassis, hand.Point(new(0, at, 100), 0)), new Place("rear/axle", hand.Point(new(0, at, 0), 0)), hand.Length(160, 6), hand.Length(0, 0)));
            hand.Add($"{side}-bump", "bump-stop", Vehicle.Chassis, new PartForm.BumpStop(
                new Place(Vehicle.Chassis, hand.Point(new(0, at, 130), 0)), new Place("rear/axle", hand.Point(new(0, at, 0), 0)), hand.Length(80, 0), hand.Length(30, 0)));
            if (shockClosed > 0)
                hand.Add($"{side}-shock", "shock", Vehicle.Chassis, new PartForm.Shock(
                    new Place(Vehicle.Chassis, hand.Point(new(0, at, 400), 0)), new Place("rear/axle", hand.Point(new(0, at, 0), 0)), hand.Length(shockClosed, 0), hand.Length(500, 0), null));
        }

        return (hand, hose);
    }

    private static Part Hose(ByHand hand, double y) => hand.Add("hose", "brake-hose", Vehicle.Chassis, new PartForm.Hose(
        new Place(Vehicle.Chassis, hand.Point(new(0, y, 240), 0)), new Place("rear/axle", hand.Point(new(0, y, 0), 0)), hand.Length(500, 0), hand.Length(10, 0)));
}
