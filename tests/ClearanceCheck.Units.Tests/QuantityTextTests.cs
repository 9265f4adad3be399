namespace ClearanceCheck.Units.Tests;

public sealed class QuantityTextTests
{
    [Theory]
    [InlineData("18 deg", 18)]
    [InlineData("18°", 18)]
    [InlineData("18.5 deg", 18.5)]
    [InlineData("-3 deg", -3)]
    [InlineData("0.4 °", 0.4)]
    public void An_angle_is_read_in_degrees(string text, double degrees)
    {
        var angle = Typed.Both(() => QuantityText.ParseAngle(text).Value);

        angle.Degrees.ShouldBe(degrees, 1e-14);
        angle.Radians.ShouldBe(degrees * Math.PI / 180, 1e-15);
    }

    [Theory]
    [InlineData("5 %", 0.05)]
    [InlineData("5%", 0.05)]
    [InlineData("2.5 %", 0.025)]
    [InlineData("-1 %", -0.01)]
    public void A_share_is_read_as_a_fraction(string text, double fraction) =>
        Typed.Both(() => QuantityText.ParsePercentage(text).Value.Fraction).ShouldBe(fraction);

    [Theory]
    [InlineData("90 °C", 90)]
    [InlineData("90 degC", 90)]
    [InlineData("194 °F", 90)]
    [InlineData("194 degF", 90)]
    [InlineData("-40 °F", -40)]
    [InlineData("-273.15 °C", -273.15)]
    public void A_temperature_is_read_in_either_scale(string text, double celsius) =>
        Typed.Both(() => QuantityText.ParseTemperature(text).Value.Celsius).ShouldBe(celsius);

    [Theory]
    [InlineData("9000 N/mm", 9000)]
    [InlineData("35.5N/mm", 35.5)]
    [InlineData("0 N/mm", 0)]
    [InlineData("-2 N/mm", -2)]
    public void A_stiffness_is_read_in_newtons_for_a_millimetre(string text, double stiffness) =>
        Typed.Both(() => QuantityText.ParseStiffness(text).Value.NewtonsPerMillimetre).ShouldBe(stiffness);

    [Theory]
    [InlineData("4600 Nm/rad", 4600)]
    [InlineData("0 Nm/deg", 0)]
    [InlineData("3.5 Nm/deg", 630 / Math.PI)]
    public void A_stiffness_against_turning_is_read_for_a_radian_or_a_degree(string text, double stiffness)
    {
        TurningStiffness read = Typed.Both(() => QuantityText.ParseTurningStiffness(text).Value);

        read.NewtonMetresPerRadian.ShouldBe(stiffness, 1e-12 * stiffness);
        read.NewtonMillimetresPerRadian.ShouldBe(1000 * stiffness, 1e-9 * stiffness);
    }

    [Theory]
    [InlineData("0.35", 0.35)]
    [InlineData("-2", -2)]
    [InlineData("1.2e-5", 1.2e-5)]
    [InlineData("-1.2E+5", -120_000)]
    [InlineData("0", 0)]
    public void A_plain_number_may_have_an_exponent(string text, double number) =>
        Typed.Both(() => QuantityText.ParseNumber(text).Value).ShouldBe(number);
}
