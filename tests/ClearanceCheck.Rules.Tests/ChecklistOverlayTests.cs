using ClearanceCheck.Documents;
using ClearanceCheck.Rules.Checklists;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Rules.Tests;

/// <summary>What an overlay makes of items and expectations: the same discipline as with rules, where asking less needs a reason, a name and a day.</summary>
public sealed class ChecklistOverlayTests
{
    private const string Head = """
        format: 1
        overlay: lowland-garage
        version: 1.2.0
        on: { library: base, from: 1.0.0, before: 2.0.0 }

        """;

    private const string Signed = "because: Ours, by: R. Amsel, until: 2031-12-31";

    private static readonly DateOnly Today = new(2031, 4, 2);

    /// <summary>A change, and what of it asks less.</summary>
    public static TheoryData<string, string> Looser => new()
    {
        { "u-bolts-torqued: { severity: notice", "severity lowered from danger to notice" },
        { "u-bolts-torqued: { ask: Look at them.", "something else is asked" },
        { "u-bolts-torqued: { gate: after-first-drive", "no longer asked before the first drive" },
        { "wheel-nuts-again: { gate: before-first-drive", "no longer asked after the first drive" },
        { "u-bolts-torqued: { expects: [ value ]", "no mark is asked for" },
        { "u-bolts-torqued: { applies-to: { axle: [ steered ] }", "fewer vehicles are asked" },
        { "brake-pedal-hold: { applies-to: { kind: [ brake-hose ] }", "fewer vehicles are asked" },
        { "brake-hose: { severity: caution", "severity lowered from danger to caution" },
        { "brake-hose: { each: axle", "fewer places are looked at" },
        { "shocks: { count: 1", "1 instead of 2 are enough" },
        { "shocks: { kind: [ shock, link ]", "other kinds of parts count too" },
        { "shocks: { where: [ steered ]", "fewer axles are looked at" },
    };

    public static TheoryData<string> NotLooser =>
    [
        "local-law-looked-up: { severity: danger", "brake-pedal-hold: { expects: [ mark ]", "u-bolts-torqued: { title: All U-bolts",
        "shocks: { severity: danger", "shocks: { count: 3", "brake-line: { each: axle",
    ];

    [Theory]
    [MemberData(nameof(Looser))]
    public void What_asks_less_needs_a_reason_a_name_and_a_day(string change, string looser)
    {
        (RuleLibrary signed, DiagnosticBag silent) = Read($"change:\n  {change}, {Signed} }}\n");
        (RuleLibrary bare, DiagnosticBag told) = Read($"change:\n  {change} }}\n");

        silent.Count.ShouldBe(0);
        (signed.Changes.Single().Kind, signed.Changes.Single().Looser.ShouldHaveSingleItem()).ShouldBe((RuleChangeKind.Loosened, looser));
        told.Ordered.ShouldHaveSingleItem().Id.ShouldBe("rule.loosening-needs");
        told.Ordered.Single().Message.ShouldContain(looser);
        bare.NotLoaded.ShouldHaveSingleItem().ShouldContain("the rule below it counts");
        Shown(bare).ShouldBe(Shown(Libraries.Base));
        Shown(signed).ShouldNotBe(Shown(Libraries.Base));
    }

    [Theory]
    [MemberData(nameof(NotLooser))]
    public void What_asks_as_much_or_more_is_free(string change)
    {
        (RuleLibrary library, DiagnosticBag said) = Read($"change:\n  {change} }}\n");

        said.Count.ShouldBe(0);
        library.Changes.ShouldHaveSingleItem().Kind.ShouldBe(RuleChangeKind.Tightened);
        Shown(library).ShouldNotBe(Shown(Libraries.Base));
    }

    [Fact]
    public void A_change_of_an_item_past_its_day_leaves_the_item_below()
    {
        RuleLibrary library = Read("change: { u-bolts-torqued: { severity: notice, because: Ours, by: R. Amsel, until: 2031-04-01 } }\n").Library;

        library.Changes.Single().Kind.ShouldBe(RuleChangeKind.Expired);
        library.Items.Single(i => i.Id == "u-bolts-torqued").Severity.ShouldBe(Severity.Danger);
    }

    [Theory]
    [InlineData("u-bolts-torqued")]
    [InlineData("brake-hose")]
    public void What_is_grave_is_switched_off_with_reason_name_and_day_only(string id)
    {
        RuleLibrary signed = Read($"switch-off: {{ {id}: {{ {Signed} }} }}\n").Library;
        (RuleLibrary bare, DiagnosticBag told) = Read($"switch-off: {{ {id}: {{ because: Ours }} }}\n");

        signed.Items.Length.ShouldBe(Libraries.Base.Items.Length - signed.NoLongerAsked.Length);
        signed.Coverage.Length.ShouldBe(Libraries.Base.Coverage.Length - signed.NoLongerExpected.Length);
        (signed.NoLongerAsked.Length + signed.NoLongerExpected.Length).ShouldBe(1);
        told.Ordered.ShouldHaveSingleItem().Id.ShouldBe("rule.loosening-needs");
        Shown(bare).ShouldBe(Shown(Libraries.Base));
    }

    [Fact]
    public void What_is_switched_off_may_still_stand_in_a_file()
    {
        InspectionVocabulary words = Read($"switch-off: {{ u-bolts-torqued: {{ {Signed} }}, brake-hose: {{ {Signed} }} }}\n").Library.Vocabulary.ShouldNotBeNull();

        words.Items.ShouldContain(i => i.Id == "u-bolts-torqued");
        words.Expected.ShouldContain(e => e.Id == "brake-hose");
    }

    [Fact]
    public void A_shop_adds_items_and_expectations_of_its_own()
    {
        (RuleLibrary library, DiagnosticBag said) = Read("""
            items:
              winch-bolts: { title: Winch bolts, ask: The winch is bolted at four places., severity: danger, consequence: It flies off., family: bodywork, gate: before-first-drive, source: { basis: shop } }
            coverage:
              winch-lead: { title: winch lead, each: vehicle, kind: [ wiring ], severity: notice, consequence: Unknown., source: { basis: shop } }

            """);

        said.Count.ShouldBe(0);
        library.Items[^1].Id.ShouldBe("winch-bolts");
        library.Items[^1].Origins.ShouldAllBe(o => o.Layer == "lowland-garage 1.2.0");
        library.Coverage[^1].Expectation.Id.ShouldBe("winch-lead");
        library.Changes.Select(c => $"{c.Kind} {c.Rule} {c.Title}").ShouldBe(["Added winch-bolts Winch bolts", "Added winch-lead Expected of a whole vehicle: winch lead"]);
    }

    [Fact]
    public void An_item_of_the_library_can_not_be_written_anew()
    {
        (RuleLibrary library, DiagnosticBag said) = Read("items:\n  u-bolts-torqued: { title: a, ask: b., severity: notice, consequence: c., family: brakes, gate: before-first-drive, source: { basis: shop } }\n");

        said.Ordered.ShouldHaveSingleItem().Id.ShouldBe("rule.rule-below");
        Shown(library).ShouldBe(Shown(Libraries.Base));
    }

    [Fact]
    public void A_key_of_a_rule_is_none_of_an_item()
    {
        DiagnosticBag said = Read("change: { u-bolts-torqued: { limit: { at-least: 60 mm } } }\n").Said;

        said.Ordered.ShouldHaveSingleItem().Message.ShouldBe("`limit` is not a key here.");
        said.Ordered.Single().Help.ShouldNotBeNull().ShouldContain("title, ask, severity, consequence, family, gate, expects, units, applies-to, source");
    }

    [Fact]
    public void A_changed_item_says_where_each_field_was_typed()
    {
        ChecklistItem item = Read($"change: {{ u-bolts-torqued: {{ severity: warning, {Signed} }} }}\n").Library.Items.Single(i => i.Id == "u-bolts-torqued");

        item.Origins.Where(o => o.Layer == "lowland-garage 1.2.0").Select(o => $"{o.Field} {o.Typed} {o.Place}").ShouldBe(["severity warning shop.yaml:5:30"]);
        item.Origins.Where(o => o.Layer == "base 1.0.0").ShouldContain(o => o.Field == "ask" && o.Place.StartsWith("checklist.yaml:", StringComparison.Ordinal));
    }

    private static (RuleLibrary Library, DiagnosticBag Said) Read(string overlay)
    {
        (RuleLibrary? library, DiagnosticBag said) = RuleSetReader.Read([[Libraries.File("shop.yaml", Head + overlay)]], [.. BaseLibrary.Files], BrokenSet.Quantities, Today);
        return (library.ShouldNotBeNull(), said);
    }

    private static string Shown(RuleLibrary library) => string.Join('\n',
    [
        .. library.Items.Select(i => $"{i.Id} {i.Title} {i.Ask} {i.Severity} {i.Gate} {i.NeedsMark} {string.Join(' ', [.. i.Units, .. i.AppliesTo.Kinds, .. i.AppliesTo.Axles, .. i.AppliesTo.Fitted])}"),
        .. library.Coverage.Select(c => $"{c.Expectation.Id} {c.Severity} {c.Expectation.For} {c.Expectation.Count} {string.Join(' ', [.. c.Expectation.Kinds, .. c.Expectation.Where])}"),
    ]);
}
