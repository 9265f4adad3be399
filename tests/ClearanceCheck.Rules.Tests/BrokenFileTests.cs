namespace ClearanceCheck.Rules.Tests;

/// <summary>Rules that cannot be told apart and headers that are unusable, with everything that is said then.</summary>
public sealed class BrokenFileTests
{
    [Fact]
    public void A_key_twice_in_a_rule_leaves_the_rule_out() => Golden.Check(
        Libraries.Changed("severity: warning", "severity: warning\n    severity: caution"),
        """
        shop.yaml:11:5: error: `severity` stands twice, in line 10 and in line 11; neither was chosen.
              severity: caution
              ^^^^^^^^
        help: Keep the right one.
        see: shop.yaml:10:5: first defined here
        doc.duplicate-key
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:11:5.
        """);

    [Fact]
    public void A_rule_id_is_small_letters_and_dashes() => Golden.Check(
        Libraries.Changed("line-near-pipe", "Line_near_pipe"),
        """
        shop.yaml:5:3: error: `Line_near_pipe` is not an id.
            Line_near_pipe:
            ^^^^^^^^^^^^^^
        help: Use small letters, digits and dashes, a letter first, up to 60: `line-near-pipe`.
        doc.not-an-id
        loaded: hose-short
        Line_near_pipe was not loaded: 1 fault at shop.yaml:5:3.
        """);

    [Fact]
    public void Three_faults_of_one_rule_are_all_told() => Golden.Check(
        Libraries.Changed("gap\n    part: { kind: [ brake-line ] }\n    to: { group: [ hot-exhaust ] }\n    limit: { at-least: 60 mm }", "gap\n    part: { kind: [ brakeline ] }\n    to: { group: [ exhaust ] }\n    limit: { at-least: 60 }"),
        """
        shop.yaml:7:21: error: Number 1 of `kind`: `brakeline` is none of the words for this.
              part: { kind: [ brakeline ] }
                              ^^^^^^^^^
        help: Did you mean `brake-line`? Words: brake-line, fuel-line, wiring, exhaust-pipe, muffler, heat-shield, axle-tube, axle-housing, axle-bracket, link, shock, coil-spring, anti-roll-bar, knuckle, driveshaft, steering-rod, rod-end, frame-tube, frame-rail, frame-bracket ....

        shop.yaml:8:20: error: Number 1 of `group`: `exhaust` is none of the words for this.
              to: { group: [ exhaust ] }
                             ^^^^^^^
        help: Words: line, hot-exhaust, shield, suspension, arm, driveline, steering, frame, tank, bodywork, liner, brake, hose, hose-end, stop, wheel, boot, engine, fan, radiator, lever, any.

        shop.yaml:9:24: error: `60` has no unit, and a rule file has no unit for bare numbers.
              limit: { at-least: 60 }
                                 ^^
        help: Write `60 mm` or `60 in`.
        doc.unknown-word doc.unknown-word rule.value-without-unit
        loaded: hose-short
        line-near-pipe was not loaded: 3 faults, the first at shop.yaml:7:21.
        """);

    [Fact]
    public void A_rule_that_is_no_map_is_left_out() => Golden.Check(
        """
        format: 1
        library: the-shop
        version: 1.0.0
        rules:
          line-near-pipe: 60 mm
          other-rule:
            quantity: gap
            part: { kind: [ brake-line ] }
            to: { group: [ hot-exhaust ] }
            limit: { at-least: 60 mm }
            severity: warning
            source: { basis: shop }
        """,
        """
        shop.yaml:5:19: error: `line-near-pipe`: a map of keys is needed here, and this is a single value.
            line-near-pipe: 60 mm
                            ^^^^^
        help: Write `{ key: value }`, or one `key: value` a line below, indented.
        doc.wrong-shape
        loaded: other-rule
        line-near-pipe was not loaded: 1 fault at shop.yaml:5:19.
        """);

    [Fact]
    public void A_rule_twice_in_one_file_loads_neither() => Golden.Check(
        """
        format: 1
        library: the-shop
        version: 1.0.0
        rules:
          line-near-pipe:
            quantity: gap
            part: { kind: [ brake-line ] }
            to: { group: [ hot-exhaust ] }
            limit: { at-least: 60 mm }
            severity: warning
            source: { basis: shop }
          other-rule:
            quantity: gap
            part: { kind: [ brake-line ] }
            to: { group: [ hot-exhaust ] }
            limit: { at-least: 60 mm }
            severity: warning
            source: { basis: shop }
          line-near-pipe:
            quantity: gap
            part: { kind: [ brake-line ] }
            to: { group: [ hot-exhaust ] }
            limit: { at-least: 50 mm }
            severity: warning
            source: { basis: shop }
        """,
        """
        shop.yaml:19:3: error: `line-near-pipe` stands twice, in line 5 and in line 19; neither was chosen.
            line-near-pipe:
            ^^^^^^^^^^^^^^
        help: Keep the right one.
        see: shop.yaml:5:3: first defined here
        doc.duplicate-key
        loaded: other-rule
        line-near-pipe was not loaded: 1 fault at shop.yaml:19:3.
        """);

    [Fact]
    public void A_rule_in_two_files_loads_neither_and_both_places_are_named() => Golden.Check(
        """
        format: 1
        library: the-shop
        version: 1.0.0
        rules:
          line-near-pipe:
            quantity: gap
            part: { kind: [ brake-line ] }
            to: { group: [ hot-exhaust ] }
            limit: { at-least: 60 mm }
            severity: warning
            source: { basis: shop }
          other-rule:
            quantity: gap
            part: { kind: [ brake-line ] }
            to: { group: [ hot-exhaust ] }
            limit: { at-least: 60 mm }
            severity: warning
            source: { basis: shop }
        """,
        """
        format: 1
        library: the-shop
        version: 1.0.0
        rules:
          line-near-pipe:
            quantity: gap
            part: { kind: [ brake-line ] }
            to: { group: [ hot-exhaust ] }
            limit: { at-least: 50 mm }
            severity: warning
            source: { basis: shop }
        """,
        """
        b.yaml:5:3: error: The rule `line-near-pipe` stands twice, in a.yaml and in b.yaml; neither was chosen.
            line-near-pipe:
            ^^^^^^^^^^^^^^
        help: Keep the right one, or give the other an id of its own.
        see: a.yaml:5:3: first defined here
        rule.duplicate-id
        loaded: other-rule
        line-near-pipe was not loaded: it stands in more than one file, first at a.yaml:5:3.
        """);

    [Fact]
    public void Files_of_two_libraries_load_nothing() => Golden.Check(
        """
        format: 1
        library: the-shop
        version: 1.0.0
        rules:
          line-near-pipe:
            quantity: gap
            part: { kind: [ brake-line ] }
            to: { group: [ hot-exhaust ] }
            limit: { at-least: 60 mm }
            severity: warning
            source: { basis: shop }
        """,
        """
        format: 1
        library: their-shop
        version: 1.0.0
        rules:
          other-rule:
            quantity: gap
            part: { kind: [ brake-line ] }
            to: { group: [ hot-exhaust ] }
            limit: { at-least: 60 mm }
            severity: warning
            source: { basis: shop }
        """,
        """
        b.yaml:2:10: error: This file belongs to their-shop 1.0.0, and the one before to the-shop 1.0.0; files of one library share name and version.
          library: their-shop
                   ^^^^^^^^^^
        help: Write the same `library` and `version` in all files, or load one library at a time.
        see: a.yaml:2:10: the-shop 1.0.0
        rule.other-library
        no library
        """);

    [Fact]
    public void Files_of_two_versions_load_nothing() => Golden.Check(
        """
        format: 1
        library: the-shop
        version: 1.0.0
        rules:
          line-near-pipe:
            quantity: gap
            part: { kind: [ brake-line ] }
            to: { group: [ hot-exhaust ] }
            limit: { at-least: 60 mm }
            severity: warning
            source: { basis: shop }
        """,
        """
        format: 1
        library: the-shop
        version: 1.0.1
        rules:
          other-rule:
            quantity: gap
            part: { kind: [ brake-line ] }
            to: { group: [ hot-exhaust ] }
            limit: { at-least: 60 mm }
            severity: warning
            source: { basis: shop }
        """,
        """
        b.yaml:3:10: error: This file belongs to the-shop 1.0.1, and the one before to the-shop 1.0.0; files of one library share name and version.
          version: 1.0.1
                   ^^^^^
        help: Write the same `library` and `version` in all files, or load one library at a time.
        see: a.yaml:3:10: the-shop 1.0.0
        rule.other-library
        no library
        """);

    [Fact]
    public void Another_format_loads_nothing() => Golden.Check(
        Libraries.Changed("format: 1", "format: 2"),
        """
        shop.yaml:1:9: error: This program reads format 1 of rule files only.
          format: 2
                  ^
        help: Write `format: 1` and check the keys against the guide.
        rule.other-format
        no library
        """);

    [Fact]
    public void A_missing_version_loads_nothing() => Golden.Check(
        Libraries.Changed("version: 1.0.0\n", ""),
        """
        shop.yaml:1:1: error: `version` is missing in the file: the library's version, three numbers.
          format: 1
          ^
        help: Add `version: ...`.
        doc.missing-key
        no library
        """);

    [Fact]
    public void A_version_of_two_numbers_loads_nothing() => Golden.Check(
        Libraries.Changed("1.0.0", "1.0"),
        """
        shop.yaml:3:10: error: `1.0` is not a version: a library's version is three numbers.
          version: 1.0
                   ^^^
        help: Write for example `version: 1.0.0`.
        rule.no-version
        no library
        """);

    [Fact]
    public void An_overlay_needs_a_library_below_it() => Golden.Check(
        Libraries.Changed("library: the-shop", "overlay: the-shop"),
        """
        shop.yaml:1:1: error: `on` is missing in the file: what the overlay stands on.
          format: 1
          ^
        help: Add `on: ...`.

        shop.yaml:2:1: error: An overlay changes a library, and there is no library below it.
          overlay: the-shop
          ^^^^^^^
        help: Name the library's folder before the overlay's.
        doc.missing-key rule.nothing-below
        no library
        """);

    [Fact]
    public void A_misspelt_header_key_loads_nothing() => Golden.Check(
        Libraries.Changed("rules:", "rule:"),
        """
        shop.yaml:4:1: error: `rule` is not a key here.
          rule:
          ^^^^
        help: Did you mean `rules`? Keys here: format, library, version, rules.
        doc.unknown-key
        no library
        """);

    [Fact]
    public void Rules_in_a_list_load_nothing() => Golden.Check(
        """
        format: 1
        library: the-shop
        version: 1.0.0
        rules:
          - line-near-pipe
        """,
        """
        shop.yaml:5:3: error: `rules`: a map by id is needed here, and this is a list.
            - line-near-pipe
            ^^^^^^^^^^^^^^^^
        help: Write `the-id: ...`, one a line below, indented.
        doc.wrong-shape
        no library
        """);

    [Fact]
    public void A_stray_key_below_the_rules_loads_nothing() => Golden.Check(
        """
        format: 1
        library: the-shop
        version: 1.0.0
        rules:
          line-near-pipe:
            quantity: gap
            part: { kind: [ brake-line ] }
            to: { group: [ hot-exhaust ] }
            limit: { at-least: 60 mm }
            severity: warning
            source: { basis: shop }
        note: ours
        """,
        """
        shop.yaml:12:1: error: `note` is not a key here.
          note: ours
          ^^^^
        help: Keys here: format, library, version, rules.
        doc.unknown-key
        no library
        """);

    [Fact]
    public void A_tab_loads_nothing() => Golden.Check(
        Libraries.Changed("    quantity: gap", "\tquantity: gap"),
        """
        shop.yaml:6:1: error: A tab is used for indentation. Reading ended here; what follows is not checked yet.
          [tab]quantity: gap
          ^^^^^
        help: Use spaces, two for each level.
        yaml.tab-indent
        no library
        """);

    [Fact]
    public void An_empty_file_loads_nothing() => Golden.Check(
        "\n",
        """
        shop.yaml:1:1: error: The file is empty: it holds no key.
        help: Start with `format: 1`, then one `key: value` a line.
        doc.empty-file
        no library
        """);
}
