using ClearanceCheck.Kinematics;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Tests;

/// <summary>Uncertainty, worked out by hand, of what hangs on points of another state and on mirror images.</summary>
public sealed class StatedAndMirroredTests
{
    [Fact]
    public void A_part_measured_in_another_state_hangs_on_hub_to_fender_of_both()
    {
        // Seen 60 mm lower than at ride height; the wheels go 80 mm up, to the end of the travel looked at.
        //   pin 260, tube 100 + 80: gap 250 - 200 = 50 mm.
        var hand = new ByHand { Limit = 80, HeightWithin = 3 };
        Part pin = hand.Add("pin", "brake-line", Vehicle.Chassis, new PartForm.Chain(
            [hand.Point(new(0, 0, 260), 2), hand.Point(new(0, 0, 400), 2)], hand.Length(20, 0), []));
        MeasuredPoint[] seen = [hand.Point(new(0, 700, 40), 1.5), hand.Point(new(0, -700, 40), 1.5)];
        Part tube = hand.Add("tube", "axle-tube", "rear/axle", new PartForm.Chain([.. seen], hand.Length(40, 0), []));
        hand.Stated.AddRange(seen.Select(p => new StatedPoint(p, "rear/axle", "hanging")));

        Measurement measured = Gap(hand.Motion(), pin, tube);

        measured.Value.ShouldBe(50, 0.1);
        // The middle of the tube follows each wheel by half: four heights of 3 mm, two ends of 1.5 mm, the limit of 4 mm and the pin fully.
        // Hubs shift alike in both states, so they drop out.
        double expected = Math.Sqrt((4 * Square(ByHand.U(3) / 2)) + (2 * Square(ByHand.U(1.5) / 2)) + Square(ByHand.U(4)) + Square(ByHand.U(2)));
        measured.Places[0].StandardUncertainty.ShouldBe(expected, 0.05);
    }

    [Fact]
    public void Two_parts_of_one_body_that_were_seen_in_two_states_hang_on_the_states_too()
    {
        var hand = new ByHand { HeightWithin = 3 };
        Part line = hand.Add("line", "brake-line", "rear/axle", new PartForm.Chain(
            [hand.Point(new(-100, 0, 100), 0), hand.Point(new(100, 0, 100), 0)], hand.Length(10, 0), []));
        MeasuredPoint[] seen = [hand.Point(new(0, 700, -60), 0), hand.Point(new(0, -700, -60), 0)];
        Part tube = hand.Add("tube", "axle-tube", "rear/axle", new PartForm.Chain([.. seen], hand.Length(40, 0), []));
        hand.Stated.AddRange(seen.Select(p => new StatedPoint(p, "rear/axle", "hanging")));

        Measurement measured = Gap(hand.Motion(), line, tube);

        measured.Value.ShouldBe(75, 0.1);
        measured.Cells.ShouldBe(0);
        measured.Places[0].StandardUncertainty.ShouldBe(Math.Sqrt(4 * Square(ByHand.U(3) / 2)), 0.02);
    }

    [Fact]
    public void Mirrored_stops_move_together_with_their_source_and_apart_by_their_own_give_or_take()
    {
        // Stops at 400 mm on both sides, the right one the image of the left; pin and tube as where one stop holds the axle.
        var hand = new ByHand();
        Part pin = hand.Add("pin", "brake-line", Vehicle.Chassis, new PartForm.Chain(
            [hand.Point(new(0, 0, 160), 2), hand.Point(new(0, 0, 400), 2)], hand.Length(20, 0), []));
        Part tube = hand.Add("tube", "axle-tube", "rear/axle", new PartForm.Chain(
            [hand.Point(new(-100, 0, 0), 0), hand.Point(new(100, 0, 0), 0)], hand.Length(40, 0), []));
        MeasuredPoint seat = hand.Point(new(0, 400, 130), 1.5), pad = hand.Point(new(0, 400, 0), 2.5);
        MeasuredLength height = hand.Length(80, 2), crush = hand.Length(30, 5);
        hand.Add("left", "bump-stop", Vehicle.Chassis, new PartForm.BumpStop(new Place(Vehicle.Chassis, seat), new Place("rear/axle", pad), height, crush));
        hand.Add("right", "bump-stop", Vehicle.Chassis, new PartForm.BumpStop(
            new Place(Vehicle.Chassis, seat.Mirrored(hand.Point(default, 6))), new Place("rear/axle", pad.Mirrored(hand.Point(default, 6))), height, crush));

        Measurement measured = Gap(hand.Motion(), pin, tube);

        measured.Value.ShouldBe(50, 0.02);
        measured.Places[0].ActiveStops.ShouldBe(["left crushed", "right crushed"], ignoreOrder: true);
        // The middle follows each side by half: what both sides share counts fully, an image's own deviation by half.
        double[] shares = [2, 1.5, 2.5, 2, 5, 6 * 0.5, 6 * 0.5];
        measured.Places[0].StandardUncertainty.ShouldBe(Math.Sqrt(shares.Sum(a => Square(ByHand.U(a)))), 0.03);
    }

    private static Measurement Gap(VehicleMotion motion, Part first, Part second) =>
        new Gaps.GapQuantity().Measure(new MeasureRequest(motion, first, second, double.PositiveInfinity)).With(m => m.NotEvaluated.ShouldBeNull());

    private static double Square(double x) => x * x;
}
