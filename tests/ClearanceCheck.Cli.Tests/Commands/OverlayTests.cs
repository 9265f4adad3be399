using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting;

namespace ClearanceCheck.Cli.Tests.Commands;

/// <summary>A shop's overlay at the door: what it changes, what is printed of it, and on which day it counts.</summary>
public sealed class OverlayTests
{
    private const string Loosened = """
        format: 1
        overlay: lowland-garage
        version: 1.2.0
        on: { library: base, from: 1.0.0, before: 2.0.0 }
        change:
          brake-line-near-moving-part: { limit: { at-least: 15 mm }, because: "Short leads", by: R. Amsel, until: 2031-12-31 }
          brake-line-near-exhaust: { limit: { at-least: 60 mm } }
        switch-off:
          tire-rubs-liner: { because: "We cut liners on every lift" }

        """;

    [Fact]
    public void The_report_prints_what_a_shop_loosened_and_switched_off()
    {
        using Workshop shop = Workshop.WithFixture();
        shop.Write("rules/shop.yaml", Loosened);

        Answer answer = shop.Run("inspect", "inspection.yaml", "--rules", "rules", "--out", "out");

        answer.Error.ShouldBe("");
        answer.Output.ShouldContain("brake-line-near-moving-part");
        answer.Output.ShouldContain("loosened, at least 15 mm instead of at least 19 mm");
        LibraryCard library = Result(shop).Library;
        library.Changes.Select(c => $"{c.Rule} {c.Kind} {c.By} {c.Until} {c.Place}").ShouldBe(
        [
            "brake-line-near-moving-part loosened R. Amsel 2031-12-31 shop.yaml:6:3",
            "tire-rubs-liner switched-off   shop.yaml:9:3",
        ]);
        library.Layers.Select(l => l.Name).ShouldBe(["base", "lowland-garage"]);
        shop.Read("out/report.html").ShouldContain("Rule changed by the shop");
        shop.Read("out/report.html").ShouldContain("Because: Short leads.");
        Result(shop).Findings.Where(f => f.Rule == "brake-line-near-exhaust").ShouldAllBe(f => f.Limit.AtLeast == 60 || !f.Limit.Because.IsEmpty);
    }

    [Fact]
    public void A_change_past_its_day_does_not_count_and_that_is_said()
    {
        using Workshop shop = Workshop.WithFixture();
        shop.Write("rules/shop.yaml", Loosened);

        Answer answer = shop.Run("inspect", "inspection.yaml", "--rules", "rules", "--today", "2032-01-01", "--out", "out");

        answer.Error.ShouldContain("counted until 2031-12-31, and today is 2032-01-01: the rule below counts again");
        Result(shop).Library.Changes.Select(c => c.Kind).ShouldBe(["expired", "switched-off"]);
        Result(shop).Findings.Where(f => f.Rule == "brake-line-near-moving-part").ShouldAllBe(f => f.Limit.AtLeast == 19);
        Result(shop).Provenance.Settings[0].ShouldBe(new Setting("day of the inspection", "2032-01-01"));
    }

    [Fact]
    public void A_change_without_its_reason_holds_the_vehicle_and_the_rule_below_counts()
    {
        using Workshop shop = Workshop.WithFixture();
        shop.Write("rules/shop.yaml", Loosened.Replace("because: \"Short leads\", ", "", StringComparison.Ordinal));

        Answer answer = shop.Run("inspect", "inspection.yaml", "--rules", "rules", "--out", "out", "--fail-at", "danger");

        answer.Status.ShouldBe(ExitStatus.Findings);
        answer.Error.ShouldContain("`because` is missing");
        Result(shop).Decision.Kind.ShouldBe(DecisionKind.Held);
        Result(shop).Decision.Reasons[0].ShouldStartWith("Rule not loaded: ");
        shop.Read("out/report.html").ShouldContain("1 rule not loaded");
        Result(shop).Findings.Where(f => f.Rule == "brake-line-near-moving-part").ShouldAllBe(f => f.Limit.AtLeast == 19);
    }

    [Fact]
    public void Layers_come_in_the_order_in_which_they_are_named()
    {
        using Workshop shop = Workshop.WithFixture();
        shop.Write("one/shop.yaml", Loosened);
        shop.Write("two/bay.yaml", "format: 1\noverlay: bay-two\nversion: 1.0.0\non: { library: lowland-garage, from: 1.0.0, before: 2.0.0 }\nchange: { brake-line-near-exhaust: { limit: { at-least: 70 mm } } }\n");

        shop.Run("inspect", "inspection.yaml", "--rules", "one", "--rules", "two", "--out", "out").Error.ShouldBe("");
        Result(shop).Library.Name.ShouldBe("bay-two");

        Answer turned = shop.Run("inspect", "inspection.yaml", "--rules", "two", "--rules", "one", "--out", "out");
        turned.Status.ShouldBe(ExitStatus.UnusableInput);
        turned.Error.ShouldContain("Name the folder of `lowland-garage` first.");
    }

    [Theory]
    [InlineData("2031-13-01")]
    [InlineData("tomorrow")]
    [InlineData("02.04.2031")]
    public void A_day_that_is_none_is_refused(string day)
    {
        using Workshop shop = Workshop.WithFixture();

        Answer answer = shop.Run("inspect", "inspection.yaml", "--today", day);

        answer.Status.ShouldBe(ExitStatus.UnusableInput);
        answer.Error.ShouldContain("--today takes a day written year-month-day, such as 2031-04-02.");
    }

    private static InspectionResult Result(Workshop shop) => FindingsJson.Read(shop.Read("out/findings.json"));
}
