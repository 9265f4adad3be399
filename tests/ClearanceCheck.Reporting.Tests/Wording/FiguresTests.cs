using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Tests.Samples;
using ClearanceCheck.Reporting.Wording;
using CsCheck;

namespace ClearanceCheck.Reporting.Tests.Wording;

public sealed class FiguresTests
{
    [Theory]
    [InlineData(18.2, 50, "18 mm (11/16 in)", "at least 50 mm (1-15/16 in)")]
    [InlineData(49.6, 50, "49.6 mm (1.953 in)", "at least 50 mm (1.969 in)")]
    [InlineData(49.9996, 50, "49.9996 mm (1.968 in)", "at least 50 mm (1.969 in)")]
    [InlineData(50, 50, "50 mm (1-15/16 in)", "at least 50 mm (1-15/16 in)")]
    [InlineData(-4.4, 0, "overlap by at least 4 mm (1/8 in)", "at least 0 mm (0 in)")]
    [InlineData(-12, 0, "overlap by at least 12 mm (7/16 in)", "at least 0 mm (0 in)")]
    [InlineData(-12.95, 0, "overlap by at least 12 mm (1/2 in)", "at least 0 mm (0 in)")]
    [InlineData(-0.46, 0, "overlap by at least 0.4 mm (under 1/16 in)", "at least 0 mm (0 in)")]
    [InlineData(-0.0042, 0, "overlap by at least 0.004 mm (under 1/16 in)", "at least 0 mm (0 in)")]
    [InlineData(-1e-9, 0, "overlap by less than 0.001 mm", "at least 0 mm (0 in)")]
    [InlineData(-2, -2, "overlap by at least 2 mm (1/16 in)", "overlap of at most 2 mm (1/16 in)")]
    [InlineData(-2.04, -2, "overlap by at least 2.04 mm (0.08 in)", "overlap of at most 2 mm (0.079 in)")]
    [InlineData(-1.96, -2, "overlap by at least 1.9 mm (0.077 in)", "overlap of at most 2 mm (0.079 in)")]
    [InlineData(0.4, -2, "0 mm (0 in)", "overlap of at most 2 mm (1/16 in)")]
    [InlineData(25.4, 50.8, "25 mm (1 in)", "at least 50.8 mm (2 in)")]
    public void A_value_and_its_limit_get_just_the_digits_that_tell_them_apart(double value, double limit, string shown, string limitShown)
    {
        Figures.Value(value, SampleFindings.Gap, new LimitCard(limit, null, [])).ShouldBe(shown);
        Figures.Limit(new LimitCard(limit, null, []), SampleFindings.Gap, value).ShouldBe(limitShown);
    }

    [Theory]
    [InlineData(17.85, "17 mm (5/8 in)")]
    [InlineData(49.7, "49 mm (1-7/8 in)")]
    [InlineData(50.2, "50.2 mm (1-15/16 in)")]
    [InlineData(-4.4, "5 mm (1/4 in)")]
    public void A_bound_is_rounded_to_the_side_that_promises_less(double bound, string shown) =>
        Figures.BoundValue(bound, SampleFindings.Gap, new LimitCard(50, null, [])).ShouldBe(shown);

    [Theory]
    [InlineData(-4.4, "Overlap never deeper than")]
    [InlineData(0, "Never less than")]
    [InlineData(4.4, "Never less than")]
    public void A_bound_below_zero_is_a_depth(double bound, string label) =>
        Figures.BoundLabel(bound, SampleFindings.Gap, new LimitCard(50, null, [])).ShouldBe(label);

    [Theory]
    [InlineData(-5.5, -2, "overlap by at most 6 mm (1/4 in)", "overlap of at least 2 mm (1/16 in)", "Overlap never less than")]
    [InlineData(3, -2, "3 mm (1/8 in)", "overlap of at least 2 mm (1/16 in)", "Never more than")]
    public void Where_parts_must_be_pressed_together_the_words_turn_around(double value, double limit, string shown, string limitShown, string boundLabel)
    {
        LimitCard card = new(null, limit, []);

        Figures.Value(value, SampleFindings.Gap, card).ShouldBe(shown);
        Figures.Limit(card, SampleFindings.Gap, value).ShouldBe(limitShown);
        Figures.BoundLabel(value, SampleFindings.Gap, card).ShouldBe(boundLabel);
    }

    [Fact]
    public void An_overlap_is_never_shown_deeper_than_it_is_nor_with_a_sign() =>
        Gen.Select(Gen.Double[-300, -0.001], Gen.OneOf(Gen.Double[-5, 5], Gen.Const(0.0))).Sample((value, limit) =>
        {
            LimitCard card = new(limit, null, []);
            string shown = Figures.Value(value, SampleFindings.Gap, card);
            double depth = double.Parse(shown.Split(' ')[4], System.Globalization.CultureInfo.InvariantCulture);

            return shown.StartsWith("overlap by at least ", StringComparison.Ordinal) && !shown.Contains("-0", StringComparison.Ordinal)
                && depth > 0 && depth <= -value + 1e-6 && (depth > -limit) == (-value > -limit);
        });

    [Fact]
    public void A_value_of_another_quantity_below_zero_keeps_its_sign()
    {
        LimitCard card = new(-4, null, []);

        Figures.Value(-6, SampleFindings.Slack, card).ShouldBe("-6.0 %");
        Figures.Limit(card, SampleFindings.Slack, -6).ShouldBe("at least -4 %");
        Figures.BoundLabel(-6, SampleFindings.Slack, card).ShouldBe("Never less than");
        Figures.Brief(-6, SampleFindings.Slack).ShouldBe("-6 %");
        Figures.Brief(-6, SampleFindings.Gap).ShouldBe("overlap 6 mm");
    }

    [Fact]
    public void A_printed_never_less_than_is_never_above_the_bound_nor_on_another_side_of_the_limit() =>
        Gen.Select(Gen.Double[-200, 500], Gen.Double[1, 100]).Sample((bound, limit) =>
        {
            string shown = Figures.BoundValue(bound, SampleFindings.Gap, new LimitCard(limit, null, []));
            double number = double.Parse(shown.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
            if (Figures.BoundLabel(bound, SampleFindings.Gap, new LimitCard(limit, null, [])).StartsWith("Overlap", StringComparison.Ordinal)) number = -number;

            return number <= bound + 1e-6 && (number < limit) == (bound < limit);
        });

    [Theory]
    [InlineData(3.1, "mm", "4 mm (3/16 in)")]
    [InlineData(3, "mm", "3 mm (1/8 in)")]
    [InlineData(0.04, "mm", "0.1 mm (under 1/16 in)")]
    [InlineData(1.6, "mm", "1.6 mm (1/8 in)")]
    [InlineData(0, "mm", "0 mm (0 in)")]
    [InlineData(0.9, "%", "0.9 %")]
    [InlineData(0.81, "%", "0.9 %")]
    public void A_give_or_take_is_rounded_up(double halfWidth, string unit, string shown) => Figures.GiveOrTake(halfWidth, unit).ShouldBe(shown);

    [Fact]
    public void A_bound_on_the_far_side_is_rounded_up() =>
        Figures.BoundValue(14.01, new QuantityCard("joint-angle", "", "", "deg"), new LimitCard(null, 22, [])).ShouldBe("14.1 deg");
}
