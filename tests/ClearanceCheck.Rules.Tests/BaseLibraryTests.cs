using ClearanceCheck.Documents;
using ClearanceCheck.Quantities;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Rules.Tests;

public sealed class BaseLibraryTests
{
    public static TheoryData<string> Ids => [.. Libraries.Base.Rules.Select(r => r.Id)];

    [Fact]
    public void It_loads_without_a_word()
    {
        (RuleLibrary? library, DiagnosticBag diagnostics) = Libraries.Read([.. BaseLibrary.Files]);

        DiagnosticRenderer.Render(diagnostics).ShouldBe("");
        library.ShouldNotBeNull().NotLoaded.ShouldBeEmpty();
        library.Name.ShouldBe("base");
        library.Version.ShouldBe("1.0.0");
        library.Hash.Length.ShouldBe(64);
    }

    [Fact]
    public void Its_files_and_rules_are_these()
    {
        BaseLibrary.Files.Select(f => f.Name).ShouldBe(
        [
            "any-parts.yaml", "before-the-lift.yaml", "bodywork.yaml", "brake-hoses.yaml", "brake-lines.yaml", "checklist.yaml", "coverage.yaml", "driveline.yaml", "exhaust.yaml", "leads-and-cables.yaml",
            "links-and-axle.yaml", "rods-and-alignment.yaml", "springs-and-shocks.yaml", "steering.yaml", "straps.yaml", "tires.yaml", "tubes.yaml", "wheels.yaml", "wiring-and-sensors.yaml",
        ]);
        Libraries.Base.Rules.Select(r => $"{r.Id} {r.Severity} {(r.Limit.OfPart is null ? r.Limit.Number : "own")}").ShouldBe(
        [
            "moving-parts-collide Warning 0",
            "moving-parts-close Notice 10",
            "meant-contact-too-deep Warning -2",
            "joined-parts-overlap Notice -2",
            "travel-cut-short Caution 66.7",
            "speedometer-reads-wrong Notice -3",
            "geared-far-from-original Caution -10",
            "engine-near-frame-or-bodywork Caution 10",
            "fan-near-shroud Caution 10",
            "lever-strikes-bodywork Caution 10",
            "suspension-strikes-bodywork Caution 0",
            "brake-hose-pulled-tight Danger 2",
            "brake-hose-short-of-slack Warning 5",
            "hose-end-struck-by-moving-part Danger 6.4",
            "hose-end-touches-exhaust Danger 6.4",
            "hose-end-near-exhaust Warning 75",
            "brake-line-near-exhaust Warning 50",
            "brake-line-touches-exhaust Danger 6.4",
            "brake-line-near-moving-part Warning 19",
            "brake-line-struck-by-moving-part Danger 6.4",
            "brake-line-chafes Caution 1.5",
            "brake-line-unsupported Caution 600",
            "driveshaft-strikes-part Danger 0",
            "driveshaft-near-part Warning 25",
            "driveshaft-near-suspension-or-steering Warning 13",
            "driveshaft-joint-binds Warning own",
            "driveshaft-joint-bent-far Caution 22",
            "driveshaft-bent-much-at-ride-height Caution 11.5",
            "driveshaft-bent-at-ride-height Notice 5.8",
            "driveshaft-turns-unevenly Caution 2.98",
            "driveshaft-comes-apart Danger 0",
            "driveshaft-short-of-spline Warning 30",
            "driveshaft-bottoms-on-its-slip Warning 25",
            "exhaust-struck-by-suspension Warning 0",
            "exhaust-near-suspension Caution 25",
            "exhaust-jams-steering Danger 0",
            "exhaust-near-steering Warning 25",
            "shock-near-exhaust Caution 50",
            "boot-near-exhaust Caution 100",
            "exhaust-near-floor Caution 25",
            "exhaust-near-liner Caution 100",
            "exhaust-rattles-on-frame Notice 10",
            "power-steering-hose-near-exhaust Warning 75",
            "refrigerant-hose-near-exhaust Notice 80",
            "wheel-speed-lead-pulled-tight Warning 2",
            "breather-hose-pulled-tight Caution 2",
            "parking-brake-cable-pulled-tight Warning 2",
            "axle-strikes-frame Warning 10",
            "axle-strikes-engine Warning 15",
            "arm-strikes-part Warning 5",
            "anti-roll-bar-goes-over-centre Warning 0",
            "axle-stands-off-centre Caution 10",
            "rod-end-bent-too-far Danger own",
            "arm-joint-bent-too-far Warning own",
            "toe-out-of-range Caution -0.3",
            "axle-not-square Caution 10",
            "shock-bottoms Caution 10",
            "coil-spring-comes-loose Warning 0",
            "shock-strikes-part Caution 10",
            "steering-rod-strikes-part Danger 0",
            "steering-rod-near-part Warning 10",
            "steering-shaft-near-part Warning 10",
            "steering-goes-over-centre Danger 0",
            "steering-close-to-over-centre Warning 15",
            "wheels-steer-over-bumps Warning 2",
            "toe-changes-over-travel Caution 1",
            "shock-full-length-before-strap Caution 10",
            "tire-strikes-frame-or-suspension Danger 0",
            "tire-close-to-frame-or-suspension Caution 10",
            "tire-rubs-bodywork Warning 0",
            "tire-rubs-liner Notice 0",
            "tire-near-exhaust Warning 50",
            "tire-strikes-hose-end Danger 6.4",
            "tire-touches-exhaust Danger 0",
            "tire-short-of-room-at-ride-height Caution 25",
            "fuel-line-struck-by-moving-part Danger 6.4",
            "fuel-line-near-moving-part Warning 19",
            "fuel-line-touches-exhaust Danger 6.4",
            "fuel-line-heated-by-exhaust Warning 100",
            "fuel-line-near-wiring Caution 51",
            "service-line-struck-by-moving-part Warning 6.4",
            "service-line-near-exhaust Caution 50",
            "tube-unsupported Caution 600",
            "fuel-tank-touches-exhaust Danger 0",
            "fuel-tank-near-exhaust Warning 150",
            "fuel-tank-struck-by-moving-part Danger 0",
            "wheel-strikes-brake-or-steering Danger 0",
            "wheel-near-caliper Warning 3",
            "wheel-near-hose-or-rod-end Warning 5",
            "wheel-strikes-arm-or-frame Danger 0",
            "wheel-near-steering-rod-or-arm Warning 5",
            "wiring-near-moving-part Caution 10",
            "wiring-touches-exhaust Danger 0",
            "wiring-near-exhaust Warning 75",
            "wiring-unsupported Notice 460",
            "power-steering-hose-near-frame Notice 15",
            "power-steering-hose-near-bodywork Notice 10",
        ]);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Nothing_is_left_unpinned(string id) => RuleExamples.Unpinned(Find(id)).ShouldBeEmpty();

    [Fact]
    public void No_two_rules_are_alike_in_quantity_selectors_and_limit() =>
        Libraries.Base.Rules.Select(r => $"{r.Quantity}; {r.Over}; {r.Part.InWords()}; {r.To?.InWords()}; {string.Join(' ', r.OnlyWhen)}; {r.Limit.AtLeast} {r.Limit.AtMost} {r.Limit.OfPart}").ShouldBeUnique();

    [Fact]
    public void A_danger_never_asks_for_more_than_the_warning_on_the_same_parts()
    {
        foreach (Rule danger in Libraries.Base.Rules.Where(r => r.Severity == Severity.Danger))
        {
            foreach (Rule warning in Libraries.Base.Rules.Where(r => r.Severity == Severity.Warning
                && r.Quantity == danger.Quantity && r.Part.InWords() == danger.Part.InWords() && r.To?.InWords() == danger.To?.InWords()))
            {
                warning.Limit.Number.ShouldBeGreaterThan(danger.Limit.Number);
                foreach (RuleCase special in warning.Cases) special.Limit.Number.ShouldBeGreaterThan(danger.Limit.Number);
            }
        }
    }

    [Fact]
    public void Every_pair_quantity_has_two_selectors_and_every_other_one()
    {
        foreach (Rule rule in Libraries.Base.Rules)
            (rule.To is not null).ShouldBe(QuantityCatalogue.Standard.Find(rule.Quantity)!.IsOfPair, rule.Id);
    }

    [Fact]
    public void Sources_marked_read_stand_in_the_text_with_the_figure()
    {
        foreach (Rule rule in Libraries.Base.Rules.Where(r => r.Source.Basis == "published"))
            rule.Source.Text.ShouldContain(FormattableString.Invariant($"{rule.Limit.Number} {QuantityUnitText.Of(QuantityCatalogue.Standard.Find(rule.Quantity)!.Unit)}"));
    }

    [Fact]
    public void Only_kinds_with_the_right_shape_are_selected()
    {
        foreach (Rule rule in Libraries.Base.Rules)
            if (rule.Quantity == "gap") PartKinds.All.Any(k => rule.Part.CouldSelect(k) && k.Forms.Any(f => f is not (PartFormKind.Hose or PartFormKind.BumpStop))).ShouldBeTrue(rule.Id);
            else PartKinds.All.Where(rule.Part.CouldSelect).ShouldAllBe(k => k.Forms.Intersect(FormsOf(rule.Quantity)).Any(), rule.Id);
    }

    // What a quantity of one part is asked of.
    private static PartFormKind[] FormsOf(string quantity) => quantity switch
    {
        "hose-slack" => [PartFormKind.Hose],
        "angle-difference" or "engagement" => [PartFormKind.Shaft],
        "joint-angle" => [PartFormKind.Shaft, PartFormKind.Link],
        "reserve" => [PartFormKind.Shock, PartFormKind.Shaft],
        "open-reserve" => [PartFormKind.Shock],
        "preload" => [PartFormKind.Coil],
        "over-centre" => [PartFormKind.Link],
        "span" => [PartFormKind.Chain],
        "bump-steer" or "toe-change" or "toe" or "axle-offset" or "wheelbase-difference" or "travel" or "gearing" => [PartFormKind.FromAxle],
        _ => throw new ArgumentException($"No rule has asked for {quantity} yet.", nameof(quantity)),
    };

    private static Rule Find(string id) => Libraries.Base.Rules.Single(r => r.Id == id);
}
