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
    [InlineData(-4.4, 0, "overlap 4 mm (3/16 in)", "at least 0 mm (0 in)")]
    [InlineData(25.4, 50.8, "25 mm (1 in)", "at least 50.8 mm (2 in)")]
    public void A_value_and_its_limit_get_just_the_digits_that_tell_them_apart(double value, double limit, string shown, string limitShown)
    {
        Figures.Value(value, SampleFindings.Gap, limit).ShouldBe(shown);
        Figures.Limit(new LimitCard(limit, null, []), "mm", value).ShouldBe(limitShown);
    }

    [Theory]
    [InlineData(17.85, "17 mm (5/8 in)")]
    [InlineData(49.7, "49 mm (1-7/8 in)")]
    [InlineData(50.2, "50.2 mm (1-15/16 in)")]
    [InlineData(-4.4, "5 mm (1/4 in)")]
    public void A_bound_is_rounded_to_the_side_that_promises_less(double bound, string shown) =>
        Figures.BoundValue(bound, SampleFindings.Gap, new LimitCard(50, null, [])).ShouldBe(shown);

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
