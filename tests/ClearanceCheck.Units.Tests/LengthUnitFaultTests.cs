namespace ClearanceCheck.Units.Tests;

/// <summary>Units of a length that cannot be read, word by word.</summary>
public sealed class LengthUnitFaultTests
{
    [Fact]
    public void An_unknown_unit_offers_the_nearest() =>
        Typed.Length("31 inch", null).ShouldBe(
            """
            length.unknown-unit
            31 inch
               ^^^^
            `inch` is not a unit of length.
            Did you mean `in`? Units are mm, cm, m, in, ft.
            """);

    [Fact]
    public void A_unit_in_capitals_offers_the_small_one() =>
        Typed.Length("31 MM", null).ShouldBe(
            """
            length.unknown-unit
            31 MM
               ^^
            `MM` is not a unit of length.
            Did you mean `mm`? Units are mm, cm, m, in, ft.
            """);

    [Fact]
    public void A_unit_that_is_near_to_nothing_names_all() =>
        Typed.Length("31 furlong", null).ShouldBe(
            """
            length.unknown-unit
            31 furlong
               ^^^^^^^
            `furlong` is not a unit of length.
            Units are mm, cm, m, in, ft.
            """);

    [Fact]
    public void A_kilometre_is_out_of_range() =>
        Typed.Length("300 km", null).ShouldBe(
            """
            length.unit-too-large
            300 km
                ^^
            `km` is out of range for a vehicle.
            Units are mm, cm, m, in, ft.
            """);

    [Fact]
    public void Text_after_a_length_is_refused() =>
        Typed.Length("31 in left", null).ShouldBe(
            """
            length.trailing
            31 in left
                  ^^^^
            `left` does not belong to a length.
            Write for example `654 mm`, `65.4 cm`, `31-5/8 in` or `2 ft 7 in`.
            """);

    [Fact]
    public void A_comma_after_a_number_is_refused() =>
        Typed.Length("31, left", null).ShouldBe(
            """
            length.trailing
            31, left
              ^
            `,` does not belong to a length.
            Write for example `654 mm`, `65.4 cm`, `31-5/8 in` or `2 ft 7 in`.
            """);

    [Fact]
    public void A_plus_minus_is_refused() =>
        Typed.Length("12.5 ± 0.5 mm", null).ShouldBe(
            """
            length.plus-minus
            12.5 ± 0.5 mm
                 ^
            A length stands without its plus-minus here.
            Write the half-width under `within:`.
            """);

    [Fact]
    public void A_plus_minus_after_the_unit_is_refused() =>
        Typed.Length("12.5 mm ± 0.5 mm", null).ShouldBe(
            """
            length.plus-minus
            12.5 mm ± 0.5 mm
                    ^
            A length stands without its plus-minus here.
            Write the half-width under `within:`.
            """);

    [Fact]
    public void Two_numbers_are_refused() =>
        Typed.Length("25 400 mm", null).ShouldBe(
            """
            length.two-numbers
            25 400 mm
            ^^^^^^
            `25 400` is two numbers, and no unit stands between them.
            Write one number without gaps, or a fraction such as `31-5/8 in`.
            """);

    [Fact]
    public void Two_foot_marks_are_no_inch_mark() =>
        Typed.Length("31''", null).ShouldBe(
            """
            length.fused-marks
            31''
              ^^
            `''` is two marks in one place.
            One `'` is feet, one `"` is inches; `in` and `ft` are safer.
            """);

    [Fact]
    public void Two_inch_marks_are_refused() =>
        Typed.Length("31\"\"", null).ShouldBe(
            """
            length.fused-marks
            31""
              ^^
            `""` is two marks in one place.
            One `'` is feet, one `"` is inches; `in` and `ft` are safer.
            """);

    [Fact]
    public void A_unit_after_a_mark_is_one_too_many() =>
        Typed.Length("31 in\"", null).ShouldBe(
            """
            length.unit-twice
            31 in"
                 ^
            The unit is there already; `"` is one too many.
            Write for example `654 mm`, `65.4 cm`, `31-5/8 in` or `2 ft 7 in`.
            """);

    [Fact]
    public void Inches_before_feet_are_refused() =>
        Typed.Length("7\" 2'", null).ShouldBe(
            """
            length.inches-before-feet
            7" 2'
               ^^
            Inches stand before feet.
            Write feet first: `2' 7"` or `2 ft 7 in`.
            """);

    [Fact]
    public void A_fraction_after_the_unit_is_refused() =>
        Typed.Length("31\" 5/8", null).ShouldBe(
            """
            length.fraction-after-unit
            31" 5/8
                ^^^
            The fraction `5/8` stands after the unit.
            Write the fraction before the unit: `31-5/8 in`.
            """);

    [Fact]
    public void Feet_with_decimals_before_inches_are_refused() =>
        Typed.Length("2.5' 3\"", null).ShouldBe(
            """
            length.feet-not-whole
            2.5' 3"
            ^^^
            `2.5` feet is not whole, and inches follow.
            Write whole feet and then inches, or feet alone.
            """);

    [Fact]
    public void Inches_after_feet_need_their_unit() =>
        Typed.Length("2' 7", null).ShouldBe(
            """
            length.inches-without-unit
            2' 7
               ^
            `7` after the feet has no unit.
            Write `7 in`.
            """);

    [Fact]
    public void Twelve_inches_after_feet_are_refused() =>
        Typed.Length("2' 12\"", null).ShouldBe(
            """
            length.too-many-inches
            2' 12"
               ^^
            `12` inches after the feet is a foot or more.
            After feet write less than 12 in.
            """);

    [Fact]
    public void Millimetres_after_feet_are_refused() =>
        Typed.Length("2 ft 7 mm", null).ShouldBe(
            """
            length.not-inches-after-feet
            2 ft 7 mm
                 ^^^^
            `7 mm` stands after feet, where only inches go.
            Write for example `2 ft 7 in`.
            """);

    [Fact]
    public void A_dash_without_a_fraction_is_refused() =>
        Typed.Length("31-5 in", null).ShouldBe(
            """
            length.two-numbers
            31-5 in
            ^^^^
            `31-5` is two numbers, and no unit stands between them.
            Write one number without gaps, or a fraction such as `31-5/8 in`.
            """);
}
