namespace ClearanceCheck.Documents.Tests.Yaml;

/// <summary>What YAML lets pass and this format does not.</summary>
public sealed class DocumentFaultTests
{
    [Fact]
    public void A_missing_space_in_a_flow_map_is_found() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            upper: { body:chassis, at: [1, 2, 3] }
            """,
            """
            t.yaml:3:14: error: `body` needs a space after the colon.
              upper: { body:chassis, at: [1, 2, 3] }
                           ^
            help: Write `body: chassis`.
            yaml.missing-space
            """);

    [Fact]
    public void A_missing_space_in_a_list_item_is_found() =>
        Golden.Yaml(
            """
            format: 1
            scope:
              - name:front
            """,
            """
            t.yaml:3:9: error: `name` needs a space after the colon.
                - name:front
                      ^
            help: Write `name: front`.
            yaml.missing-space
            """);

    [Fact]
    public void A_missing_space_in_a_key_with_a_value_is_found() =>
        Golden.Yaml(
            """
            format: 1
            name:front: left
            """,
            """
            t.yaml:2:5: error: `name` needs a space after the colon.
              name:front: left
                  ^
            help: Write `name: front: left`.
            yaml.missing-space
            """);

    [Fact]
    public void Mixed_separators_are_refused_at_the_comma_without_a_space() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            at: [65,4, 12]
            """,
            """
            t.yaml:3:8: error: Mixed separators: this comma has no space after it, others in the list do.
              at: [65,4, 12]
                     ^
            help: Write `65.4` if it is a decimal, `65, 4` if they are two numbers.
            doc.mixed-separators
            """);

    [Fact]
    public void A_decimal_comma_in_a_map_on_one_line_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            upper: { body: chassis, z: 65,4, at: [1, 2, 3] }
            """,
            """
            t.yaml:3:25: error: `z` is not a key here.
              upper: { body: chassis, z: 65,4, at: [1, 2, 3] }
                                      ^
            help: Keys here: body, at.

            t.yaml:3:31: error: `4` stands alone after a comma: YAML would make it a key without a value.
              upper: { body: chassis, z: 65,4, at: [1, 2, 3] }
                                            ^
            help: If the comma was a decimal one, write `z: 65.4`.
            doc.unknown-key doc.comma-in-number
            """);

    [Fact]
    public void Text_after_a_number_sign_does_not_vanish() =>
        Golden.Yaml(
            """
            format: 1
            name: Brake line, clip #2 to the bracket
            """,
            """
            t.yaml:2:24: error: YAML drops everything from ` #` on, so this text would vanish.
              name: Brake line, clip #2 to the bracket
                                     ^^^^^^^^^^^^^^^^^
            help: If it belongs to the value, write `name: "Brake line, clip #2 to the bracket"`; if it is a remark, give it a line of its own.
            doc.cut-by-comment
            """);

    [Fact]
    public void A_single_word_before_a_number_sign_with_a_number_does_not_lose_it() =>
        Golden.Yaml(
            """
            format: 1
            name: line #3
            """,
            """
            t.yaml:2:12: error: YAML drops everything from ` #` on, so this text would vanish.
              name: line #3
                         ^^
            help: If it belongs to the value, write `name: "line #3"`; if it is a remark, give it a line of its own.
            doc.cut-by-comment
            """);

    [Fact]
    public void A_text_with_an_inch_mark_before_a_number_sign_is_shown_in_single_quotes() =>
        Golden.Yaml(
            """
            format: 1
            name: The 31" line #3
            """,
            """
            t.yaml:2:20: error: YAML drops everything from ` #` on, so this text would vanish.
              name: The 31" line #3
                                 ^^
            help: If it belongs to the value, write `name: 'The 31" line #3'`; if it is a remark, give it a line of its own.
            doc.cut-by-comment
            """);

    [Fact]
    public void Text_alone_between_commas_makes_no_empty_key() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            upper: { body: chassis, left side, at: [1, 2, 3] }
            """,
            """
            t.yaml:3:25: error: `left side` stands alone between commas: YAML would make it a key without a value.
              upper: { body: chassis, left side, at: [1, 2, 3] }
                                      ^^^^^^^^^
            help: Put text that holds a comma in quotes: `body: "chassis, left side"`.
            doc.key-without-value
            """);

    [Fact]
    public void A_key_without_a_value_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            name:
            kind: brake-hose
            """,
            """
            t.yaml:2:1: error: `name` has no value.
              name:
              ^^^^
            help: Write the value after the colon; leave the key out if there is none.
            doc.no-value
            """);

    [Fact]
    public void A_list_item_without_a_value_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            scope:
              -
              - front
            """,
            """
            t.yaml:3:4: error: This list item has no value.
                -
                 ^
            help: Write the value after the dash, or take the dash away.
            doc.no-item
            """);

    [Fact]
    public void A_word_for_nothing_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            name: ~
            """,
            """
            t.yaml:2:7: error: `~` means "no value" to YAML.
              name: ~
                    ^
            help: Leave the key out, or put the word in quotes if it is text.
            doc.null
            """);

    [Fact]
    public void A_key_that_stands_twice_names_both_lines_and_chooses_neither() =>
        Golden.Yaml(
            """
            format: 1
            height: 31 in
            name: hose
            height: 33 in
            """,
            """
            t.yaml:4:1: error: `height` stands twice, in line 2 and in line 4; neither was chosen.
              height: 33 in
              ^^^^^^
            help: Keep the right one.
            see: t.yaml:2:1: first defined here
            doc.duplicate-key
            """);

    [Fact]
    public void A_colon_without_a_key_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            : front
            """,
            """
            t.yaml:2:1: error: There is no key here.
              : front
              ^
            help: Write `key: value`.
            doc.empty-key
            """);

    [Fact]
    public void A_list_as_a_key_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            [a, b]: 3
            """,
            """
            t.yaml:2:1: error: A key has to be a word; here it is a list or a map.
              [a, b]: 3
              ^
            help: Write `key: value`.
            doc.key-is-no-word
            """);

    [Fact]
    public void An_alias_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            name: *left
            """,
            """
            t.yaml:2:7: error: `*left` is a YAML alias; aliases are not used here.
              name: *left
                    ^^^^^
            help: Write the value out, or put it in quotes if it is text.
            doc.alias
            """);

    [Fact]
    public void An_anchor_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            name: &left hose
            """,
            """
            t.yaml:2:7: error: `&left` is a YAML anchor; anchors are not used here.
              name: &left hose
                    ^^^^^
            help: Write the value out wherever it is needed, or put it in quotes if it is text.
            doc.anchor
            """);

    [Fact]
    public void A_tag_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            name: !x hose
            """,
            """
            t.yaml:2:7: error: `!x` is a YAML tag; tags are not used here.
              name: !x hose
                    ^^
            help: Take it away, or put the value in quotes if it is text.
            doc.tag
            """);

    [Fact]
    public void A_tag_with_two_marks_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            factor: !!float 3
            """,
            """
            t.yaml:2:9: error: `tag:yaml.org,2002:float` is a YAML tag; tags are not used here.
              factor: !!float 3
                      ^^^^^^^
            help: Take it away, or put the value in quotes if it is text.
            doc.tag
            """);

    [Fact]
    public void A_value_over_two_lines_needs_quotes() =>
        Golden.Yaml(
            """
            format: 1
            name: the left
              hose
            kind: brake-hose
            """,
            """
            t.yaml:2:7: error: This value runs on over the next line without quotes.
              name: the left
                    ^^^^^^^^
            help: Put it in quotes, or check the indent and the colon of the next line.
            doc.over-lines
            """);

    [Fact]
    public void A_list_below_a_value_is_not_swallowed_by_it() =>
        Golden.Yaml(
            """
            format: 1
            name: hose
              - front
            """,
            """
            t.yaml:2:7: error: This value runs on over the next line without quotes.
              name: hose
                    ^^^^
            help: Put it in quotes, or check the indent and the colon of the next line.
            doc.over-lines
            """);

    [Fact]
    public void An_empty_file_says_what_to_start_with() =>
        Golden.Yaml(
            "",
            """
            t.yaml:1:1: error: The file is empty: it holds no key.
            help: Start with `format: 1`, then one `key: value` a line.
            doc.empty-file
            """);

    [Fact]
    public void A_file_of_remarks_says_what_to_start_with() =>
        Golden.Yaml(
            "# nothing measured yet",
            """
            t.yaml:1:1: error: The file is empty: it holds no key.
              # nothing measured yet
              ^
            help: Start with `format: 1`, then one `key: value` a line.
            doc.empty-file
            """);

    [Fact]
    public void A_second_document_is_refused_at_its_line() =>
        Golden.Yaml(
            """
            format: 1
            ---
            format: 1
            """,
            """
            t.yaml:2:1: error: A second document begins here; a file holds one. Reading ended here; what follows is not checked yet.
              ---
              ^^^
            help: Move it into a file of its own.
            doc.second-document
            """);

    [Fact]
    public void A_file_that_is_a_list_is_refused() =>
        Golden.Yaml(
            """
            - 1
            - 2
            """,
            """
            t.yaml:1:1: error: The file does not start with a key.
              - 1
              ^^^
            help: Start with `format: 1`, then one `key: value` a line.
            doc.top-is-no-map
            """);

    [Fact]
    public void A_file_that_is_a_word_is_refused() =>
        Golden.Yaml(
            "hose",
            """
            t.yaml:1:1: error: The file does not start with a key.
              hose
              ^^^^
            help: Start with `format: 1`, then one `key: value` a line.
            doc.top-is-no-map
            """);
}
