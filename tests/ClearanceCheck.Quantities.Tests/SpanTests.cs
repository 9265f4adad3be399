using ClearanceCheck.Quantities.Spans;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Tests;

/// <summary>The longest length of a line that nothing holds.</summary>
public sealed class SpanTests
{
    [Fact]
    public void The_longest_way_between_clips_counts_along_the_line()
    {
        var hand = new ByHand();
        // Legs of 100, 300 and 400 (a corner between two clips), 250; clips at the second and the fourth point.
        Part line = Line(hand, [1, 3]);

        Measurement measured = new SpanQuantity().Measure(new MeasureRequest(hand.Motion(), line, null, double.PositiveInfinity));

        measured.Value.ShouldBe(700, 1e-9);
        measured.Bound.ShouldBe(700, 1e-9);
        // The two clipped points each along their own leg, and the corner at right angles along both: within 2 mm each.
        measured.Places[0].StandardUncertainty.ShouldBe(ByHand.U(2) * 2, 0.02);
    }

    [Fact]
    public void An_end_holds_as_a_clip_does()
    {
        var hand = new ByHand();
        Part line = Line(hand, [1]);

        new SpanQuantity().Measure(new MeasureRequest(hand.Motion(), line, null, double.PositiveInfinity)).Value.ShouldBe(950, 1e-9);
    }

    [Fact]
    public void A_line_without_clips_asks_for_them()
    {
        var hand = new ByHand();

        new SpanQuantity().Measure(new MeasureRequest(hand.Motion(), Line(hand, []), null, double.PositiveInfinity)).NotEvaluated
            .ShouldBe("where line is held is not in the file: type the numbers of its clipped points under `clips`");
    }

    private static Part Line(ByHand hand, int[] clips) => hand.Add("line", "brake-line", Vehicle.Chassis, new PartForm.Chain(
        [
            hand.Point(new(0, 0, 0), 0), hand.Point(new(100, 0, 0), 2), hand.Point(new(400, 0, 0), 2), hand.Point(new(400, 400, 0), 2), hand.Point(new(650, 400, 0), 0),
        ],
        hand.Length(5, 0), [.. clips]));
}
