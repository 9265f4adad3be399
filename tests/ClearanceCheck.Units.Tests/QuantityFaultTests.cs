namespace ClearanceCheck.Units.Tests;

/// <summary>Angles, shares, temperatures and plain numbers that cannot be read, word by word.</summary>
public sealed class QuantityFaultTests
{
    [Fact]
    public void An_angle_needs_its_unit() =>
        Typed.Angle("18").ShouldBe(
            """
            number.no-unit
            18
            ^^
            `18` has no unit; an angle always has one.
            Write `18 deg`.
            """);

    [Fact]
    public void An_angle_with_a_wrong_unit_names_the_right_ones() =>
        Typed.Angle("18 rad").ShouldBe(
            """
            number.wrong-unit
            18 rad
               ^^^
            `rad` is not a unit of an angle.
            Write `deg` or `°` after the number.
            """);

    [Fact]
    public void An_empty_angle_is_refused() =>
        Typed.Angle("").ShouldBe(
            """
            number.empty

            ^
            Here an angle is needed, and there is nothing.
            Write the value with its unit.
            """);

    [Fact]
    public void A_share_needs_its_sign() =>
        Typed.Percentage("5").ShouldBe(
            """
            number.no-unit
            5
            ^
            `5` has no unit; a share always has one.
            Write `5 %`.
            """);

    [Fact]
    public void A_stiffness_needs_its_unit() =>
        Typed.Stiffness("9000").ShouldBe(
            """
            number.no-unit
            9000
            ^^^^
            `9000` has no unit; a stiffness always has one.
            Write `9000 N/mm`.
            """);

    [Fact]
    public void A_stiffness_against_turning_is_not_one_along_a_line() =>
        Typed.TurningStiffness("4600 N/mm").ShouldBe(
            """
            number.wrong-unit
            4600 N/mm
                 ^^^^
            `N/mm` is not a unit of a stiffness against turning.
            Write `Nm/rad` or `Nm/deg` after the number.
            """);

    [Fact]
    public void A_temperature_needs_its_unit() =>
        Typed.Temperature("90").ShouldBe(
            """
            number.no-unit
            90
            ^^
            `90` has no unit; a temperature always has one.
            Write `90 °C`.
            """);

    [Fact]
    public void A_temperature_below_absolute_zero_is_refused() =>
        Typed.Temperature("-300 °C").ShouldBe(
            """
            temperature.below-absolute-zero
            -300 °C
            ^^^^^^^
            `-300 °C` is below absolute zero (-273.15 °C, -459.67 °F).
            Look at the sign and the unit.
            """);

    [Fact]
    public void A_temperature_below_absolute_zero_in_fahrenheit_is_refused() =>
        Typed.Temperature("-460 °F").ShouldBe(
            """
            temperature.below-absolute-zero
            -460 °F
            ^^^^^^^
            `-460 °F` is below absolute zero (-273.15 °C, -459.67 °F).
            Look at the sign and the unit.
            """);

    [Fact]
    public void A_plain_number_with_a_unit_is_refused() =>
        Typed.Number("0.35 mm").ShouldBe(
            """
            number.trailing
            0.35 mm
                 ^^
            `mm` stands after the number; a plain number has no unit here.
            Write the number alone.
            """);

    [Fact]
    public void A_plain_number_beyond_doubles_is_not_finite() =>
        Typed.Number("1e400").ShouldBe(
            """
            number.not-finite
            1e400
            ^^^^^
            `1e400` is not a finite number.
            Write the value as measured; if it was not measured, leave the key out.
            """);

    [Fact]
    public void A_plain_number_with_a_leading_zero_is_refused() =>
        Typed.Number("010").ShouldBe(
            """
            number.leading-zero
            010
            ^^^
            `010` starts with a zero; some editors read that as another number.
            Write `10`.
            """);

    [Fact]
    public void A_plain_number_with_a_comma_is_refused() =>
        Typed.Number("0,35").ShouldBe(
            """
            number.decimal-comma
            0,35
            ^^^^
            Comma in `0,35`: 0.35 or 0 350?
            Write a point before the decimals, and no mark between thousands.
            """);
}
