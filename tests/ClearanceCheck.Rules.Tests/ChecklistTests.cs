using ClearanceCheck.Rules.Checklists;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Rules.Tests;

/// <summary>The items and expectations of the base library, and what is said about faulty ones.</summary>
public sealed class ChecklistTests
{
    private const string Item = """
        format: 1
        library: the-shop
        version: 1.0.0
        items:
          winch-bolts:
            title: Winch bolts
            ask: The winch is bolted at four places.
            severity: danger
            consequence: It flies off.
            family: bodywork
            gate: before-first-drive
            expects: [ value, mark, initials ]
            units: [ Nm ]
            applies-to: { kind: [ bodywork ] }
            source: { basis: shop }
          winch-rope:
            title: Winch rope
            ask: The rope is whole.
            severity: warning
            consequence: It snaps.
            family: bodywork
            gate: after-first-drive
            source: { basis: shop }

        """;

    public static TheoryData<string> Families => [.. ChecklistWords.Families];

    [Fact]
    public void The_base_library_asks_for_every_check_of_the_trade_that_only_a_person_can_make() => Libraries.Base.Items.Select(i => i.Id).ShouldBeSubsetOf(
    [
        "brake-pedal-hold", "brakes-bled", "hanging-wheels-turn-free", "hose-clips-present", "load-sensing-valve-set", "parking-brake-holds",
        "wheel-nuts-tightened", "wheel-seated-on-hub", "wheel-spacers-held", "load-rating-of-wheels-and-tires", "speedometer-and-gearing",
        "pitman-nut-tightened", "rod-end-nuts-pinned", "adjuster-sleeves-clamped", "steering-free-lock-to-lock", "steering-shaft-engaged",
        "track-bar-bolts-tightened", "arm-bolts-tightened", "u-bolts-torqued", "lift-blocks-located", "drop-brackets-tight", "welds-sound", "springs-seated",
        "exhaust-joints-tight", "exhaust-outlet-beyond-cabin", "fuel-lines-tight", "lines-do-not-chafe", "driveshaft-turns-free", "fluids-and-breathers",
        "body-lift-fastened", "earth-straps-reach", "wheel-speed-leads-reach", "steering-angle-zero", "driver-assist-aimed", "headlamps-aimed",
        "alignment-measured", "local-law-looked-up", "standing-brake-test", "one-wheel-on-a-ramp", "rub-marks-after-drive", "leaks-after-drive",
        "temperature-labels-read", "wheel-nuts-again", "suspension-bolts-again", "u-bolts-again", "ride-heights-read-again",
    ]);

    [Theory]
    [MemberData(nameof(Families))]
    public void Every_family_has_an_item(string family) => Libraries.Base.Items.ShouldContain(i => i.Family == family);

    [Fact]
    public void A_danger_of_the_base_library_rests_on_more_than_a_guess_and_every_source_has_its_words()
    {
        foreach (ChecklistItem item in Libraries.Base.Items)
        {
            item.Source.Text.ShouldNotBeNullOrWhiteSpace(item.Id);
            item.Ask.ShouldEndWith(".");
            item.Consequence.ShouldEndWith(".");
            if (item.Severity == Severity.Danger) item.Source.Basis.ShouldNotBe("common-practice", item.Id);
        }

        foreach (CoverageRow row in Libraries.Base.Coverage.Where(r => r.Severity == Severity.Danger)) row.Source.Basis.ShouldNotBe("common-practice", row.Expectation.Id);
    }

    [Fact]
    public void No_torque_is_invented_and_every_tightened_joint_asks_for_the_makers_value()
    {
        foreach (ChecklistItem item in Libraries.Base.Items.Where(i => i.Units.Contains("Nm"))) (item.Ask.Contains("maker", StringComparison.Ordinal)).ShouldBeTrue(item.Id);
        Libraries.Base.Items.ShouldAllBe(i => !i.Ask.Contains(" Nm", StringComparison.Ordinal) && !i.Ask.Contains("lb-ft", StringComparison.Ordinal));
        Libraries.Base.Items.Count(i => i.NeedsMark).ShouldBeGreaterThanOrEqualTo(10);
    }

    [Fact]
    public void Both_gates_have_items() =>
        Enum.GetValues<ChecklistGate>().ShouldAllBe(g => Libraries.Base.Items.Any(i => i.Gate == g && i.Severity == Severity.Danger));

    [Fact]
    public void A_whole_vehicle_is_expected_to_have_these() => Libraries.Base.Coverage.Select(c => $"{c.Expectation.Id} {c.Expectation.For} {c.Expectation.Count} {c.Severity}").ShouldBe(
    [
        "brake-hose WheelBody 1 Danger", "brake-line Vehicle 1 Danger", "tires Axle 2 Danger", "driveshaft Axle 1 Danger", "shocks Axle 2 Warning",
        "bump-stops Axle 2 Warning", "steering-rods Axle 2 Danger", "steering-stops Axle 1 Warning", "exhaust Vehicle 1 Danger", "fuel-line Vehicle 1 Danger",
        "wheel-speed-leads Axle 2 Warning", "breather Axle 1 Caution", "parking-brake-cables Vehicle 1 Warning",
    ]);

    [Fact]
    public void The_word_for_an_axle_without_a_shaft_is_a_row_of_the_coverage() => Libraries.Base.Coverage.ShouldContain(c => c.Expectation.Id == AxleFacts.ShaftRow);

    [Fact]
    public void A_shop_writes_items_of_its_own()
    {
        ChecklistItem item = Libraries.Read([Libraries.File("a.yaml", Libraries.Shop), Libraries.File("b.yaml", Item)]).Library.ShouldNotBeNull().Items[0];

        item.Id.ShouldBe("winch-bolts");
        item.Severity.ShouldBe(Severity.Danger);
        item.Units.ShouldBe(["Nm"]);
        item.NeedsMark.ShouldBeTrue();
        item.AppliesTo.Kinds.ShouldBe(["bodywork"]);
        item.Gate.ShouldBe(ChecklistGate.BeforeFirstDrive);
    }

    [Fact]
    public void A_misspelt_word_leaves_the_item_out_and_says_the_nearest() => Golden.Check(
        Changed("family: bodywork\n    gate: before", "family: bodywrok\n    gate: before"),
        """
        shop.yaml:10:13: error: `family`: `bodywrok` is none of the words for this.
              family: bodywrok
                      ^^^^^^^^
        help: Did you mean `bodywork`? Words: brakes, steering, wheels, suspension, tightening, driveline, exhaust, fuel, bodywork, wiring-and-sensors, road-test, law.
        doc.unknown-word
        loaded: 
        winch-bolts was not loaded: 1 fault at shop.yaml:10:13.
        """);

    [Fact]
    public void Facts_of_an_axle_are_closed_words() => Golden.Check(
        Changed("{ kind: [ bodywork ] }", "{ axle: [ leaf-spring ], fitted: [ body-lift ] }"),
        """
        shop.yaml:14:27: error: Number 1 of `axle`: `leaf-spring` is none of the words for this.
              applies-to: { axle: [ leaf-spring ], fitted: [ body-lift ] }
                                    ^^^^^^^^^^^
        help: Did you mean `leaf-springs`? Words: steered, driven, leaf-springs, track-bar, anti-roll-bar, one-body, two-bodies.
        doc.unknown-word
        loaded: 
        winch-bolts was not loaded: 1 fault at shop.yaml:14:27.
        """);

    [Fact]
    public void A_value_needs_its_units() => Golden.Check(
        Changed("    units: [ Nm ]\n", ""),
        """
        shop.yaml:12:14: error: The item asks for a value and does not say in which units.
              expects: [ value, mark, initials ]
                       ^^^^^^^^^^^^^^^^^^^^^^^^^
        help: Write for example `units: [ Nm, lb-ft ]`.
        rule.value-without-units
        loaded: 
        winch-bolts was not loaded: 1 fault at shop.yaml:12:14.
        """);

    [Fact]
    public void Units_need_a_value() => Golden.Check(
        Changed("expects: [ value, mark, initials ]", "expects: [ mark ]"),
        """
        shop.yaml:13:12: error: The item gives units and asks for no value.
              units: [ Nm ]
                     ^^^^^^
        help: Write `expects: [ value ]`, or leave `units` out.
        rule.units-without-value
        loaded: 
        winch-bolts was not loaded: 1 fault at shop.yaml:13:12.
        """);

    [Fact]
    public void Rules_and_items_do_not_share_a_file()
    {
        string said = Libraries.Said(Libraries.File("shop.yaml", Item + "rules: { a: { } }\n"));

        said.ShouldContain("`rules` stands beside `items`");
        said.ShouldContain("rule.two-lists");
        said.ShouldContain("no library");
    }

    [Fact]
    public void An_expectation_of_the_vehicle_asks_for_no_axle()
    {
        string said = Libraries.Said(Libraries.File("shop.yaml", """
            format: 1
            library: the-shop
            version: 1.0.0
            coverage:
              winch-rope: { title: winch rope, each: vehicle, kind: [ wiring ], where: [ steered ], severity: notice, consequence: None., source: { basis: shop } }

            """));

        said.ShouldContain("rule.where-of-vehicle");
        said.ShouldContain("winch-rope was not loaded");
    }

    [Fact]
    public void An_id_that_is_a_rule_and_an_item_loads_neither()
    {
        string said = Libraries.Said(Libraries.File("a.yaml", Libraries.Shop), Libraries.File("b.yaml", Item.Replace("winch-bolts", "hose-short", StringComparison.Ordinal)));

        said.ShouldContain("rule.duplicate-id");
        said.ShouldContain("loaded: line-near-pipe");
    }

    private static string Changed(string from, string to)
    {
        string text = Item.ReplaceLineEndings("\n");
        text.ShouldContain(from);
        return text.Replace(from, to, StringComparison.Ordinal);
    }
}
