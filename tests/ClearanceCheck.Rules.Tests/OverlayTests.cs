using ClearanceCheck.Documents;

namespace ClearanceCheck.Rules.Tests;

/// <summary>What an overlay makes of the rules below it, where each field then comes from, and what is told of it.</summary>
public sealed class OverlayTests
{
    private const string Base = """
        format: 1
        library: base
        version: 1.4.0
        rules:
          line-near-pipe:
            title: Line too close to the pipe
            quantity: gap
            part: { kind: [ brake-line ] }
            to: { group: [ hot-exhaust ] }
            limit: { at-least: 50 mm }
            severity: warning
            source: { basis: common-practice }
            examples: [ { value: 50 mm, expect: conforms } ]
          tire-near-mudflap:
            quantity: gap
            part: { kind: [ tire ] }
            to: { group: [ liner ] }
            limit: { at-least: 5 mm }
            severity: notice
            source: { basis: common-practice }

        """;

    private const string Head = """
        format: 1
        overlay: lowland-garage
        version: 1.2.0
        on: { library: base, from: 1.0.0, before: 2.0.0 }

        """;

    private static readonly DateOnly Today = new(2031, 4, 2);

    [Fact]
    public void Tightening_is_free_and_the_examples_below_do_not_speak_of_it()
    {
        RuleLibrary library = Read("change: { line-near-pipe: { limit: { at-least: 60 mm } } }");

        Rule rule = library.Rules[0];
        rule.Limit.ShouldBe(new RuleLimit(60, null));
        rule.Title.ShouldBe("Line too close to the pipe");
        rule.Examples.ShouldBeEmpty();
        RuleChange change = library.Changes.ShouldHaveSingleItem();
        change.Kind.ShouldBe(RuleChangeKind.Tightened);
        change.What.ShouldBe(["limit: { at-least: 60 mm } instead of { at-least: 50 mm }"]);
        (library.Name, library.Version).ShouldBe(("lowland-garage", "1.2.0"));
        library.Layers.Select(l => $"{l.Name} {l.Version} {l.IsOverlay}").ShouldBe(["base 1.4.0 False", "lowland-garage 1.2.0 True"]);
    }

    [Fact]
    public void Every_field_keeps_the_file_and_line_that_it_was_typed_at()
    {
        Rule rule = Read("change:\n  line-near-pipe: { limit: { at-least: 60 mm }, severity: danger, source: { basis: shop } }").Rules[0];

        rule.Origins.Select(o => $"{o.Field} {o.Layer} {o.Place} {o.Typed}").ShouldBe(
        [
            "title base 1.4.0 base.yaml:6:5 Line too close to the pipe",
            "quantity base 1.4.0 base.yaml:7:5 gap",
            "part base 1.4.0 base.yaml:8:5 { kind: [ brake-line ] }",
            "to base 1.4.0 base.yaml:9:5 { group: [ hot-exhaust ] }",
            "limit lowland-garage 1.2.0 shop.yaml:6:21 { at-least: 60 mm }",
            "severity lowland-garage 1.2.0 shop.yaml:6:49 danger",
            "source lowland-garage 1.2.0 shop.yaml:6:67 { basis: shop }",
        ]);
    }

    [Fact]
    public void Loosening_with_reason_name_and_day_counts_and_is_told()
    {
        RuleLibrary library = Read("change: { line-near-pipe: { limit: { at-least: 40 mm }, because: \"Our pipes are wrapped\", by: R. Amsel, until: 2031-12-31 } }");

        library.Rules[0].Limit.AtLeast.ShouldBe(40);
        RuleChange change = library.Changes.ShouldHaveSingleItem();
        change.Kind.ShouldBe(RuleChangeKind.Loosened);
        change.Looser.ShouldBe(["at least 40 mm instead of at least 50 mm"]);
        (change.Because, change.By, change.Until, change.Place).ShouldBe(("Our pipes are wrapped", "R. Amsel", new DateOnly(2031, 12, 31), "shop.yaml:5:11"));
    }

    [Theory]
    [InlineData("2031-04-02", 40)]
    [InlineData("2031-04-01", 50)]
    public void A_change_counts_on_its_last_day_and_no_longer(string until, double limit) =>
        Read($"change: {{ line-near-pipe: {{ limit: {{ at-least: 40 mm }}, because: \"Ours\", by: R. Amsel, until: {until} }} }}").Rules[0].Limit.AtLeast.ShouldBe(limit);

    [Fact]
    public void Without_a_day_every_dated_change_is_past_it()
    {
        RuleLibrary library = RuleSetReader.Read(
            [[Libraries.File("base.yaml", Base)], [Libraries.File("shop.yaml", Head + "change: { line-near-pipe: { limit: { at-least: 40 mm }, because: \"Ours\", by: R. Amsel, until: 2099-12-31 } }")]],
            [], BrokenSet.Quantities, null).Library.ShouldNotBeNull();

        library.Rules[0].Limit.AtLeast.ShouldBe(50);
        library.Changes.Single().Kind.ShouldBe(RuleChangeKind.Expired);
    }

    [Fact]
    public void A_notice_is_switched_off_with_a_reason_alone()
    {
        RuleLibrary library = Read("switch-off: { tire-near-mudflap: { because: \"We cut them on every lift\" } }");

        library.Rules.Select(r => r.Id).ShouldBe(["line-near-pipe"]);
        (library.Changes.Single().Kind, library.Changes.Single().Because).ShouldBe((RuleChangeKind.SwitchedOff, "We cut them on every lift"));
    }

    [Fact]
    public void A_rule_of_the_overlay_counts_beside_those_below() =>
        Read("""
            rules:
              winch-cable-near-exhaust: { quantity: gap, part: { id: [ winch-cable ] }, to: { group: [ hot-exhaust ] }, limit: { at-least: 80 mm }, severity: warning, source: { basis: shop } }
            """).Rules.Select(r => r.Id).ShouldBe(["line-near-pipe", "tire-near-mudflap", "winch-cable-near-exhaust"]);

    [Fact]
    public void An_overlay_may_stand_on_another()
    {
        (RuleLibrary? library, DiagnosticBag diagnostics) = RuleSetReader.Read(
            [
                [Libraries.File("base.yaml", Base)],
                [Libraries.File("shop.yaml", Head + "change: { line-near-pipe: { limit: { at-least: 60 mm } } }")],
                [Libraries.File("bay.yaml", "format: 1\noverlay: bay-two\nversion: 1.0.0\non: { library: lowland-garage, from: 1.2.0, before: 1.3.0 }\nchange: { line-near-pipe: { limit: { at-least: 70 mm } } }\n")],
            ],
            [], BrokenSet.Quantities, Today);

        DiagnosticRenderer.Render(diagnostics).ShouldBe("");
        library.ShouldNotBeNull().Rules[0].Limit.AtLeast.ShouldBe(70);
        library.Changes.Select(c => c.Layer).ShouldBe(["lowland-garage 1.2.0", "bay-two 1.0.0"]);
    }

    [Fact]
    public void An_overlay_alone_stands_on_the_library_that_the_program_carries()
    {
        (RuleLibrary? library, DiagnosticBag diagnostics) = RuleSetReader.Read(
            [[Libraries.File("shop.yaml", Head + "change: { brake-line-near-exhaust: { limit: { at-least: 60 mm }, because: \"Two comebacks\" } }")]],
            [.. BaseLibrary.Files], BrokenSet.Quantities, Today);

        DiagnosticRenderer.Render(diagnostics).ShouldBe("");
        library.ShouldNotBeNull().Rules.Length.ShouldBe(Libraries.Base.Rules.Length);
        library.Rules.Single(r => r.Id == "brake-line-near-exhaust").Limit.AtLeast.ShouldBe(60);
    }

    [Fact]
    public void A_library_takes_the_place_of_the_one_that_the_program_carries() =>
        RuleSetReader.Read([[Libraries.File("base.yaml", Base)]], [.. BaseLibrary.Files], BrokenSet.Quantities, Today).Library.ShouldNotBeNull().Rules.Length.ShouldBe(2);

    [Fact]
    public void The_hash_covers_every_layer()
    {
        string tightened = Read("change: { line-near-pipe: { limit: { at-least: 60 mm } } }").Hash;

        new[] { tightened, Read("change: { line-near-pipe: { limit: { at-least: 61 mm } } }").Hash, Libraries.Read(Libraries.File("base.yaml", Base)).Library!.Hash }.ShouldBeUnique();
        tightened.Length.ShouldBe(64);
    }

    [Fact]
    public void No_change_of_one_number_slips_through_as_tightening()
    {
        CsCheck.Check.Sample(CsCheck.Gen.Int[1, 120], limit =>
        {
            (RuleLibrary? library, DiagnosticBag diagnostics) = Load($"change: {{ line-near-pipe: {{ limit: {{ at-least: {limit} mm }} }} }}");
            return diagnostics.HasErrors == limit < 50 && library!.Rules[0].Limit.AtLeast == Math.Max(50, limit) && library.NotLoaded.IsEmpty == limit >= 50;
        });
    }

    private static RuleLibrary Read(string changes)
    {
        (RuleLibrary? library, DiagnosticBag diagnostics) = Load(changes);
        diagnostics.HasErrors.ShouldBeFalse(DiagnosticRenderer.Render(diagnostics));
        return library.ShouldNotBeNull();
    }

    private static (RuleLibrary? Library, DiagnosticBag Diagnostics) Load(string changes) => RuleSetReader.Read(
        [[Libraries.File("base.yaml", Base)], [Libraries.File("shop.yaml", Head + changes + "\n")]], [], BrokenSet.Quantities, Today);
}
