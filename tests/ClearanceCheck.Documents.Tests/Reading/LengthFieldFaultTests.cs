namespace ClearanceCheck.Documents.Tests.Reading;

/// <summary>Lengths in a file that cannot be read: each names its key and marks the fault inside the value.</summary>
public sealed class LengthFieldFaultTests
{
    [Fact]
    public void A_decimal_comma_shows_both_readings() =>
        Golden.Yaml(
            """
            format: 1
            height: 25,4 mm
            """,
            """
            t.yaml:2:9: error: `height`: Comma in `25,4`: 25.4 or 25 400?
              height: 25,4 mm
                      ^^^^
            help: Write a point before the decimals, and no mark between thousands.
            number.decimal-comma
            """);

    [Fact]
    public void A_bare_number_without_a_declared_unit_shows_both_readings() =>
        Golden.Yaml(
            """
            format: 1
            height: 31.6
            """,
            """
            t.yaml:2:9: error: `height`: `31.6` has no unit, and none is declared: 31.6 mm (1-1/4 in) or 31.6 in (803 mm)?
              height: 31.6
                      ^^^^
            help: Write `31.6 mm` or `31.6 in`, or declare `unit: mm` at the top of the file.
            length.no-unit
            """);

    [Fact]
    public void A_unit_that_is_none_is_reported_once_and_bare_numbers_stay_silent() =>
        Golden.Yaml(
            """
            format: 1
            unit: inch
            height: 31.6
            """,
            """
            t.yaml:2:7: error: `unit`: `inch` is none of the words for this.
              unit: inch
                    ^^^^
            help: Did you mean `in`? Words: mm, cm, m, in, ft.
            doc.unknown-word
            """);

    [Fact]
    public void Not_a_number_is_refused_with_its_field() =>
        Golden.Yaml(
            """
            format: 1
            height: .nan
            """,
            """
            t.yaml:2:9: error: `height`: `.nan` is not a finite number.
              height: .nan
                      ^^^^
            help: Write the value as measured; if it was not measured, leave the key out.
            number.not-finite
            """);

    [Fact]
    public void Infinity_is_refused_with_its_field() =>
        Golden.Yaml(
            """
            format: 1
            height: -.inf
            """,
            """
            t.yaml:2:10: error: `height`: `.inf` is not a finite number.
              height: -.inf
                       ^^^^
            help: Write the value as measured; if it was not measured, leave the key out.
            number.not-finite
            """);

    [Fact]
    public void A_number_too_large_for_a_double_is_not_finite() =>
        Golden.Yaml(
            """
            format: 1
            factor: 1e400
            """,
            """
            t.yaml:2:9: error: `factor`: `1e400` is not a finite number.
              factor: 1e400
                      ^^^^^
            help: Write the value as measured; if it was not measured, leave the key out.
            number.not-finite
            """);

    [Fact]
    public void An_infinity_sign_is_refused_with_its_field() =>
        Golden.Yaml(
            """
            format: 1
            height: ∞
            """,
            """
            t.yaml:2:9: error: `height`: `∞` is not a finite number.
              height: ∞
                      ^
            help: Write the value as measured; if it was not measured, leave the key out.
            number.not-finite
            """);

    [Fact]
    public void An_exponent_in_a_length_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            height: 1e9 mm
            """,
            """
            t.yaml:2:9: error: `height`: `1e9` is written with an exponent, and no tape shows one.
              height: 1e9 mm
                      ^^^
            help: Write all digits out.
            number.exponent
            """);

    [Fact]
    public void Kilometres_are_out_of_range() =>
        Golden.Yaml(
            """
            format: 1
            height: 300 km
            """,
            """
            t.yaml:2:13: error: `height`: `km` is out of range for a vehicle.
              height: 300 km
                          ^^
            help: Units are mm, cm, m, in, ft.
            length.unit-too-large
            """);

    [Fact]
    public void A_length_out_of_range_is_shown_as_typed() =>
        Golden.Yaml(
            """
            format: 1
            height: 300 m
            """,
            """
            t.yaml:2:9: error: `height`: `300 m` is out of range for a size on a vehicle.
              height: 300 m
                      ^^^^^
            help: It lies between 0.001 mm and 15000 mm; look at the digits and the unit.
            doc.out-of-range
            """);

    [Fact]
    public void A_size_of_zero_is_out_of_range() =>
        Golden.Yaml(
            """
            format: 1
            height: 0 mm
            """,
            """
            t.yaml:2:9: error: `height`: `0 mm` is out of range for a size on a vehicle.
              height: 0 mm
                      ^^^^
            help: It lies between 0.001 mm and 15000 mm; look at the digits and the unit.
            doc.out-of-range
            """);

    [Fact]
    public void A_division_by_zero_is_marked_at_the_fraction() =>
        Golden.Yaml(
            """
            format: 1
            height: 1/0 in
            """,
            """
            t.yaml:2:9: error: `height`: `1/0` divides by zero.
              height: 1/0 in
                      ^^^
            help: Write for example `1/2 in`; a tape is divided into halves, quarters, eighths and so on.
            length.zero-denominator
            """);

    [Fact]
    public void Two_strokes_are_marked_at_the_fraction() =>
        Golden.Yaml(
            """
            format: 1
            height: 3/4/8 in
            """,
            """
            t.yaml:2:9: error: `height`: `3/4/8` has more than one stroke; a fraction has one.
              height: 3/4/8 in
                      ^^^^^
            help: Write for example `3/4 in` or `31-3/4 in`.
            length.two-strokes
            """);

    [Fact]
    public void An_improper_fraction_is_marked_at_the_fraction() =>
        Golden.Yaml(
            """
            format: 1
            height: 31-9/8 in
            """,
            """
            t.yaml:2:12: error: `height`: `9/8` is a whole inch or more; a fraction on a tape is less than one.
              height: 31-9/8 in
                         ^^^
            help: Look at the tape again; `32-1/8 in` is what it would add up to.
            length.improper-fraction
            """);

    [Fact]
    public void A_fault_in_quotes_is_marked_inside_them() =>
        Golden.Yaml(
            """
            format: 1
            height: '31-9/8"'
            """,
            """
            t.yaml:2:13: error: `height`: `9/8` is a whole inch or more; a fraction on a tape is less than one.
              height: '31-9/8"'
                          ^^^
            help: Look at the tape again; `32-1/8 in` is what it would add up to.
            length.improper-fraction
            """);
}
