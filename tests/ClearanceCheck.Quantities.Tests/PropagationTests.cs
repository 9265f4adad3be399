using ClearanceCheck.Kinematics;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Tests;

/// <summary>Uncertainty worked out by hand: law of propagation (JCGM 100:2008, 5.1.2; from memory) on gaps that hang on a stop.</summary>
public sealed class PropagationTests
{
    [Fact]
    public void A_gap_limited_by_a_bump_stop_hangs_on_every_reading_of_the_stop()
    {
        // A pin points down at the middle of a tube that lies along x at hub height in the centre plane; the pad sits on the same line,
        // so roll changes neither. Gap at the stop: (pin z - 10) - (tube z + 20 + travel), travel = (seat z - height + crush) - pad z.
        //   pin 160, tube 0; seat 130, height 80, crush 30, pad 0: travel 80, gap 150 - 100 = 50 mm.
        var hand = new ByHand();
        Part pin = hand.Add("pin", "brake-line", Vehicle.Chassis, new PartForm.Chain(
            [hand.Point(new(0, 0, 160), 2), hand.Point(new(0, 0, 400), 2)], hand.Length(20, 0.6), []));
        Part tube = hand.Add("tube", "axle-tube", "rear/axle", new PartForm.Chain(
            [hand.Point(new(-100, 0, 0), 3), hand.Point(new(100, 0, 0), 3)], hand.Length(40, 0.8), []));
        hand.Add("stop", "bump-stop", Vehicle.Chassis, new PartForm.BumpStop(
            new Place(Vehicle.Chassis, hand.Point(new(0, 0, 130), 1.5)), new Place("rear/axle", hand.Point(new(50, 0, 0), 2.5)), hand.Length(80, 2), hand.Length(30, 5)));

        Measurement measured = Gap(hand.Motion(), pin, tube);

        measured.Value.ShouldBe(50, 0.02);
        measured.Bound.ShouldBeLessThanOrEqualTo(measured.Value);
        measured.Places[0].ActiveStops.ShouldBe(["stop crushed"]);
        measured.Places[0].EndsAtNoStop.ShouldBeFalse();

        // Pin z counts once, each tube end half, each diameter half; seat, height, crush and pad once each.
        double[] shares = [2, 3 * 0.5, 3 * 0.5, 0.6 * 0.5, 0.8 * 0.5, 1.5, 2, 5, 2.5];
        double expected = Math.Sqrt(shares.Sum(a => ByHand.U(a) * ByHand.U(a)));
        measured.Places[0].StandardUncertainty.ShouldBe(expected, 0.02);
        measured.Places[0].Shares[0].Share.ShouldBe(ByHand.U(5) * ByHand.U(5) / (expected * expected), 0.01);
    }

    [Fact]
    public void A_gap_at_the_end_of_the_travel_looked_at_hangs_on_that_number()
    {
        var hand = new ByHand { Limit = 80 };
        Part pin = hand.Add("pin", "brake-line", Vehicle.Chassis, new PartForm.Chain(
            [hand.Point(new(0, 0, 260), 2), hand.Point(new(0, 0, 400), 2)], hand.Length(20, 0), []));
        Part tube = hand.Add("tube", "axle-tube", "rear/axle", new PartForm.Chain(
            [hand.Point(new(0, 700, 100), 0), hand.Point(new(0, -700, 100), 0)], hand.Length(40, 0), []));

        Measurement measured = Gap(hand.Motion(), pin, tube);

        // Both wheels at the limit of 80 mm, typed within 4: the middle of the tube follows it fully. Hubs within 1 mm shift travel at fixed height:
        // each hub counts half. The pin counts once.
        measured.Value.ShouldBe(50, 0.02);
        double expected = Math.Sqrt(Square(ByHand.U(2)) + Square(ByHand.U(4)));
        measured.Places[0].StandardUncertainty.ShouldBe(expected, 0.05);
        measured.Places[0].ActiveStops.ShouldBe(["end of the travel looked at, rear.left bump", "end of the travel looked at, rear.right bump"]);
        measured.Places[0].EndsAtNoStop.ShouldBeTrue();
    }

    [Fact]
    public void Where_nothing_moves_only_the_two_parts_count()
    {
        var hand = new ByHand();
        Part line = hand.Add("line", "brake-line", Vehicle.Chassis, new PartForm.Chain(
            [hand.Point(new(0, 0, 100), 2), hand.Point(new(0, 0, 300), 2)], hand.Length(10, 0), []));
        Part pipe = hand.Add("pipe", "exhaust-pipe", "exhaust", new PartForm.Chain(
            [hand.Point(new(90, -100, 200), 3), hand.Point(new(90, 100, 200), 3)], hand.Length(60, 0), []));

        Measurement measured = Gap(hand.Motion(), line, pipe);

        // 90 - 5 - 30; the line's two ends and the pipe's two ends count half each in x.
        measured.Value.ShouldBe(55, 1e-9);
        measured.Cells.ShouldBe(0);
        measured.Places[0].StandardUncertainty.ShouldBe(Math.Sqrt((2 * Square(ByHand.U(2) / 2)) + (2 * Square(ByHand.U(3) / 2))), 0.02);
    }

    [Fact]
    public void A_line_is_not_judged_near_its_clips_against_what_rides_on_the_same_body()
    {
        var hand = new ByHand();
        Part line = hand.Add("line", "brake-line", Vehicle.Chassis, new PartForm.Chain(
            [hand.Point(new(0, 0, 100), 2), hand.Point(new(0, 0, 300), 2)], hand.Length(10, 0), [0]));
        Part pipe = hand.Add("pipe", "frame-tube", Vehicle.Chassis, new PartForm.Chain(
            [hand.Point(new(25, -100, 90), 2), hand.Point(new(25, 100, 90), 2)], hand.Length(20, 0), []));

        // Touching the clip's end: 25 - 5 - 10 = 10 mm aside and 10 below. Judged from 30 mm above it: 40 up and 25 aside, less radii.
        Gap(hand.Motion(), line, pipe).Value.ShouldBe(Math.Sqrt((40 * 40) + (25 * 25)) - 15, 1e-9);
    }

    [Fact]
    public void A_clip_to_the_chassis_says_nothing_of_contact_with_the_exhaust()
    {
        var hand = new ByHand();
        Part line = hand.Add("line", "brake-line", Vehicle.Chassis, new PartForm.Chain(
            [hand.Point(new(0, 0, 100), 2), hand.Point(new(0, 0, 300), 2)], hand.Length(10, 0), [0]));
        Part pipe = hand.Add("pipe", "exhaust-pipe", "exhaust", new PartForm.Chain(
            [hand.Point(new(25, -100, 90), 2), hand.Point(new(25, 100, 90), 2)], hand.Length(20, 0), []));

        Gap(hand.Motion(), line, pipe).Value.ShouldBe(Math.Sqrt((10 * 10) + (25 * 25)) - 15, 1e-9);
    }

    [Fact]
    public void Hose_slack_is_the_free_length_over_the_longest_chord()
    {
        var hand = new ByHand { Limit = 60 };
        Part hose = hand.Add("hose", "brake-hose", Vehicle.Chassis, new PartForm.Hose(
            new Place(Vehicle.Chassis, hand.Point(new(0, 0, 240), 2)), new Place("rear/axle", hand.Point(new(0, 0, 0), 2)), hand.Length(330, 3), hand.Length(10, 0)));
        VehicleMotion motion = hand.Motion();

        Measurement measured = new Slack.HoseSlackQuantity().Measure(new MeasureRequest(motion, hose, null, double.PositiveInfinity));

        // 240 mm at ride height, 300 mm with both wheels at 60 mm of droop: 10 %. The ends and the limit count 100 * 330 / 300^2 each,
        // the free length 100 / 300.
        measured.Value.ShouldBe(10, 0.01);
        measured.Bound.ShouldBeLessThanOrEqualTo(measured.Value);
        double perMm = 100 * 330 / (300.0 * 300.0);
        double expected = Math.Sqrt((2 * Square(perMm * ByHand.U(2))) + Square(perMm * ByHand.U(4)) + Square(ByHand.U(3) / 3));
        measured.Places[0].StandardUncertainty.ShouldBe(expected, 0.02);
    }

    [Fact]
    public void Parts_without_the_shape_a_quantity_needs_are_refused_in_words()
    {
        var hand = new ByHand();
        Part stop = hand.Add("stop", "bump-stop", Vehicle.Chassis, new PartForm.BumpStop(
            new Place(Vehicle.Chassis, hand.Point(new(0, 0, 250), 1)), new Place("rear/axle", hand.Point(new(0, 0, 120), 1)), hand.Length(80, 1), hand.Length(30, 1)));

        new Gaps.GapQuantity().Refuses(stop, stop).ShouldBe("stop has no shape that a gap could be measured to");
        new Gaps.GapQuantity().Refuses(stop, null).ShouldBe("a gap needs two parts");
        new Slack.HoseSlackQuantity().Refuses(stop, null).ShouldBe("stop is not a hose");
    }

    private static Measurement Gap(VehicleMotion motion, Part first, Part second) =>
        new Gaps.GapQuantity().Measure(new MeasureRequest(motion, first, second, double.PositiveInfinity)).With(m => m.NotEvaluated.ShouldBeNull());

    private static double Square(double x) => x * x;
}
