namespace ClearanceCheck.Rules.Tests;

/// <summary>The other keys of a rule, its examples and cases, each broken in one way, with everything that is said then.</summary>
public sealed class BrokenRuleWordsTests
{
    [Fact]
    public void An_unknown_severity_is_named() => Golden.Check(
        Libraries.Changed("severity: warning", "severity: dangerous"),
        """
        shop.yaml:10:15: error: `severity`: `dangerous` is none of the words for this.
              severity: dangerous
                        ^^^^^^^^^
        help: Did you mean `danger`? Words: danger, warning, caution, notice.
        doc.unknown-word
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:10:15.
        """);

    [Fact]
    public void An_unknown_pose_set_is_named() => Golden.Check(
        Libraries.Changed("severity: warning", "over: all-pose\n    severity: warning"),
        """
        shop.yaml:10:11: error: `over`: `all-pose` is none of the words for this.
              over: all-pose
                    ^^^^^^^^
        help: Did you mean `all-poses`? Words: all-poses, articulated, bump, droop, full-bump, full-droop, ride-height.
        doc.unknown-word
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:10:11.
        """);

    [Fact]
    public void An_unknown_key_is_named_with_the_nearest() => Golden.Check(
        Libraries.Changed("severity: warning", "severity: warning\n    advise: Move it."),
        """
        shop.yaml:11:5: error: `advise` is not a key here.
              advise: Move it.
              ^^^^^^
        help: Did you mean `advice`? Keys here: quantity, severity, part, to, source, over, decision, floor, accept, only-when, limit, cases, examples, recheck, title, consequence, advice, hand-check.
        doc.unknown-key
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:11:5.
        """);

    [Fact]
    public void What_may_be_accepted_is_worse_than_the_limit() => Golden.Check(
        Libraries.Changed("severity: warning", "severity: warning\n    accept: { floor: 65 mm, days: 180 }"),
        """
        shop.yaml:11:22: error: What may be accepted is worse than the limit or at it, and this floor is better: the rule asks for at least 60 mm.
              accept: { floor: 65 mm, days: 180 }
                               ^^^^^
        help: Write a value that is no better than any limit of the rule.
        rule.accept-floor-stricter
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:11:22.
        """);

    [Fact]
    public void From_memory_is_never_published() => Golden.Check(
        Libraries.Changed("basis: shop", "basis: published, known: from-memory"),
        """
        shop.yaml:11:40: error: What is known from memory is never published.
              source: { basis: published, known: from-memory }
                                                 ^^^^^^^^^^^
        help: Write `known: read` or `known: second-hand` if that is so; else `basis: common-practice`.
        rule.not-published
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:11:40.
        """);

    [Fact]
    public void Published_without_having_been_read_is_refused() => Golden.Check(
        Libraries.Changed("basis: shop", "basis: published"),
        """
        shop.yaml:11:22: error: `published` needs a source that was read, and `known` does not say so.
              source: { basis: published }
                               ^^^^^^^^^
        help: Write `known: read` or `known: second-hand` if that is so; else `basis: common-practice`.
        rule.not-published
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:11:22.
        """);

    [Fact]
    public void Danger_does_not_rest_on_common_practice() => Golden.Check(
        Libraries.Changed("severity: warning\n    source: { basis: shop }", "severity: danger\n    source: { basis: common-practice }"),
        """
        shop.yaml:10:15: error: `danger` holds a vehicle, and common practice without a source is not enough for that.
              severity: danger
                        ^^^^^^
        help: Write `severity: warning`, or name a source or a plain physical fact.
        rule.danger-on-a-guess
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:10:15.
        """);

    [Fact]
    public void A_misspelt_fact_is_an_error() => Golden.Check(
        Libraries.Changed("severity: warning", "severity: warning\n    only-when: [ movin ]"),
        """
        shop.yaml:11:18: error: Number 1 of `only-when`: `movin` is none of the words for this.
              only-when: [ movin ]
                           ^^^^^
        help: Did you mean `moving`? Words: moving, shielded, uncovered, meant-contact, joined, read.
        doc.unknown-word
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:11:18.
        """);

    [Fact]
    public void An_example_that_lies_is_told_with_what_came_out() => Golden.Check(
        Libraries.Changed("severity: warning", "severity: warning\n    examples:\n      - { value: 60 mm, expect: conforms }\n      - { value: 60 mm, uncertainty: 1 mm, expect: conforms }"),
        """
        shop.yaml:13:9: error: This example says that 60 mm give or take 2 mm is `conforms`, but against at least 60 mm the rule makes it `undecided`.
                - { value: 60 mm, uncertainty: 1 mm, expect: conforms }
                  ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
        help: Correct the rule, or write `expect: undecided`.
        rule.example-lies
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:13:9.
        """);

    [Fact]
    public void An_example_that_is_not_covered_is_told() => Golden.Check(
        Libraries.Changed("severity: warning", "severity: warning\n    examples:\n      - { value: 10 mm, part: { kind: fuel-line }, expect: fails }"),
        """
        shop.yaml:12:9: error: This example says that 10 mm is `fails`, but the rule does not cover such parts or facts.
                - { value: 10 mm, part: { kind: fuel-line }, expect: fails }
                  ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
        help: Correct the rule, or write `expect: not-covered`.
        rule.example-lies
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:12:9.
        """);

    [Fact]
    public void An_example_without_a_unit_is_refused() => Golden.Check(
        Libraries.Changed("severity: warning", "severity: warning\n    examples: [ { value: 60, expect: conforms } ]"),
        """
        shop.yaml:11:26: error: `60` has no unit, and a rule file has no unit for bare numbers.
              examples: [ { value: 60, expect: conforms } ]
                                   ^^
        help: Write `60 mm` or `60 in`.
        rule.value-without-unit
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:11:26.
        """);

    [Fact]
    public void A_negative_uncertainty_is_refused() => Golden.Check(
        Libraries.Changed("severity: warning", "severity: warning\n    examples: [ { value: 60 mm, uncertainty: -1 mm, expect: conforms } ]"),
        """
        shop.yaml:11:46: error: An uncertainty is zero or more.
              examples: [ { value: 60 mm, uncertainty: -1 mm, expect: conforms } ]
                                                       ^^^^^
        help: Take the minus away.
        rule.negative-uncertainty
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:11:46.
        """);

    [Fact]
    public void An_example_of_one_part_names_no_second() => Golden.Check(
        Libraries.Changed("severity: caution", "severity: caution\n    examples: [ { value: 8 %, to: { kind: frame-tube }, expect: conforms } ]"),
        """
        shop.yaml:17:35: error: Hose slack belongs to one part, and `to` names a second.
              examples: [ { value: 8 %, to: { kind: frame-tube }, expect: conforms } ]
                                            ^^^^^^^^^^^^^^^^^^^^
        help: Leave `to` out.
        rule.to-without-pair
        loaded: line-near-pipe
        hose-short was not loaded: 1 fault at shop.yaml:17:35.
        """);

    [Fact]
    public void A_case_that_is_never_taken_is_told() => Golden.Check(
        Libraries.Changed("{ at-least: 60 mm }", "{ at-least: 60 mm }\n    cases:\n      - { when: [ shielded ], limit: { at-least: 30 mm } }\n      - { when: [ moving, shielded ], limit: { at-least: 40 mm } }"),
        """
        shop.yaml:12:9: error: Case 2 is never taken: whenever its facts hold, those of case 1 hold too, and the first is chosen.
                - { when: [ moving, shielded ], limit: { at-least: 40 mm } }
                  ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
        help: Put the case with more facts first.
        see: shop.yaml:11:9: case 1
        rule.case-never-taken
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:12:9.
        """);

    [Fact]
    public void An_unknown_quantity_to_recheck_is_named() => Golden.Check(
        Libraries.Changed("severity: warning", "severity: warning\n    recheck: [ gap, slack ]"),
        """
        shop.yaml:11:21: error: Number 2 of `recheck`: `slack` is none of the words for this.
              recheck: [ gap, slack ]
                              ^^^^^
        help: Words: gap, hose-slack, joint-angle, angle-difference, engagement, reserve, open-reserve, preload, bump-steer, toe-change, toe, over-centre, span, axle-offset, wheelbase-difference, travel, gearing.
        doc.unknown-word
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:11:21.
        """);

    [Fact]
    public void A_source_of_a_page_is_too_long() => Golden.Check(
        Libraries.Changed("basis: shop", "basis: shop, text: \"" + string.Concat(Enumerable.Repeat("word ", 125)) + "\""),
        """
        shop.yaml:11:34: error: The source has 624 characters; at most 600 are kept.
              source: { basis: shop, text: "word word word word word word word word word word word word word w...
                                           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
        help: Name the source and what it says, no more.
        rule.source-too-long
        loaded: hose-short
        line-near-pipe was not loaded: 1 fault at shop.yaml:11:34.
        """);
}
