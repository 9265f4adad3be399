namespace ClearanceCheck.Units.Tests;

/// <summary>Numbers and fractions of a length that cannot be read, word by word: id, text, caret, what is wrong, what would be right.</summary>
public sealed class LengthNumberFaultTests
{
    [Fact]
    public void An_empty_length_is_refused() =>
        Typed.Length("", null).ShouldBe(
            """
            length.empty

            ^
            A length is needed here, and there is nothing.
            Write for example `654 mm`, `65.4 cm`, `31-5/8 in` or `2 ft 7 in`.
            """);

    [Fact]
    public void A_word_is_no_length() =>
        Typed.Length("hose", null).ShouldBe(
            """
            number.not-a-number
            hose
            ^^^^
            `hose` is not a number.
            Write digits, with a point before the decimals.
            """);

    [Fact]
    public void A_lone_minus_is_no_length() =>
        Typed.Length("-", null).ShouldBe(
            """
            number.missing
            -
             ^
            A number is needed here.
            Write digits, with a point before the decimals.
            """);

    [Fact]
    public void A_decimal_comma_shows_both_readings() =>
        Typed.Length("25,4 mm", null).ShouldBe(
            """
            number.decimal-comma
            25,4 mm
            ^^^^
            Comma in `25,4`: 25.4 or 25 400?
            Write a point before the decimals, and no mark between thousands.
            """);

    [Fact]
    public void A_comma_before_three_digits_shows_both_readings() =>
        Typed.Length("1,250 mm", null).ShouldBe(
            """
            number.decimal-comma
            1,250 mm
            ^^^^^
            Comma in `1,250`: 1.250 or 1 250?
            Write a point before the decimals, and no mark between thousands.
            """);

    [Fact]
    public void A_bare_number_shows_both_readings() =>
        Typed.Length("31.6", null).ShouldBe(
            """
            length.no-unit
            31.6
            ^^^^
            `31.6` has no unit, and none is declared: 31.6 mm (1-1/4 in) or 31.6 in (803 mm)?
            Write `31.6 mm` or `31.6 in`, or declare `unit: mm` at the top of the file.
            """);

    [Fact]
    public void A_bare_fraction_asks_for_its_unit() =>
        Typed.Length("31-5/8", LengthUnit.Millimetre).ShouldBe(
            """
            length.fraction-no-unit
            31-5/8
            ^^^^^^
            `31-5/8` is a fraction without a unit.
            Write `31-5/8 in` if it was read in inches.
            """);

    [Fact]
    public void A_bare_number_that_starts_with_a_zero_is_refused() =>
        Typed.Length("010", LengthUnit.Millimetre).ShouldBe(
            """
            number.leading-zero
            010
            ^^^
            `010` starts with a zero; some editors read that as another number.
            Write `10`.
            """);

    [Fact]
    public void A_division_by_zero_is_refused() =>
        Typed.Length("1/0 in", null).ShouldBe(
            """
            length.zero-denominator
            1/0 in
            ^^^
            `1/0` divides by zero.
            Write for example `1/2 in`; a tape is divided into halves, quarters, eighths and so on.
            """);

    [Fact]
    public void Two_strokes_are_refused() =>
        Typed.Length("3/4/8 in", null).ShouldBe(
            """
            length.two-strokes
            3/4/8 in
            ^^^^^
            `3/4/8` has more than one stroke; a fraction has one.
            Write for example `3/4 in` or `31-3/4 in`.
            """);

    [Fact]
    public void An_improper_fraction_is_refused() =>
        Typed.Length("31-9/8 in", null).ShouldBe(
            """
            length.improper-fraction
            31-9/8 in
               ^^^
            `9/8` is a whole inch or more; a fraction on a tape is less than one.
            Look at the tape again; `32-1/8 in` is what it would add up to.
            """);

    [Fact]
    public void An_improper_fraction_alone_is_refused() =>
        Typed.Length("9/8 in", null).ShouldBe(
            """
            length.improper-fraction
            9/8 in
            ^^^
            `9/8` is a whole inch or more; a fraction on a tape is less than one.
            Look at the tape again; `1-1/8 in` is what it would add up to.
            """);

    [Fact]
    public void A_fraction_that_no_tape_has_is_refused() =>
        Typed.Length("1/3 in", null).ShouldBe(
            """
            length.not-a-tape-division
            1/3 in
            ^^^
            `1/3`: no inch tape is divided like that; under the stroke goes 2, 4, 8, 16, 32 or 64.
            Write the fraction as it stands on the tape, or a decimal such as `0.33 in`.
            """);

    [Fact]
    public void A_fraction_without_a_number_below_is_refused() =>
        Typed.Length("5/ in", null).ShouldBe(
            """
            length.no-denominator
            5/ in
            ^^
            `5/` has no number under the stroke.
            Write for example `5/8 in`.
            """);

    [Fact]
    public void A_decimal_with_a_fraction_is_refused() =>
        Typed.Length("31.5-5/8 in", null).ShouldBe(
            """
            length.decimal-and-fraction
            31.5-5/8 in
            ^^^^^^^^
            `31.5-5/8` mixes a decimal point with a fraction.
            Write either `31.625 in` or `31-5/8 in`.
            """);

    [Fact]
    public void A_fraction_of_a_millimetre_is_refused() =>
        Typed.Length("31-5/8 mm", null).ShouldBe(
            """
            length.metric-fraction
            31-5/8 mm
            ^^^^^^
            `31-5/8` is a fraction, and mm is not read in fractions.
            Write `31-5/8 in`, or a decimal with mm.
            """);

    [Fact]
    public void Not_a_number_is_refused() =>
        Typed.Length(".nan", null).ShouldBe(
            """
            number.not-finite
            .nan
            ^^^^
            `.nan` is not a finite number.
            Write the value as measured; if it was not measured, leave the key out.
            """);

    [Fact]
    public void Infinity_is_refused() =>
        Typed.Length("-.inf mm", null).ShouldBe(
            """
            number.not-finite
            -.inf mm
             ^^^^
            `.inf` is not a finite number.
            Write the value as measured; if it was not measured, leave the key out.
            """);

    [Fact]
    public void An_infinity_sign_is_refused() =>
        Typed.Length("∞", null).ShouldBe(
            """
            number.not-finite
            ∞
            ^
            `∞` is not a finite number.
            Write the value as measured; if it was not measured, leave the key out.
            """);

    [Fact]
    public void A_number_beyond_doubles_is_not_finite() =>
        Typed.Length("1e400 mm", null).ShouldBe(
            """
            number.not-finite
            1e400 mm
            ^^^^^
            `1e400` is not a finite number.
            Write the value as measured; if it was not measured, leave the key out.
            """);

    [Fact]
    public void An_exponent_is_refused() =>
        Typed.Length("1e3 mm", null).ShouldBe(
            """
            number.exponent
            1e3 mm
            ^^^
            `1e3` is written with an exponent, and no tape shows one.
            Write all digits out.
            """);

    [Fact]
    public void Too_many_digits_are_refused() =>
        Typed.Length("1234567890.1234567 mm", null).ShouldBe(
            """
            number.too-many-digits
            1234567890.1234567 mm
            ^^^^^^^^^^^^^^^^^^
            This number has more than 15 digits.
            Write it as finely as it was read, no finer.
            """);

    [Fact]
    public void More_than_a_kilometre_is_refused() =>
        Typed.Length("1000001 mm", null).ShouldBe(
            """
            length.out-of-range
            1000001 mm
            ^^^^^^^^^^
            `1000001 mm` is out of range: nothing on a vehicle is longer than a kilometre.
            Look at the digits and the unit.
            """);
}
