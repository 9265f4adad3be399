using System.Text.Json;

namespace ClearanceCheck.Cli.Tests.Commands;

/// <summary>The rule tools at the door.</summary>
public sealed class RulesTests
{
    private const string Overlay = """
        format: 1
        overlay: lowland-garage
        version: 1.2.0
        on: { library: base, from: 1.0.0, before: 2.0.0 }
        change:
          brake-line-near-exhaust: { limit: { at-least: 60 mm }, because: "Two comebacks" }
        switch-off:
          tire-rubs-liner: { because: "We cut liners on every lift", by: R. Amsel, until: 2031-12-31 }
        rules:
          winch-cable-near-exhaust: { quantity: gap, part: { id: [ winch-cable ] }, to: { group: [ hot-exhaust ] }, limit: { at-least: 80 mm }, severity: warning, source: { basis: shop } }

        """;

    [Fact]
    public void The_list_names_every_rule_that_counts_and_the_layer_of_its_limit()
    {
        using Workshop shop = WithOverlay();

        Answer answer = shop.Run("rules", "list", "--rules", "shop");

        answer.Error.ShouldBe("");
        answer.Status.ShouldBe(ExitStatus.Nothing);
        string[] lines = answer.Output.Split('\n');
        lines[0].ShouldMatch("^RULE +SEVERITY +QUANTITY +LIMIT +LIMIT FROM$");
        lines.Single(l => l.StartsWith("brake-line-near-exhaust ", StringComparison.Ordinal)).ShouldMatch("warning +gap +at least 60 mm +lowland-garage 1.2.0$");
        lines.Single(l => l.StartsWith("tire-near-exhaust ", StringComparison.Ordinal)).ShouldEndWith("base 1.0.0");
        lines.ShouldNotContain(l => l.StartsWith("tire-rubs-liner ", StringComparison.Ordinal));
        answer.Output.ShouldContain(" rules count: base 1.0.0, with lowland-garage 1.2.0.");
        answer.Output.ShouldContain("Switched off: tire-rubs-liner (lowland-garage 1.2.0, shop.yaml:8:3)");
    }

    [Fact]
    public void A_rule_is_shown_with_the_file_and_line_of_each_field()
    {
        using Workshop shop = WithOverlay();

        Answer answer = shop.Run("rules", "show", "brake-line-near-exhaust", "--rules", "shop");

        answer.Output.ShouldContain("  limit: { at-least: 60 mm }\n      from lowland-garage 1.2.0, shop.yaml:6:30\n");
        answer.Output.ShouldMatch("  severity: warning\n      from base 1.0.0, brake-lines.yaml:[0-9]+:5\n");
        answer.Output.ShouldContain("Changed by lowland-garage 1.2.0, shop.yaml:6:3\n  limit: { at-least: 60 mm } instead of { at-least: 50 mm }\n  because: Two comebacks\n");
    }

    [Fact]
    public void Items_and_expectations_are_listed_and_shown_like_rules()
    {
        using Workshop shop = WithOverlay();
        shop.Write("shop/shop.yaml", Overlay.Replace("switch-off:", "  shocks: { count: 3 }\n  u-bolts-torqued: { title: All U-bolts }\nswitch-off:", StringComparison.Ordinal));

        string list = shop.Run("rules", "list", "--rules", "shop").Output;

        list.ShouldMatch("ITEM +SEVERITY +ASKED +TITLE +FROM\n");
        list.ShouldMatch("u-bolts-torqued +danger +before the first drive +All U-bolts +lowland-garage 1.2.0, base 1.0.0\n");
        list.ShouldMatch("EXPECTED +SEVERITY +OF EACH +COUNT +FROM\n");
        list.ShouldMatch("shocks +warning +axle +3 +base 1.0.0, lowland-garage 1.2.0\n");
        list.ShouldMatch("[0-9]+ items are asked of a person, [0-9]+ things are expected of a whole vehicle\\.\n");
        string shown = shop.Run("rules", "show", "shocks", "--rules", "shop").Output;
        shown.ShouldContain("  count: 3\n      from lowland-garage 1.2.0, shop.yaml:7:13\n");
        shown.ShouldMatch("  severity: warning\n      from base 1.0.0, coverage.yaml:[0-9]+:5\n");
    }

    [Fact]
    public void A_rule_that_is_switched_off_is_shown_as_such()
    {
        using Workshop shop = WithOverlay();

        shop.Run("rules", "show", "tire-rubs-liner", "--rules", "shop").Output.ShouldBe(
            "tire-rubs-liner is switched off by lowland-garage 1.2.0, shop.yaml:8:3.\n  because: We cut liners on every lift\n  by: R. Amsel, until 2031-12-31\n");
    }

    [Fact]
    public void An_unknown_rule_is_named_with_the_nearest()
    {
        using var shop = new Workshop();

        Answer answer = shop.Run("rules", "show", "tire-rubs-linner");

        answer.Status.ShouldBe(ExitStatus.UnusableInput);
        answer.Error.ShouldBe("error: There is no rule, item or expectation tire-rubs-linner.\nhelp: Did you mean tire-rubs-liner?\n");
    }

    [Fact]
    public void Checking_says_what_is_wrong_and_how_many_rules_are_left()
    {
        using Workshop shop = WithOverlay();
        shop.Run("rules", "check", "shop").Status.ShouldBe(ExitStatus.Nothing);
        shop.Change("shop/shop.yaml", "at-least: 80 mm", "at-least: 80");

        Answer answer = shop.Run("rules", "check", "shop");

        answer.Status.ShouldBe(ExitStatus.Findings);
        answer.Error.ShouldContain("`80` has no unit");
        answer.Output.ShouldContain("Not loaded: winch-cable-near-exhaust was not loaded: 1 fault at shop.yaml:10:");
    }

    [Fact]
    public void The_day_decides_what_counts()
    {
        using Workshop shop = WithOverlay();

        Answer answer = shop.Run("rules", "check", "shop", "--today", "2032-01-01");

        answer.Status.ShouldBe(ExitStatus.Nothing);
        answer.Error.ShouldContain("today is 2032-01-01: the rule below counts again");
        answer.Output.ShouldContain("Past its day: tire-rubs-liner");
    }

    [Fact]
    public void The_base_library_is_pinned_by_its_examples_and_what_a_shop_leaves_open_is_a_note()
    {
        using Workshop shop = WithOverlay();
        Answer own = shop.Run("rules", "test");
        own.Status.ShouldBe(ExitStatus.Nothing);
        own.Output.ShouldMatch("^[0-9]{3} examples of [0-9]+ rules hold\\.\n");

        Answer answer = shop.Run("rules", "test", "shop");

        answer.Status.ShouldBe(ExitStatus.Nothing);
        answer.Output.ShouldContain("note: winch-cable-near-exhaust is not pinned: no example notices the limit, moved up; the limit, moved down; ");
        answer.Output.ShouldNotContain("error: ");
    }

    [Fact]
    public void A_base_library_that_is_not_pinned_fails()
    {
        using var shop = new Workshop();
        shop.Write("base/rules.yaml", """
            format: 1
            library: base
            version: 1.0.0
            rules:
              line-near-pipe:
                quantity: gap
                part: { kind: [ brake-line ] }
                to: { group: [ hot-exhaust ] }
                limit: { at-least: 50 mm }
                severity: warning
                source: { basis: common-practice }
                examples: [ { value: 49.9 mm, expect: fails } ]

            """);

        Answer answer = shop.Run("rules", "test", "base");

        answer.Status.ShouldBe(ExitStatus.Findings);
        answer.Output.ShouldContain("error: line-near-pipe is not pinned: no example notices the limit, moved up");
    }

    [Fact]
    public void The_schema_of_rules_is_printed()
    {
        using var shop = new Workshop();

        Answer answer = shop.Run("schema", "--of", "rules");

        JsonDocument.Parse(answer.Output).RootElement.GetProperty("$defs").GetProperty("rule").GetProperty("required").GetArrayLength().ShouldBe(5);
    }

    private static Workshop WithOverlay()
    {
        var shop = new Workshop();
        shop.Write("shop/shop.yaml", Overlay);
        return shop;
    }
}
