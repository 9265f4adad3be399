using ClearanceCheck.Quantities.Gaps;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Tests;

/// <summary>Gaps that hang on a direct reading, worked out by hand.</summary>
/// <remarks>
/// A pin points down at the middle of a tube at hub height. Pin 160, tube 0: 130 mm at ride height and, 80 mm up on the bump stop
/// (seat 130, height 80, crush 30, pad 0), 50 mm.
/// </remarks>
public sealed class AnchoredGapTests
{
    private const double Tape = 1.5;

    [Fact]
    public void A_reading_that_the_points_agree_with_leaves_the_value_and_only_the_change_is_uncertain()
    {
        Measurement measured = Measure(pin: 160, read: 130, within: 3);

        measured.Value.ShouldBe(50, 0.02);
        measured.Basis.ShouldBe(MeasurementBasis.Reading);
        // Pin, tube and diameters are in both poses and drop out; seat, height, crush and pad are in the change alone.
        double[] shares = [1.5, 2, 5, 2.5, Tape];
        measured.Places[0].StandardUncertainty.ShouldBe(Math.Sqrt(shares.Sum(a => ByHand.U(a) * ByHand.U(a))), 0.02);
        measured.Places[0].StandardUncertainty.ShouldBeLessThan(Measure(pin: 160, read: null, within: 3).Places[0].StandardUncertainty);
        DirectReading reading = measured.Readings.ShouldHaveSingleItem();
        reading.Counts.ShouldBeTrue();
        reading.Disagrees.ShouldBeFalse();
        reading.ComputedMm.ShouldNotBeNull().ShouldBe(130, 1e-6);
        reading.StandardUncertaintyMm.ShouldBe(ByHand.U(Tape), 1e-9);
    }

    [Theory]
    [InlineData(180)]
    [InlineData(140)]
    public void A_point_that_is_wrong_within_its_give_or_take_is_put_right_by_the_reading(double pin)
    {
        Measurement measured = Measure(pin, read: 130, within: 25);

        measured.Value.ShouldBe(50, 0.02);
        measured.Bound.ShouldBeLessThanOrEqualTo(measured.Value);
        measured.Bound.ShouldBe(50, 1);
        measured.Readings[0].Disagrees.ShouldBeFalse();
        measured.ShiftMm.ShouldBe(160 - pin, 1e-6);
    }

    [Theory]
    [InlineData(180, 50)]
    [InlineData(140, 30)]
    public void Where_points_and_reading_contradict_each_other_the_smaller_value_counts_and_the_larger_give_or_take(double pin, double expected)
    {
        Measurement measured = Measure(pin, read: 130, within: 2), plain = Measure(pin, read: null, within: 2);

        measured.Readings[0].Disagrees.ShouldBeTrue();
        measured.Value.ShouldBe(expected, 0.02);
        measured.Bound.ShouldBeLessThanOrEqualTo(measured.Value);
        measured.Places[0].Value.ShouldBe(measured.Value, 1e-9);
        measured.Places[0].StandardUncertainty.ShouldBeGreaterThanOrEqualTo(plain.Places[0].StandardUncertainty);
    }

    [Fact]
    public void A_reading_coarser_than_the_points_may_lower_the_value_and_never_raise_it()
    {
        Measurement plain = Measure(pin: 160, read: null, within: 1);

        Measurement above = Measure(pin: 160, read: 140, within: 1, tape: 12), below = Measure(pin: 160, read: 120, within: 1, tape: 12);

        above.Value.ShouldBe(plain.Value);
        above.Basis.ShouldBe(MeasurementBasis.Points);
        above.Readings[0].Counts.ShouldBeFalse();
        below.Value.ShouldBe(plain.Value - 10, 1e-6);
        below.Places[0].StandardUncertainty.ShouldBe(plain.Places[0].StandardUncertainty);
    }

    [Fact]
    public void A_gap_read_smaller_than_computed_is_searched_for_beyond_the_ceiling_of_the_model()
    {
        // By the points 180 mm at its worst, far above a ceiling of 100 mm; by the reading 50 mm.
        Measurement measured = Measure(pin: 290, read: 130, within: 150, ceiling: 100);

        measured.RefusedAtRoot.ShouldBeFalse();
        measured.Value.ShouldBe(50, 0.02);
        Measure(pin: 290, read: null, within: 150, ceiling: 100).RefusedAtRoot.ShouldBeTrue();
    }

    [Fact]
    public void A_gap_read_larger_than_computed_is_searched_for_below_the_floor_of_the_model()
    {
        // By the points 20 mm at its worst, below a floor of 45 mm; by the reading 50 mm, and that has to be found to its last millimetre.
        Measurement measured = Measure(pin: 130, read: 130, within: 40, floor: 45);

        measured.Value.ShouldBe(50, 0.02);
        measured.Bound.ShouldBe(50, 1);
    }

    [Fact]
    public void Of_several_readings_the_one_with_the_least_bound_counts_and_all_are_listed()
    {
        var hand = new ByHand();
        (Part pin, Part tube) = Pair(hand, 160, 20);
        foreach ((string id, double read) in new[] { ("wide", 134.0), ("tight", 127.0), ("middle", 131.0) })
            hand.Gaps.Add(new DirectGap(id, ["tube", "pin"], "ride", hand.Length(read, Tape), GapTool.Tape, null));

        Measurement measured = Gap(hand, pin, tube);

        measured.Value.ShouldBe(47, 0.02);
        measured.Readings.Select(r => (r.Id, r.Counts)).ShouldBe([("wide", false), ("tight", true), ("middle", false)]);
    }

    [Fact]
    public void A_reading_in_another_state_carries_the_doubt_of_that_states_heights()
    {
        // Hanging, 60 mm lower: 190 mm. Hub to fender within 3 mm at ride height and hanging at both wheels, each by half.
        var hand = new ByHand { HeightWithin = 3 };
        (Part pin, Part tube) = Pair(hand, 160, 20);
        hand.Gaps.Add(new DirectGap("g", ["pin", "tube"], "hanging", hand.Length(190, Tape), GapTool.Tape, null));

        Measurement measured = Gap(hand, pin, tube);

        measured.Readings[0].ComputedMm.ShouldNotBeNull().ShouldBe(190, 0.02);
        measured.Value.ShouldBe(50, 0.04);
        double[] shares = [1.5, 2, 5, 2.5, Tape, 1.5, 1.5, 1.5, 1.5];
        measured.Places[0].StandardUncertainty.ShouldBe(Math.Sqrt(shares.Sum(a => ByHand.U(a) * ByHand.U(a))), 0.05);
    }

    [Fact]
    public void Two_that_never_move_against_each_other_have_the_gap_that_was_read()
    {
        var hand = new ByHand();
        Part line = hand.Add("line", "brake-line", Vehicle.Chassis, new PartForm.Chain(
            [hand.Point(new(0, 0, 100), 4), hand.Point(new(0, 0, 300), 4)], hand.Length(10, 0), []));
        Part pipe = hand.Add("pipe", "exhaust-pipe", "exhaust", new PartForm.Chain(
            [hand.Point(new(90, -100, 200), 4), hand.Point(new(90, 100, 200), 4)], hand.Length(60, 0), []));
        hand.Gaps.Add(new DirectGap("g", ["pipe", "line"], "ride", hand.Length(53, 0.5), GapTool.Feeler, null));

        Measurement measured = Gap(hand, pipe, line);

        measured.Value.ShouldBe(53, 1e-9);
        measured.Places[0].StandardUncertainty.ShouldBe(ByHand.U(0.5), 1e-9);
    }

    [Fact]
    public void A_reading_to_a_whole_body_that_a_part_of_it_is_nearer_than_contradicts_the_points_and_moves_nothing()
    {
        var hand = new ByHand();
        (Part pin, Part tube) = Pair(hand, 160, 2);
        hand.Gaps.Add(new DirectGap("near", ["pin", "rear/axle"], "ride", hand.Length(160, Tape), GapTool.Tape, null));
        hand.Gaps.Add(new DirectGap("far", ["pin", "rear/axle"], "ride", hand.Length(100, Tape), GapTool.Tape, null));

        Measurement measured = Gap(hand, pin, tube);

        measured.Value.ShouldBe(50, 0.02);
        measured.Basis.ShouldBe(MeasurementBasis.Points);
        measured.Readings.Select(r => (r.Id, r.Disagrees, r.Counts)).ShouldBe([("near", true, false), ("far", false, false)]);
    }

    private static Measurement Measure(double pin, double? read, double within, double tape = Tape, double ceiling = double.PositiveInfinity, double floor = double.NegativeInfinity)
    {
        var hand = new ByHand();
        (Part first, Part second) = Pair(hand, pin, within);
        if (read is { } mm) hand.Gaps.Add(new DirectGap("g", ["pin", "tube"], "ride", hand.Length(mm, tape), GapTool.Tape, null));
        return Gap(hand, first, second, ceiling, floor);
    }

    private static (Part Pin, Part Tube) Pair(ByHand hand, double pinAt, double within)
    {
        Part pin = hand.Add("pin", "brake-line", Vehicle.Chassis, new PartForm.Chain(
            [hand.Point(new(0, 0, pinAt), within), hand.Point(new(0, 0, 400), within)], hand.Length(20, 0.6), []));
        Part tube = hand.Add("tube", "axle-tube", "rear/axle", new PartForm.Chain(
            [hand.Point(new(-100, 0, 0), within), hand.Point(new(100, 0, 0), within)], hand.Length(40, 0.8), []));
        hand.Add("stop", "bump-stop", Vehicle.Chassis, new PartForm.BumpStop(
            new Place(Vehicle.Chassis, hand.Point(new(0, 0, 130), 1.5)), new Place("rear/axle", hand.Point(new(50, 0, 0), 2.5)), hand.Length(80, 2), hand.Length(30, 5)));
        return (pin, tube);
    }

    private static Measurement Gap(ByHand hand, Part first, Part second, double ceiling = double.PositiveInfinity, double floor = double.NegativeInfinity) =>
        new GapQuantity().Measure(new MeasureRequest(hand.Motion(), first, second, ceiling) { FloorMm = floor }).With(m => m.NotEvaluated.ShouldBeNull());
}
