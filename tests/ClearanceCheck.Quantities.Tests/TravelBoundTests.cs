using ClearanceCheck.Geometry;
using ClearanceCheck.Quantities.Gaps;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Tests;

/// <summary>What a reading and the travel alone say of parts without a shape, worked out by hand.</summary>
public sealed class TravelBoundTests
{
    [Fact]
    public void A_part_without_shape_comes_no_nearer_than_the_reading_less_the_most_that_its_body_moves()
    {
        var hand = new ByHand { Limit = 80 };
        Part pipe = hand.Add("pipe", "exhaust-pipe", "exhaust", new PartForm.Unshaped());
        Part axle = hand.Add("axle", "axle-tube", "rear/axle", new PartForm.Unshaped());
        hand.Gaps.Add(new DirectGap("g", ["pipe", "axle"], "ride", hand.Length(205, 1.5), GapTool.Tape, "up"));

        Measurement measured = Gap(hand, pipe, axle);

        // A hub goes 80 mm up or down and, with the other wheel the other way, 700 (1 - cos) mm inwards as well.
        double inwards = 700 - Math.Sqrt((700 * 700) - (80 * 80));
        measured.Value.ShouldBe(205 - Math.Sqrt((80 * 80) + (inwards * inwards)), 0.6);
        measured.Bound.ShouldBeLessThanOrEqualTo(measured.Value);
        measured.Bound.ShouldBeGreaterThan(measured.Value - 1);
        measured.Basis.ShouldBe(MeasurementBasis.ReadingAndTravel);
        measured.AssumesBetweenPointsOf.ShouldBe(axle);
        measured.Readings.ShouldHaveSingleItem().TravelMm.ShouldNotBeNull().ShouldBe(205 - measured.Bound, 1e-9);
        // The end of the travel looked at counts fully, and so does the reading.
        measured.Places[0].StandardUncertainty.ShouldBe(Math.Sqrt((ByHand.U(4) * ByHand.U(4)) + (ByHand.U(1.5) * ByHand.U(1.5))), 0.15);
        measured.Places[0].EndsAtNoStop.ShouldBeTrue();
    }

    [Fact]
    public void The_part_that_has_a_shape_is_bounded_by_the_box_around_it()
    {
        // A short bar in the centre plane moves less than the hubs do: with one wheel up and one down hardly at all.
        var hand = new ByHand { Limit = 80 };
        Part pipe = hand.Add("pipe", "exhaust-pipe", "exhaust", new PartForm.Unshaped());
        Part bar = hand.Add("bar", "axle-tube", "rear/axle", new PartForm.Chain([hand.Point(new(-50, 0, 0), 1), hand.Point(new(50, 0, 0), 1)], hand.Length(20, 0), []));
        hand.Gaps.Add(new DirectGap("g", ["pipe", "bar"], "ride", hand.Length(205, 1.5), GapTool.Tape, null));

        Measurement measured = Gap(hand, pipe, bar);

        measured.Value.ShouldBe(125, 0.6);
        measured.AssumesBetweenPointsOf.ShouldBeNull();
    }

    [Fact]
    public void No_pose_of_a_shape_comes_nearer_than_its_reading_and_the_travel_say()
    {
        // The same pipe twice, once with its shape; the reading is what the shape says at ride height.
        foreach (Vector3d at in new[] { new Vector3d(120, 300, 140), new(-200, 650, 90), new(0, -500, 200) })
        {
            var hand = new ByHand { Limit = 60 };
            Part shaped = hand.Add("shaped", "exhaust-pipe", "exhaust", new PartForm.Chain(
                [hand.Point(at, 0), hand.Point(at + new Vector3d(300, 100, 50), 0)], hand.Length(50, 0), []));
            Part pipe = hand.Add("pipe", "exhaust-pipe", "exhaust", new PartForm.Unshaped());
            Part tube = hand.Add("tube", "axle-tube", "rear/axle", new PartForm.Chain(
                [hand.Point(new(0, 660, 0), 0), hand.Point(new(0, -660, 0), 0)], hand.Length(70, 0), []));
            double read = new GapQuantity().At(new MeasureRequest(hand.Motion(), shaped, tube, double.PositiveInfinity), [0, 0]).ShouldNotBeNull();
            hand.Gaps.Add(new DirectGap("g", ["pipe", "tube"], "ride", hand.Length(read, 0), GapTool.Tape, null));

            Measurement bounded = Gap(hand, pipe, tube), found = Gap(hand, shaped, tube);

            bounded.Bound.ShouldBeLessThanOrEqualTo(found.Value + 1e-6);
            bounded.Bound.ShouldBeGreaterThan(read - 75);
        }
    }

    [Fact]
    public void A_reading_to_a_whole_body_bounds_every_part_on_it_and_yields_to_one_between_the_parts()
    {
        var hand = new ByHand { Limit = 80 };
        Part pipe = hand.Add("pipe", "exhaust-pipe", "exhaust", new PartForm.Unshaped());
        Part tube = hand.Add("tube", "axle-tube", "rear/axle", new PartForm.Unshaped()), housing = hand.Add("housing", "axle-housing", "rear/axle", new PartForm.Unshaped());
        hand.Gaps.Add(new DirectGap("body", ["rear/axle", "pipe"], "ride", hand.Length(120, 1.5), GapTool.Tape, null));
        hand.Gaps.Add(new DirectGap("own", ["tube", "pipe"], "ride", hand.Length(205, 1.5), GapTool.Tape, null));

        Measurement toTube = Gap(hand, pipe, tube), toHousing = Gap(hand, housing, pipe);

        toTube.Value.ShouldBe(125, 1);
        toTube.Readings.Select(r => (r.Id, r.Counts, r.IsOfParts)).ShouldBe([("body", false, false), ("own", true, true)]);
        toHousing.Value.ShouldBe(40, 1);
    }

    [Fact]
    public void A_part_without_shape_that_never_moves_against_the_other_keeps_its_gap()
    {
        var hand = new ByHand();
        Part pipe = hand.Add("pipe", "exhaust-pipe", "exhaust", new PartForm.Unshaped());
        Part line = hand.Add("line", "brake-line", Vehicle.Chassis, new PartForm.Unshaped());
        hand.Gaps.Add(new DirectGap("g", ["line", "pipe"], "hanging", hand.Length(48, 0.5), GapTool.Feeler, null));

        Measurement measured = Gap(hand, line, pipe);

        (measured.Value, measured.Bound).ShouldBe((48, 48));
        measured.Places[0].StandardUncertainty.ShouldBe(ByHand.U(0.5), 1e-9);
    }

    [Fact]
    public void Without_a_reading_nothing_is_known_and_that_is_said()
    {
        var hand = new ByHand();
        Part pipe = hand.Add("pipe", "exhaust-pipe", "exhaust", new PartForm.Unshaped());
        Part axle = hand.Add("axle", "axle-tube", "rear/axle", new PartForm.Unshaped());
        Part bar = hand.Add("bar", "axle-tube", "rear/axle", new PartForm.Chain([hand.Point(new(-50, 0, 0), 1), hand.Point(new(50, 0, 0), 1)], hand.Length(20, 0), []));
        var motion = hand.Motion();

        new GapQuantity().Measure(new MeasureRequest(motion, bar, pipe, 100)).NotEvaluated.ShouldBe("pipe has no shape in the file, and no gap between the two was read");
        new GapQuantity().Measure(new MeasureRequest(motion, pipe, axle, 100)).NotEvaluated.ShouldBe("pipe and axle have no shape in the file, and no gap between the two was read");
        new GapQuantity().At(new MeasureRequest(motion, pipe, axle, 100), [0, 0]).ShouldBe(double.NaN);
    }

    private static Measurement Gap(ByHand hand, Part first, Part second) =>
        new GapQuantity().Measure(new MeasureRequest(hand.Motion(), first, second, double.PositiveInfinity)).With(m => m.NotEvaluated.ShouldBeNull());
}
