namespace ClearanceCheck.Documents.Tests.Reading;

/// <summary>Other typed values that do not fit.</summary>
public sealed class FieldFaultTests
{
    [Fact]
    public void An_angle_without_a_unit_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            pitch: 18
            """,
            """
            t.yaml:2:8: error: `pitch`: `18` has no unit; an angle always has one.
              pitch: 18
                     ^^
            help: Write `18 deg`.
            number.no-unit
            """);

    [Fact]
    public void A_share_without_a_unit_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            slack: 5
            """,
            """
            t.yaml:2:8: error: `slack`: `5` has no unit; a share always has one.
              slack: 5
                     ^
            help: Write `5 %`.
            number.no-unit
            """);

    [Fact]
    public void A_stiffness_without_a_unit_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            rate: 9000
            """,
            """
            t.yaml:2:7: error: `rate`: `9000` has no unit; a stiffness always has one.
              rate: 9000
                    ^^^^
            help: Write `9000 N/mm`.
            number.no-unit
            """);

    [Fact]
    public void A_stiffness_against_turning_in_another_unit_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            twist: 4600 Nm
            """,
            """
            t.yaml:2:13: error: `twist`: `Nm` is not a unit of a stiffness against turning.
              twist: 4600 Nm
                          ^^
            help: Write `Nm/rad` or `Nm/deg` after the number.
            number.wrong-unit
            """);

    [Fact]
    public void A_temperature_below_absolute_zero_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            surface: -300 °C
            """,
            """
            t.yaml:2:10: error: `surface`: `-300 °C` is below absolute zero (-273.15 °C, -459.67 °F).
              surface: -300 °C
                       ^^^^^^^
            help: Look at the sign and the unit.
            temperature.below-absolute-zero
            """);

    [Fact]
    public void A_number_with_a_unit_is_refused_where_none_belongs() =>
        Golden.Yaml(
            """
            format: 1
            factor: 0.35 mm
            """,
            """
            t.yaml:2:14: error: `factor`: `mm` stands after the number; a plain number has no unit here.
              factor: 0.35 mm
                           ^^
            help: Write the number alone.
            number.trailing
            """);

    [Fact]
    public void A_number_with_a_leading_zero_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            factor: 010
            """,
            """
            t.yaml:2:9: error: `factor`: `010` starts with a zero; some editors read that as another number.
              factor: 010
                      ^^^
            help: Write `10`.
            number.leading-zero
            """);

    [Fact]
    public void A_text_that_looks_like_a_number_is_wanted_in_quotes() =>
        Golden.Yaml(
            """
            format: 1
            name: 1.10
            """,
            """
            t.yaml:2:7: error: `name`: an editor can change `1.10`, since it looks like a number.
              name: 1.10
                    ^^^^
            help: Put it in quotes: `"1.10"`.
            doc.number-as-text
            """);

    [Fact]
    public void An_id_with_capitals_offers_the_repaired_one() =>
        Golden.Yaml(
            """
            format: 1
            id: Rear Hose_2
            """,
            """
            t.yaml:2:5: error: `Rear Hose_2` is not an id.
              id: Rear Hose_2
                  ^^^^^^^^^^^
            help: Use small letters, digits and dashes, a letter first, up to 60: `rear-hose-2`.
            doc.not-an-id
            """);

    [Fact]
    public void A_key_that_is_no_id_offers_the_repaired_one() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            parts:
              Rear_Hose: { body: chassis, at: [1, 2, 3] }
            """,
            """
            t.yaml:4:3: error: `Rear_Hose` is not an id.
                Rear_Hose: { body: chassis, at: [1, 2, 3] }
                ^^^^^^^^^
            help: Use small letters, digits and dashes, a letter first, up to 60: `rear-hose`.
            doc.not-an-id
            """);

    [Fact]
    public void A_word_out_of_the_set_offers_the_nearest() =>
        Golden.Yaml(
            """
            format: 1
            kind: break-hose
            """,
            """
            t.yaml:2:7: error: `kind`: `break-hose` is none of the words for this.
              kind: break-hose
                    ^^^^^^^^^^
            help: Did you mean `brake-hose`? Words: brake-hose, brake-line, exhaust-pipe.
            doc.unknown-word
            """);

    [Fact]
    public void A_choice_out_of_the_set_names_the_words() =>
        Golden.Yaml(
            """
            format: 1
            side: middle
            """,
            """
            t.yaml:2:7: error: `side`: `middle` is none of the words for this.
              side: middle
                    ^^^^^^
            help: Words: left, right.
            doc.unknown-word
            """);

    [Fact]
    public void A_word_twice_in_a_list_names_both_places() =>
        Golden.Yaml(
            """
            format: 1
            scope: [ front, rear, front ]
            """,
            """
            t.yaml:2:23: error: `front` stands twice in this list.
              scope: [ front, rear, front ]
                                    ^^^^^
            help: Keep it once.
            see: t.yaml:2:10: first named here
            doc.word-twice
            """);

    [Fact]
    public void A_count_of_zero_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            clips: [ 0, 3 ]
            """,
            """
            t.yaml:2:10: error: Number 1 of `clips`: `0` is not a whole number from 1 on.
              clips: [ 0, 3 ]
                       ^
            help: Write digits only, such as `1` or `12`.
            doc.not-a-positive-integer
            """);

    [Fact]
    public void A_date_of_no_calendar_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            date: 2031-02-30
            """,
            """
            t.yaml:2:7: error: `date`: `2031-02-30` is not a date of the calendar written year-month-day.
              date: 2031-02-30
                    ^^^^^^^^^^
            help: Write for example `2031-04-02`.
            doc.not-a-date
            """);

    [Fact]
    public void A_path_above_the_folder_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            points: ../../secret.csv
            """,
            """
            t.yaml:2:9: error: `points`: this path is outside the folder of the inspection.
              points: ../../secret.csv
                      ^^^^^^^^^^^^^^^^
            help: Put the file beside this one and write its name, such as `exhaust.csv`, with `/` between folders.
            doc.outside-folder
            """);

    [Fact]
    public void An_absolute_path_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            points: /etc/points.csv
            """,
            """
            t.yaml:2:9: error: `points`: this path is outside the folder of the inspection.
              points: /etc/points.csv
                      ^^^^^^^^^^^^^^^
            help: Put the file beside this one and write its name, such as `exhaust.csv`, with `/` between folders.
            doc.outside-folder
            """);

    [Fact]
    public void A_file_address_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            points: file:///points.csv
            """,
            """
            t.yaml:2:9: error: `points`: this path is outside the folder of the inspection.
              points: file:///points.csv
                      ^^^^^^^^^^^^^^^^^^
            help: Put the file beside this one and write its name, such as `exhaust.csv`, with `/` between folders.
            doc.outside-folder
            """);

    [Fact]
    public void An_empty_text_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            name: ''
            """,
            """
            t.yaml:2:7: error: `name`: the text is empty.
              name: ''
                    ^^
            help: Write the text, or leave the key out.
            doc.empty-text
            """);

    [Fact]
    public void A_text_in_reverse_order_marks_is_shown_with_them_visible() =>
        Golden.Yaml(
            "format: 1\nkind: \u202Eesoh-ekarb",
            """
            t.yaml:2:7: error: `kind`: `[U+202E]esoh-ekarb` is none of the words for this.
              kind: [U+202E]esoh-ekarb
                    ^^^^^^^^^^^^^^^^^^
            help: Words: brake-hose, brake-line, exhaust-pipe.
            doc.unknown-word
            """);

    [Fact]
    public void A_text_of_ten_thousand_characters_is_cut_with_a_note() =>
        Golden.Yaml(
            "format: 1\nname: " + string.Concat(Enumerable.Repeat("hose ", 2000)),
            """
            t.yaml:2:7: note: `name`: the text is cut at 200 characters.
              name: hose hose hose hose hose hose hose hose hose hose hose hose hose hose hose hose hose hose hose...
                    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
            help: Shorten it if the rest matters.
            doc.text-cut
            """);

    [Fact]
    public void All_faults_of_a_file_are_told_at_once() =>
        Golden.Yaml(
            """
            format: one
            unit: mm
            height: 25,4
            pitch: 18
            at: [1, 2]
            lenght: 3
            """,
            """
            t.yaml:1:9: error: `format`: `one` is not a whole number from 1 on.
              format: one
                      ^^^
            help: Write digits only, such as `1` or `12`.

            t.yaml:3:9: error: `height`: Comma in `25,4`: 25.4 or 25 400?
              height: 25,4
                      ^^^^
            help: Write a point before the decimals, and no mark between thousands.

            t.yaml:4:8: error: `pitch`: `18` has no unit; an angle always has one.
              pitch: 18
                     ^^
            help: Write `18 deg`.

            t.yaml:5:5: error: `at`: 3 values are needed, and here are 2.
              at: [1, 2]
                  ^^^^^^
            help: Write `[x, y, z]`; a point before decimals, a comma and a space between values.

            t.yaml:6:1: error: `lenght` is not a key here.
              lenght: 3
              ^^^^^^
            help: Did you mean `height`? Keys here: format, unit, name, id, kind, side, height, pitch, slack, rate, twist, surface, factor, date, points, at, path, step, clips, scope, upper, parts.
            doc.not-a-positive-integer number.decimal-comma number.no-unit doc.wrong-count doc.unknown-key
            """);
}
