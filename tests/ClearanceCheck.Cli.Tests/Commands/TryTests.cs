using System.Text.Json.Nodes;
using Json.Schema;

namespace ClearanceCheck.Cli.Tests.Commands;

/// <summary><c>rules try</c> over whole runs: what an overlay flips before a shop takes it.</summary>
public sealed class TryTests
{
    private const string Overlay = """
        format: 1
        overlay: lowland-garage
        version: 1.2.0
        on: { library: base, from: 1.0.0, before: 2.0.0 }
        change:
          brake-line-near-exhaust: { limit: { at-least: 1 mm }, because: Ours, by: R. Amsel, until: 2031-12-31 }
          brakes-bled: { severity: notice, because: Ours, by: R. Amsel, until: 2031-12-31 }
        switch-off:
          headlamps-aimed: { because: Ours, by: R. Amsel, until: 2031-12-31 }
        rules:
          line-near-tube: { quantity: gap, part: { kind: [ brake-line ] }, to: { kind: [ axle-tube ] }, limit: { at-least: 900 mm }, severity: notice, source: { basis: shop } }
        items:
          winch-bolts: { title: Winch bolts, ask: The winch is bolted at four places., severity: warning, consequence: It flies off., family: bodywork, gate: before-first-drive, source: { basis: shop } }

        """;

    [Fact]
    public void What_flips_is_listed_with_both_judgements()
    {
        using Workshop shop = WithOverlay(Overlay);

        Answer answer = shop.Run("rules", "try", "shop", "inspection.yaml");

        answer.Error.ShouldBe("");
        answer.Status.ShouldBe(ExitStatus.Nothing);
        string[] lines = answer.Output.Split('\n');
        lines[0].ShouldMatch("^WHAT +BEFORE +WITH THE OVERLAY$");
        lines.Single(l => l.StartsWith("brake-line-near-exhaust--axle-brake-line--tailpipe ", StringComparison.Ordinal)).ShouldMatch("  warning, fails +warning, meets the limit$");
        lines.Count(l => l.StartsWith("line-near-tube--", StringComparison.Ordinal) && l.Contains("  not asked  ", StringComparison.Ordinal)).ShouldBe(2);
        lines.Single(l => l.StartsWith("brakes-bled ", StringComparison.Ordinal)).ShouldMatch("  danger, ok +notice, ok$");
        lines.Single(l => l.StartsWith("headlamps-aimed ", StringComparison.Ordinal)).ShouldEndWith("  not asked");
        lines.Single(l => l.StartsWith("winch-bolts ", StringComparison.Ordinal)).ShouldMatch("  not asked +warning, not inspected$");
        lines.ShouldNotContain(l => l.StartsWith("brake-hose-pulled-tight", StringComparison.Ordinal));
        answer.Output.ShouldContain(" findings are judged the same.\nThe decision stays: Held.\n");
        shop.Names("clearance-report").ShouldBeEmpty();
    }

    [Fact]
    public void The_machine_output_says_the_same_and_is_valid()
    {
        using Workshop shop = WithOverlay(Overlay);

        JsonNode trial = JsonNode.Parse(shop.Run("rules", "try", "shop", "inspection.yaml", "--format", "json").Output)!;

        JsonSchema schema = JsonSchema.FromText(shop.Run("schema", "--of", "try").Output);
        schema.Evaluate(System.Text.Json.JsonDocument.Parse(trial.ToJsonString()).RootElement).IsValid.ShouldBeTrue();
        JsonNode flip = trial["flips"]!.AsArray().Single(f => (string?)f!["id"] == "brake-line-near-exhaust--axle-brake-line--tailpipe")!;
        ((string?)flip["before"]!["outcome"], (string?)flip["after"]!["outcome"]).ShouldBe(("fails", "conforms"));
        trial["flips"]!.AsArray().Single(f => (string?)f!["id"] == "headlamps-aimed")!["after"].ShouldBeNull();
        ((string?)trial["before"], (string?)trial["after"], (string?)trial["rules"]).ShouldBe(("held", "held", "lowland-garage 1.2.0"));
        trial["unknownField"] = 1;
        schema.Evaluate(System.Text.Json.JsonDocument.Parse(trial.ToJsonString()).RootElement).IsValid.ShouldBeFalse();
    }

    [Fact]
    public void An_overlay_that_flips_nothing_says_so()
    {
        using Workshop shop = WithOverlay(Overlay[..Overlay.IndexOf("change:", StringComparison.Ordinal)] + "change: { brake-line-near-exhaust: { limit: { at-least: 51 mm } } }\n");

        shop.Run("rules", "try", "shop", "inspection.yaml").Output.ShouldStartWith("No verdict flips.\n");
    }

    [Fact]
    public void A_rule_that_is_not_loaded_fails_the_trial()
    {
        using Workshop shop = WithOverlay(Overlay.Replace("limit: { at-least: 1 mm }, because: Ours, by: R. Amsel,", "limit: { at-least: 1 mm }, by: R. Amsel,", StringComparison.Ordinal));

        Answer answer = shop.Run("rules", "try", "shop", "inspection.yaml");

        answer.Status.ShouldBe(ExitStatus.Findings);
        answer.Error.ShouldContain("`because` is missing");
        answer.Output.ShouldContain("Not loaded: ");
        answer.Output.ShouldNotContain("brake-line-near-exhaust--");
    }

    [Theory]
    [InlineData("none", "inspection.yaml", "There is no folder none.")]
    [InlineData("shop", "none.yaml", "There is no file none.yaml")]
    public void What_is_not_there_is_said(string overlay, string file, string said)
    {
        using Workshop shop = WithOverlay(Overlay);

        Answer answer = shop.Run("rules", "try", overlay, file);

        answer.Status.ShouldBe(ExitStatus.UnusableInput);
        answer.Error.ShouldContain(said);
    }

    private static Workshop WithOverlay(string overlay)
    {
        Workshop shop = Workshop.WithFixture();
        shop.Write("shop/shop.yaml", overlay);
        return shop;
    }
}
