namespace ClearanceCheck.Documents.Tests.Reading;

/// <summary>Keys and shapes that do not fit: each names what is wrong and what would be right.</summary>
public sealed class KeyAndShapeFaultTests
{
    [Fact]
    public void A_misspelt_key_offers_the_nearest_and_names_all() =>
        Golden.Yaml(
            """
            format: 1
            kindd: brake-hose
            """,
            """
            t.yaml:2:1: error: `kindd` is not a key here.
              kindd: brake-hose
              ^^^^^
            help: Did you mean `kind`? Keys here: format, unit, name, id, kind, side, height, pitch, slack, rate, twist, surface, factor, date, points, at, path, step, clips, scope, upper, parts.
            doc.unknown-key
            """);

    [Fact]
    public void A_key_that_is_near_to_nothing_names_all_keys() =>
        Golden.Yaml(
            """
            format: 1
            winch-capacity: 3
            """,
            """
            t.yaml:2:1: error: `winch-capacity` is not a key here.
              winch-capacity: 3
              ^^^^^^^^^^^^^^
            help: Keys here: format, unit, name, id, kind, side, height, pitch, slack, rate, twist, surface, factor, date, points, at, path, step, clips, scope, upper, parts.
            doc.unknown-key
            """);

    [Fact]
    public void A_missing_key_says_what_it_is() =>
        Golden.Yaml(
            "name: hose",
            """
            t.yaml:1:1: error: `format` is missing in the file: the number of this file's format.
              name: hose
              ^
            help: Add `format: ...`.
            doc.missing-key
            """);

    [Fact]
    public void A_misspelt_required_key_is_not_reported_missing_as_well() =>
        Golden.Yaml(
            "formt: 1",
            """
            t.yaml:1:1: error: `formt` is not a key here.
              formt: 1
              ^^^^^
            help: Did you mean `format`? Keys here: format, unit, name, id, kind, side, height, pitch, slack, rate, twist, surface, factor, date, points, at, path, step, clips, scope, upper, parts.
            doc.unknown-key
            """);

    [Fact]
    public void A_missing_key_of_a_map_is_marked_at_the_map_s_own_key() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            parts:
              rear-hose: { body: chassis }
            """,
            """
            t.yaml:4:3: error: `at` is missing in `rear-hose`: the place, as x, y, z.
                rear-hose: { body: chassis }
                ^^^^^^^^^
            help: Add `at: ...`.
            doc.missing-key
            """);

    [Fact]
    public void A_list_where_a_word_is_needed_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            kind: [ brake-hose ]
            """,
            """
            t.yaml:2:7: error: `kind`: a word is needed here, and this is a list.
              kind: [ brake-hose ]
                    ^^^^^^^^^^^^^^
            help: Write one value after the colon.
            doc.wrong-shape
            """);

    [Fact]
    public void A_word_where_a_list_is_needed_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            at: 3 mm
            """,
            """
            t.yaml:3:5: error: `at`: a list is needed here, and this is a single value.
              at: 3 mm
                  ^^^^
            help: Write `[x, y, z]`.
            doc.wrong-shape
            """);

    [Fact]
    public void A_word_where_a_map_is_needed_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            upper: chassis
            """,
            """
            t.yaml:3:8: error: `upper`: a map of keys is needed here, and this is a single value.
              upper: chassis
                     ^^^^^^^
            help: Write `{ key: value }`, or one `key: value` a line below, indented.
            doc.wrong-shape
            """);

    [Fact]
    public void A_list_where_a_map_by_id_is_needed_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            parts: [ rear-hose ]
            """,
            """
            t.yaml:2:8: error: `parts`: a map by id is needed here, and this is a list.
              parts: [ rear-hose ]
                     ^^^^^^^^^^^^^
            help: Write `the-id: ...`, one a line below, indented.
            doc.wrong-shape
            """);

    [Fact]
    public void An_empty_list_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            clips: []
            """,
            """
            t.yaml:2:8: error: `clips`: the list is empty.
              clips: []
                     ^^
            help: Write at least one item, or leave the key out.
            doc.empty-list
            """);

    [Fact]
    public void A_point_of_two_numbers_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            at: [1, 2]
            """,
            """
            t.yaml:3:5: error: `at`: 3 values are needed, and here are 2.
              at: [1, 2]
                  ^^^^^^
            help: Write `[x, y, z]`; a point before decimals, a comma and a space between values.
            doc.wrong-count
            """);

    [Fact]
    public void A_pair_of_three_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            step: [1, 2, 3]
            """,
            """
            t.yaml:3:7: error: `step`: 2 values are needed, and here are 3.
              step: [1, 2, 3]
                    ^^^^^^^^^
            help: Write `[..., ...]`; a point before decimals, a comma and a space between values.
            doc.wrong-count
            """);

    [Fact]
    public void A_bad_number_in_a_point_names_its_place_in_the_list() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            path:
              - [1, 2, 3]
              - [4, 5 furlong, 6]
            """,
            """
            t.yaml:5:11: error: Number 2 in item 2 of `path`: `furlong` is not a unit of length.
                - [4, 5 furlong, 6]
                        ^^^^^^^
            help: Units are mm, cm, m, in, ft.
            length.unknown-unit
            """);
}
