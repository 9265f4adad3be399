namespace ClearanceCheck.Documents.Tests.Yaml;

/// <summary>Indents, lists and brackets that break YAML's own syntax: reading ends, and that is said.</summary>
public sealed class YamlLayoutFaultTests
{
    [Fact]
    public void A_key_indented_below_a_value_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            name: front
              kind: brake-hose
            """,
            """
            t.yaml:3:1: error: `kind` is indented below a line that has its value already. Reading ended here; what follows is not checked yet.
                kind: brake-hose
              ^^
            help: Give it the indent of its neighbours, or end the line above with its colon.
            yaml.indent
            """);

    [Fact]
    public void An_indent_that_fits_nothing_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            upper:
                body: chassis
              at: [1, 2, 3]
            """,
            """
            t.yaml:5:1: error: The indent of this line fits none of the lines above. Reading ended here; what follows is not checked yet.
                at: [1, 2, 3]
              ^^
            help: Give keys of one map the same number of spaces.
            yaml.uneven-indent
            """);

    [Fact]
    public void A_line_without_a_colon_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            the left hose
            kind: brake-hose
            """,
            """
            t.yaml:2:1: error: `the left hose` is neither a key with its value nor a list item. Reading ended here; what follows is not checked yet.
              the left hose
              ^^^^^^^^^^^^^
            help: Write `key: value`, or put the text in quotes after its key.
            yaml.no-colon
            """);

    [Fact]
    public void A_list_item_among_keys_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            - brake-hose
            """,
            """
            t.yaml:2:1: error: A list item stands where a key is needed. Reading ended here; what follows is not checked yet.
              - brake-hose
              ^
            help: Put a key with a colon above the list, and indent the list below it.
            yaml.item-among-keys
            """);

    [Fact]
    public void A_dash_on_the_line_of_its_key_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            clips: - 1
            """,
            """
            t.yaml:2:8: error: A list with dashes cannot begin on the line of its key. Reading ended here; what follows is not checked yet.
              clips: - 1
                     ^
            help: Start it on the next line, or write `[ first, second ]`.
            yaml.list-on-key-line
            """);

    [Fact]
    public void An_unclosed_list_is_marked_where_it_opens() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            at: [1, 2, 3
            kind: brake-hose
            """,
            """
            t.yaml:3:5: error: This `[` is never closed. Reading ended here; what follows is not checked yet.
              at: [1, 2, 3
                  ^
            help: Add `]` at the end of what it holds.
            yaml.unclosed-bracket
            """);

    [Fact]
    public void An_unclosed_map_is_marked_where_it_opens() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            upper: { body: chassis, at: [1, 2, 3]
            kind: brake-hose
            """,
            """
            t.yaml:3:29: error: This `[` is never closed. Reading ended here; what follows is not checked yet.
              upper: { body: chassis, at: [1, 2, 3]
                                          ^
            help: Add `]` at the end of what it holds.
            yaml.unclosed-bracket
            """);

    [Fact]
    public void An_unclosed_map_after_a_quote_is_marked_where_it_opens() =>
        Golden.Yaml(
            """
            format: 1
            upper: { body: "chassis"
            kind: brake-hose
            """,
            """
            t.yaml:2:8: error: This `{` is never closed. Reading ended here; what follows is not checked yet.
              upper: { body: "chassis"
                     ^
            help: Add `}` at the end of what it holds.
            yaml.unclosed-bracket
            """);

    [Fact]
    public void A_wrong_closing_bracket_names_the_opening_one() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            at: [1, 2, 3}
            """,
            """
            t.yaml:3:13: error: `}` does not close `[`. Reading ended here; what follows is not checked yet.
              at: [1, 2, 3}
                          ^
            help: Close a list with `]`.
            see: t.yaml:3:5: opened here
            yaml.wrong-bracket
            """);

    [Fact]
    public void An_extra_closing_bracket_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            at: [1, 2, 3]]
            """,
            """
            t.yaml:3:14: error: This `]` closes nothing. Reading ended here; what follows is not checked yet.
              at: [1, 2, 3]]
                           ^
            help: Take it away, or put the text in quotes.
            yaml.extra-bracket
            """);

    [Fact]
    public void A_missing_comma_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            upper: { body: "chassis", at: [1, 2, 3] kind: x }
            """,
            """
            t.yaml:3:41: error: A comma or a closing bracket is needed before this.
              upper: { body: "chassis", at: [1, 2, 3] kind: x }
                                                      ^
            help: Separate entries with a comma and a space; put text that holds `: ` into quotes.

            t.yaml:3:41: error: `kind` is not a key here.
              upper: { body: "chassis", at: [1, 2, 3] kind: x }
                                                      ^^^^
            help: Keys here: body, at.
            yaml.missing-comma doc.unknown-key
            """);

    [Fact]
    public void Nothing_between_commas_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            at: [1, , 3]
            """,
            """
            t.yaml:3:9: error: There is nothing before this comma. Reading ended here; what follows is not checked yet.
              at: [1, , 3]
                      ^
            help: Write the value, or take the comma away.
            yaml.empty-between-commas
            """);

    [Fact]
    public void A_fault_of_no_known_kind_is_still_placed() =>
        Golden.Yaml(
            """

            ...
            kind
            """,
            """
            t.yaml:1:1: error: The text cannot be read as YAML from here on. Reading ended here; what follows is not checked yet.
            help: Look at indents, colons, brackets and quotes just before this place.
            yaml.unreadable
            """);

    [Fact]
    public void A_lone_question_mark_is_no_key() =>
        Golden.Yaml(
            """
            format: 1
            ?
            """,
            """
            t.yaml:2:2: error: There is no key here.
              ?
               ^
            help: Write `key: value`.
            doc.empty-key
            """);

    [Fact]
    public void Text_after_a_list_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            at: [1, 2, 3] mm
            """,
            """
            t.yaml:3:15: error: `mm` stands where the value has ended. Reading ended here; what follows is not checked yet.
              at: [1, 2, 3] mm
                            ^^
            help: Put text that holds brackets or quotes into quotes as a whole, or take the rest away.
            yaml.text-after-value
            """);
}
