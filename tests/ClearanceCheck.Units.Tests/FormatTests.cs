using System.Globalization;
using CsCheck;

namespace ClearanceCheck.Units.Tests;

public sealed class FormatTests
{
    [Theory]
    [InlineData(25.4, "25 mm (1 in)")]
    [InlineData(14.2875, "14 mm (9/16 in)")]
    [InlineData(38.1, "38 mm (1-1/2 in)")]
    [InlineData(-9.525, "-10 mm (-3/8 in)")]
    [InlineData(803.275, "803 mm (31-5/8 in)")]
    [InlineData(0, "0 mm (0 in)")]
    [InlineData(-0.3, "0 mm (0 in)")]
    [InlineData(12345.6, "12346 mm (486-1/16 in)")]
    public void A_length_shows_whole_millimetres_and_the_nearest_sixteenth(double mm, string expected) =>
        Typed.Both(() => LengthFormat.Both(Length.FromMillimetres(mm))).ShouldBe(expected);

    [Theory]
    [InlineData(12.5, 2, "12.50 mm")]
    [InlineData(-0.04, 1, "0.0 mm")]
    [InlineData(1234.56, 1, "1234.6 mm")]
    public void Fixed_decimals_are_kept(double mm, int decimals, string expected) =>
        Typed.Both(() => LengthFormat.Millimetres(Length.FromMillimetres(mm), decimals)).ShouldBe(expected);

    /// <summary>The trap that this exists for: "10.0 mm, limit 10 mm, fails".</summary>
    [Theory]
    [InlineData(9.96, 10, "9.96 mm", "10 mm")]
    [InlineData(9.9, 10, "9.9 mm", "10 mm")]
    [InlineData(9.999996, 10, "9.999996 mm", "10 mm")]
    [InlineData(10.04, 10, "10.04 mm", "10 mm")]
    [InlineData(10, 10, "10.0 mm", "10 mm")]
    [InlineData(25.4, 25.35, "25.4 mm", "25.35 mm")]
    [InlineData(9.99999999999, 10, "9.99999999999 mm", "10 mm")]
    [InlineData(-3.04, -3, "-3.04 mm", "-3 mm")]
    public void A_value_and_its_limit_get_digits_until_they_differ(double value, double limit, string shownValue, string shownLimit)
    {
        var shown = Typed.Both(() => LengthFormat.Apart(Length.FromMillimetres(value), Length.FromMillimetres(limit)));

        shown.ShouldBe((shownValue, shownLimit));
    }

    [Fact]
    public void What_is_shown_of_a_value_and_its_limit_compares_like_the_numbers() =>
        Gen.Select(Gen.Double[-100, 100], Gen.Int[0, 14], Gen.Int[-9, 9]).Sample(
            (limit, digits, step) =>
            {
                var value = limit;
                for (var i = 0; i < digits; i++) limit = Math.Round(limit, 3);
                value = limit + (step * Math.Pow(10, -digits));

                var (left, right) = NumberFormat.Apart(value, limit, 1);

                var shown = double.Parse(left, CultureInfo.InvariantCulture).CompareTo(double.Parse(right, CultureInfo.InvariantCulture));
                if (value != limit) shown.ShouldBe(value.CompareTo(limit));
            },
            iter: 5000);

    [Fact]
    public void The_nearest_sixteenth_is_never_more_than_a_thirty_second_away() =>
        Gen.Double[-5000, 5000].Sample(
            mm =>
            {
                var shown = LengthText.Parse(LengthFormat.Inches(Length.FromMillimetres(mm)), null).Value.Length.Inches;

                Math.Abs(shown - (mm / 25.4)).ShouldBeLessThanOrEqualTo((1.0 / 32) + 1e-12);
            },
            iter: 2000);
}
