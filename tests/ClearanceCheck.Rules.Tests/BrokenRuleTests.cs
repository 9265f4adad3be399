namespace ClearanceCheck.Rules.Tests;

/// <summary>Quantity, parts and limit of a rule, each broken in one way, with everything that is said then.</summary>
public sealed class BrokenRuleTests
{
    [Fact]
    public void An_unknown_quantity_is_named_with_the_nearest() => Golden.Check(
        Libraries.Changed("quantity: gap", "quantity: gapp"),
        """
        shop.yaml:6:15: error: `quantity`: `gapp` is none of the words for this.
              quantity: gapp
                        ^^^^
        help: Did you mean `gap`? Words: gap, hose-slack, joint-angle, angle-difference, engagement, reserve, open-reserve, preload, bump-steer, toe-change, toe, over-centre, span, axle-offset, wheelbase-difference, travel, gearing.
        doc.unknown-word
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:6:15.
        """);

    [Fact]
    public void A_limit_without_a_unit_is_refused() => Golden.Check(
        Libraries.Changed("60 mm", "60"),
        """
        shop.yaml:9:24: error: `60` has no unit, and a rule file has no unit for bare numbers.
              limit: { at-least: 60 }
                                 ^^
        help: Write `60 mm` or `60 in`.
        rule.value-without-unit
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:9:24.
        """);

    [Fact]
    public void A_percent_limit_without_its_sign_is_refused() => Golden.Check(
        Libraries.Changed("7 %", "7"),
        """
        shop.yaml:15:24: error: `7` has no unit, and a rule file has no unit for bare numbers.
              limit: { at-least: 7 }
                                 ^
        help: Write `7 %`.
        rule.value-without-unit
        loaded: line-near-pipe
        hose-short was not loaded: 1 fault at shop.yaml:15:24.
        """);

    [Fact]
    public void A_share_is_no_gap() => Golden.Check(
        Libraries.Changed("60 mm", "60 %"),
        """
        shop.yaml:9:24: error: `60 %` has the wrong unit: gap is a length.
              limit: { at-least: 60 % }
                                 ^^^^
        help: Write for example `25 mm` or `1 in`.
        rule.value-of-other-unit
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:9:24.
        """);

    [Fact]
    public void A_length_is_no_slack() => Golden.Check(
        Libraries.Changed("7 %", "7 mm"),
        """
        shop.yaml:15:24: error: `7 mm` has the wrong unit: hose slack is a share in percent.
              limit: { at-least: 7 mm }
                                 ^^^^
        help: Write for example `5 %`.
        rule.value-of-other-unit
        loaded: line-near-pipe
        hose-short was not loaded: 1 fault at shop.yaml:15:24.
        """);

    [Fact]
    public void An_unknown_kind_is_named_with_the_nearest() => Golden.Check(
        Libraries.Changed("brake-line", "brake-lin"),
        """
        shop.yaml:7:21: error: Number 1 of `kind`: `brake-lin` is none of the words for this.
              part: { kind: [ brake-lin ] }
                              ^^^^^^^^^
        help: Did you mean `brake-line`? Words: brake-line, fuel-line, wiring, exhaust-pipe, muffler, heat-shield, axle-tube, axle-housing, axle-bracket, link, shock, coil-spring, anti-roll-bar, knuckle, driveshaft, steering-rod, rod-end, frame-tube, frame-rail, frame-bracket ....
        doc.unknown-word
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:7:21.
        """);

    [Fact]
    public void An_unknown_group_is_named_with_the_nearest() => Golden.Check(
        Libraries.Changed("hot-exhaust", "hot-exaust"),
        """
        shop.yaml:8:20: error: Number 1 of `group`: `hot-exaust` is none of the words for this.
              to: { group: [ hot-exaust ] }
                             ^^^^^^^^^^
        help: Did you mean `hot-exhaust`? Words: line, hot-exhaust, shield, suspension, arm, driveline, steering, frame, tank, bodywork, liner, brake, hose, hose-end, stop, wheel, boot, engine, fan, radiator, lever, any.
        doc.unknown-word
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:8:20.
        """);

    [Fact]
    public void A_kind_without_brackets_is_no_list() => Golden.Check(
        Libraries.Changed("[ brake-line ]", "brake-line"),
        """
        shop.yaml:7:19: error: `kind`: a list is needed here, and this is a single value.
              part: { kind: brake-line }
                            ^^^^^^^^^^
        help: Write `[ first, second ]`, or one `- item` a line.
        doc.wrong-shape
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:7:19.
        """);

    [Fact]
    public void An_at_most_gap_cannot_be_judged() => Golden.Check(
        Libraries.Changed("at-least", "at-most"),
        """
        shop.yaml:9:23: error: `at-most` can't be judged: of gap the smallest value over all poses is found.
              limit: { at-most: 60 mm }
                                ^^^^^
        help: Write `at-least: ...`.
        rule.side-not-judged
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:9:23.
        """);

    [Fact]
    public void Two_sides_at_once_are_refused() => Golden.Check(
        Libraries.Changed("{ at-least: 60 mm }", "{ at-least: 60 mm, at-most: 90 mm }"),
        """
        shop.yaml:9:40: error: A limit has one form, and here it has two: `at-least` and `at-most`.
              limit: { at-least: 60 mm, at-most: 90 mm }
                                                 ^^^^^
        help: Keep one of them.
        see: shop.yaml:9:24: the other form
        rule.two-limits
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:9:40.
        """);

    [Fact]
    public void An_empty_limit_is_refused() => Golden.Check(
        Libraries.Changed("{ at-least: 60 mm }", "{}"),
        """
        shop.yaml:9:5: error: The limit says nothing.
              limit: {}
              ^^^^^
        help: Write one of `at-least`, `at-most`, `between`, `at-least-by`, `at-most-own`, such as `limit: { at-least: 25 mm }`.
        rule.no-limit
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:9:5.
        """);

    [Fact]
    public void Between_is_refused_where_one_side_is_bounded() => Golden.Check(
        Libraries.Changed("{ at-least: 60 mm }", "{ between: [ 60 mm, 90 mm ] }"),
        """
        shop.yaml:9:23: error: `between` can't be judged: of gap only the smallest value over all poses is found.
              limit: { between: [ 60 mm, 90 mm ] }
                                ^^^^^^^^^^^^^^^^
        help: Write `at-least: ...`.
        rule.side-not-judged
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:9:23.
        """);

    [Fact]
    public void A_missing_limit_is_named() => Golden.Check(
        Libraries.Changed("    limit: { at-least: 60 mm }\n", ""),
        """
        shop.yaml:5:3: error: `limit` is missing in `line-near-pipe`: the value that is still right, such as `{ at-least: 25 mm }`.
            line-near-pipe:
            ^^^^^^^^^^^^^^
        help: Add `limit: ...`.
        doc.missing-key
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:5:3.
        """);

    [Fact]
    public void A_gap_needs_its_other_part() => Golden.Check(
        Libraries.Changed("    to: { group: [ hot-exhaust ] }\n", ""),
        """
        shop.yaml:5:3: error: `to` is missing in `line-near-pipe`: gap is measured between two parts, and this is the other one.
            line-near-pipe:
            ^^^^^^^^^^^^^^
        help: Add `to: ...`.
        doc.missing-key
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:5:3.
        """);

    [Fact]
    public void A_slack_has_no_other_part() => Golden.Check(
        Libraries.Changed("[ brake-hose ] }", "[ brake-hose ] }\n    to: { group: [ frame ] }"),
        """
        shop.yaml:15:9: error: Hose slack belongs to one part, and `to` names a second.
              to: { group: [ frame ] }
                  ^^^^^^^^^^^^^^^^^^^^
        help: Leave `to` out.
        rule.to-without-pair
        loaded: line-near-pipe
        hose-short was not loaded: 1 fault at shop.yaml:15:9.
        """);

    [Fact]
    public void A_selector_that_contradicts_the_kinds_is_refused() => Golden.Check(
        Libraries.Changed("{ kind: [ brake-line ] }", "{ kind: [ brake-line ], group: [ hot-exhaust ] }"),
        """
        shop.yaml:7:5: error: No part can be of kind brake-line, group hot-exhaust at once: every key must hold.
              part: { kind: [ brake-line ], group: [ hot-exhaust ] }
              ^^^^
        help: Leave one of the keys out.
        rule.selects-nothing
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:7:5.
        """);

    [Fact]
    public void An_empty_selector_is_refused() => Golden.Check(
        Libraries.Changed("{ kind: [ brake-line ] }", "{}"),
        """
        shop.yaml:7:5: error: `part` selects every part there is.
              part: {}
              ^^^^
        help: Write `kind: [ ... ]`, `group: [ ... ]` or `id: [ ... ]`.
        rule.empty-selector
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:7:5.
        """);
}
