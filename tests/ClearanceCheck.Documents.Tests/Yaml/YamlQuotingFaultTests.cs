namespace ClearanceCheck.Documents.Tests.Yaml;

/// <summary>Tabs, colons, quotes and reserved marks that break YAML's own syntax: reading ends, and that is said.</summary>
public sealed class YamlQuotingFaultTests
{
    [Fact]
    public void A_tab_used_for_indentation_is_marked_at_the_tab() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            upper:
            	body: chassis
            	at: [1, 2, 3]
            """,
            """
            t.yaml:4:1: error: A tab is used for indentation, here and in 1 more line. Reading ended here; what follows is not checked yet.
              [tab]body: chassis
              ^^^^^
            help: Use spaces, two for each level.
            yaml.tab-indent
            """);

    [Fact]
    public void A_tab_after_spaces_is_marked_at_the_tab() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            upper:
              body: chassis
             	at: [1, 2, 3]
            """,
            """
            t.yaml:5:2: error: A tab is used for indentation. Reading ended here; what follows is not checked yet.
               [tab]at: [1, 2, 3]
               ^^^^^
            help: Use spaces, two for each level.
            yaml.tab-indent
            """);

    [Fact]
    public void A_missing_space_after_a_key_between_others_shows_the_fixed_line() =>
        Golden.Yaml(
            """
            format: 1
            name:front
            kind: brake-hose
            """,
            """
            t.yaml:2:5: error: `name` needs a space after the colon. Reading ended here; what follows is not checked yet.
              name:front
                  ^
            help: Write `name: front`.
            yaml.missing-space
            """);

    [Fact]
    public void A_missing_space_after_the_first_key_is_found_though_the_parser_marks_the_next_line() =>
        Golden.Yaml(
            """
            upper:
              body:chassis
              at: [1, 2, 3]
            """,
            """
            t.yaml:2:7: error: `body` needs a space after the colon. Reading ended here; what follows is not checked yet.
                body:chassis
                    ^
            help: Write `body: chassis`.
            yaml.missing-space
            """);

    [Fact]
    public void A_missing_space_before_a_bracket_is_found() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            upper: {at:[1,2,3], body: chassis}
            """,
            """
            t.yaml:3:11: error: `at` needs a space after the colon. Reading ended here; what follows is not checked yet.
              upper: {at:[1,2,3], body: chassis}
                        ^
            help: Write `at: [1,2,3]`.
            yaml.missing-space
            """);

    [Fact]
    public void An_unclosed_double_quote_is_marked_where_it_opens() =>
        Golden.Yaml(
            """
            format: 1
            height: "31
            kind: brake-hose
            """,
            """
            t.yaml:2:9: error: This quote is opened and never closed. Reading ended here; what follows is not checked yet.
              height: "31
                      ^
            help: Close it on the same line; write an inch as `31 in`, or as `'31"'` in quotes.
            yaml.unclosed-quote
            """);

    [Fact]
    public void An_unclosed_single_quote_is_marked_where_it_opens() =>
        Golden.Yaml(
            """
            format: 1
            name: 'Left hose
            kind: brake-hose
            """,
            """
            t.yaml:2:7: error: This quote is opened and never closed. Reading ended here; what follows is not checked yet.
              name: 'Left hose
                    ^
            help: Close it on the same line; write an inch as `31 in`, or as `'31"'` in quotes.
            yaml.unclosed-quote
            """);

    [Fact]
    public void An_unclosed_quote_that_swallows_lines_up_to_the_next_quote_is_marked_where_it_opens() =>
        Golden.Yaml(
            """
            format: 1
            name: 'Left hose
            id: 'hose'
            """,
            """
            t.yaml:2:7: error: This quote is opened and never closed. Reading ended here; what follows is not checked yet.
              name: 'Left hose
                    ^
            help: Close it on the same line; write an inch as `31 in`, or as `'31"'` in quotes.
            yaml.unclosed-quote
            """);

    [Fact]
    public void A_unit_after_a_quoted_number_is_shown_without_quotes() =>
        Golden.Yaml(
            """
            format: 1
            height: "31-5/8" in
            """,
            """
            t.yaml:2:18: error: `in` stands after the closing quote. Reading ended here; what follows is not checked yet.
              height: "31-5/8" in
                               ^^
            help: Write `31-5/8 in` without quotes.
            yaml.text-after-quote
            """);

    [Fact]
    public void Text_after_a_quote_inside_brackets_is_found() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            upper: { body: "chassis" rear, at: [1, 2, 3] }
            """,
            """
            t.yaml:3:26: error: `rear` stands after the closing quote. Reading ended here; what follows is not checked yet.
              upper: { body: "chassis" rear, at: [1, 2, 3] }
                                       ^^^^
            help: Put all of it into one pair of quotes: `"chassis rear"`.
            yaml.text-after-quote
            """);

    [Fact]
    public void An_apostrophe_inside_single_quotes_ends_them() =>
        Golden.Yaml(
            """
            format: 1
            name: 'The driver's side'
            """,
            """
            t.yaml:2:19: error: `s side'` stands after the closing quote. Reading ended here; what follows is not checked yet.
              name: 'The driver's side'
                                ^^^^^^^
            help: Put all of it into one pair of quotes: `"The driver's side"`.
            yaml.text-after-quote
            """);

    [Fact]
    public void A_colon_in_prose_is_shown_in_quotes() =>
        Golden.Yaml(
            """
            format: 1
            name: Brake line: clip 2
            """,
            """
            t.yaml:2:17: error: There is a second `: ` in this line, and YAML would take what is before it for a key. Reading ended here; what follows is not checked yet.
              name: Brake line: clip 2
                              ^
            help: Put the text in quotes: `name: "Brake line: clip 2"`.
            yaml.colon-in-text
            """);

    [Fact]
    public void A_colon_in_prose_inside_brackets_is_found() =>
        Golden.Yaml(
            """
            format: 1
            unit: mm
            upper: { body: Brake line: clip 2, at: [1, 2, 3] }
            """,
            """
            t.yaml:3:26: error: There is a second `: ` in this line, and YAML would take what is before it for a key. Reading ended here; what follows is not checked yet.
              upper: { body: Brake line: clip 2, at: [1, 2, 3] }
                                       ^
            help: Put the text in quotes: `body: "Brake line: clip 2"`.
            yaml.colon-in-text
            """);

    [Fact]
    public void A_value_cannot_begin_with_a_greater_sign() =>
        Golden.Yaml(
            """
            format: 1
            name: > 3 mm of play
            """,
            """
            t.yaml:2:7: error: A value cannot begin with `>`: it has a meaning of its own in YAML. Reading ended here; what follows is not checked yet.
              name: > 3 mm of play
                    ^
            help: Put the value in quotes: `"> 3 mm of play"`.
            yaml.reserved-start
            """);

    [Fact]
    public void A_value_cannot_begin_with_a_bar() =>
        Golden.Yaml(
            """
            format: 1
            name: | left
            """,
            """
            t.yaml:2:7: error: A value cannot begin with `|`: it has a meaning of its own in YAML. Reading ended here; what follows is not checked yet.
              name: | left
                    ^
            help: Put the value in quotes: `"| left"`.
            yaml.reserved-start
            """);

    [Fact]
    public void A_value_cannot_begin_with_a_percent_sign() =>
        Golden.Yaml(
            """
            format: 1
            slack: %5
            """,
            """
            t.yaml:2:8: error: A value cannot begin with `%`: it has a meaning of its own in YAML. Reading ended here; what follows is not checked yet.
              slack: %5
                     ^
            help: Put the value in quotes: `"%5"`.
            yaml.reserved-start
            """);

    [Fact]
    public void A_value_cannot_begin_with_an_at_sign() =>
        Golden.Yaml(
            """
            format: 1
            name: @left
            """,
            """
            t.yaml:2:7: error: A value cannot begin with `@`: it has a meaning of its own in YAML. Reading ended here; what follows is not checked yet.
              name: @left
                    ^
            help: Put the value in quotes: `"@left"`.
            yaml.reserved-start
            """);

    [Fact]
    public void A_value_cannot_begin_with_a_backtick() =>
        Golden.Yaml(
            """
            format: 1
            name: `left
            """,
            """
            t.yaml:2:7: error: A value cannot begin with a backtick: it has a meaning of its own in YAML. Reading ended here; what follows is not checked yet.
              name: `left
                    ^
            help: Put the value in quotes: `"`left"`.
            yaml.reserved-start
            """);

    [Fact]
    public void A_value_cannot_begin_with_a_lone_star() =>
        Golden.Yaml(
            """
            format: 1
            name: * checked
            """,
            """
            t.yaml:2:7: error: A value cannot begin with `*`: it has a meaning of its own in YAML. Reading ended here; what follows is not checked yet.
              name: * checked
                    ^
            help: Put the value in quotes: `"* checked"`.
            yaml.reserved-start
            """);

    [Fact]
    public void A_value_cannot_begin_with_a_comma() =>
        Golden.Yaml(
            """
            format: 1
            name: , left
            """,
            """
            t.yaml:2:7: error: A value cannot begin with `,`: it has a meaning of its own in YAML. Reading ended here; what follows is not checked yet.
              name: , left
                    ^
            help: Put the value in quotes: `", left"`.
            yaml.reserved-start
            """);

    [Fact]
    public void A_backslash_in_double_quotes_is_refused() =>
        Golden.Yaml(
            """
            format: 1
            points: "left\points.csv"
            """,
            """
            t.yaml:2:9: error: A backslash in double quotes means something else to YAML. Reading ended here; what follows is not checked yet.
              points: "left\points.csv"
                      ^^^^^^^^^^^^^^^^^
            help: Use single quotes around text that holds a backslash.
            yaml.backslash
            """);
}
