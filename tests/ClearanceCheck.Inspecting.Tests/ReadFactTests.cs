using System.Text;
using ClearanceCheck.Files;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Quantities;
using ClearanceCheck.Rules;
using ClearanceCheck.Tests.Shared;

namespace ClearanceCheck.Inspecting.Tests;

/// <summary>Rules of the base library that ask only where a reading was made: the wheel-well fixture with such readings and without.</summary>
public sealed class ReadFactTests
{
    private static readonly string[] OnlyRead =
    [
        "travel-cut-short", "speedometer-reads-wrong", "geared-far-from-original", "rod-end-bent-too-far", "arm-joint-bent-too-far", "toe-out-of-range", "axle-not-square", "shock-full-length-before-strap",
    ];

    private const string Before = """

        before-lift:
          hub-to-fender: { rear-left: 560 mm, rear-right: 561 mm }
          hanging: { rear-left: 760 mm }
          bumped: { rear-left: 480 mm }
          tire: 245/75R16

        parts:
          limit-strap-left:
            kind: limit-strap
            length: 500 mm
            upper: { body: chassis, at: [-640, 300, 60] }
            lower: { body: rear/axle, at: [-640, 320, -402] }
          bent-rod:
            kind: link
            outside-diameter: 30 mm
            first: { body: chassis, at: [288, 600, -232] }
            second: { body: rear/axle, at: [-590, 600, -452] }
            axis-first: [288, 700, -232]

        """;

    private static readonly InspectionResult Bare = Inspect();

    private static readonly InspectionResult Typed = Inspect(
        ("    layout: three-link\n", "    layout: three-link\n    toe: { front: 1500 mm, rear: 1512 mm, over: 740 mm, within: 0.5 mm }\n"), ("\nparts:\n", Before));

    [Fact]
    public void Without_the_readings_nothing_is_found_and_each_rule_says_which_reading_it_is_for()
    {
        // Both hubs of the fixture were measured, so the axle's squareness is known.
        Bare.Findings.Select(f => f.Rule).Where(OnlyRead.Contains).ShouldBe(["axle-not-square"]);
        Bare.Findings.Single(f => f.Rule == "axle-not-square").Verdict.ShouldBe(Verdict.Conforms);
        Reason(Bare, "toe-out-of-range").ShouldContain("type both under `toe`");
        Reason(Bare, "travel-cut-short").ShouldContain("`hanging` and `bumped`, under `before-lift`");
        Reason(Bare, "geared-far-from-original").ShouldContain("type its size as `tire`");
        Reason(Bare, "arm-joint-bent-too-far").ShouldContain("type it as `axis-first` and `axis-second`");
        Reason(Bare, "shock-full-length-before-strap").ShouldContain("no limit strap of the rear axle on the side of Left rear shock is in the file");
    }

    [Fact]
    public void With_the_readings_each_is_judged()
    {
        // 12 mm over 740 mm are 0.93 deg; the new tires roll 2622 mm, the old ones some 2420 mm.
        Only(Typed, "toe-out-of-range").Verdict.ShouldBe(Verdict.Fails);
        Only(Typed, "toe-out-of-range").Evidence!.Value.ShouldBe(2 * Math.Asin(12 / 1480.0) * 180 / Math.PI, 1e-9);
        Only(Typed, "speedometer-reads-wrong").Verdict.ShouldBe(Verdict.Fails);
        Only(Typed, "geared-far-from-original").Verdict.ShouldNotBe(Verdict.NotEvaluated);
        Only(Typed, "travel-cut-short").Verdict.ShouldBe(Verdict.Fails);
        Only(Typed, "shock-full-length-before-strap").Parts.Single().Id.ShouldBe("rear-shock-left");
        Only(Typed, "shock-full-length-before-strap").Verdict.ShouldBe(Verdict.Fails);
    }

    [Fact]
    public void A_stud_without_its_own_limit_is_not_evaluated_and_says_what_to_type()
    {
        Finding finding = Only(Typed, "arm-joint-bent-too-far");

        finding.Verdict.ShouldBe(Verdict.NotEvaluated);
        finding.Missing.ShouldNotBeNull().ShouldContain("`joint-limit`");
    }

    [Fact]
    public void A_part_without_the_reading_is_listed_where_another_one_has_it()
    {
        Typed.NotInspected.ShouldContain(i => i.What.StartsWith("Less than two thirds", StringComparison.Ordinal) && i.Why.Contains("rear right wheel before the lift is not in the file", StringComparison.Ordinal));
        Typed.NotInspected.ShouldContain(i => i.Why.StartsWith("no limit strap of the rear axle on the side of Right rear shock is in the file", StringComparison.Ordinal));
        Bare.NotInspected.ShouldNotContain(i => i.What.StartsWith("Less than two thirds", StringComparison.Ordinal));
    }

    [Fact]
    public void A_mirrored_hub_tells_nothing_of_how_square_the_axle_stands()
    {
        InspectionResult mirrored = Inspect(
            ("    layout: three-link\n", "    layout: three-link\n    side: left\n    mirror-within: 2 mm\n"),
            ("        hub-right: [-612, -738, -404]\n", ""),
            ("hub-left:", "hub:"),
            ("lower-link-left-frame:", "lower-link-frame:"),
            ("lower-link-left-axle:", "lower-link-axle:"),
            ("        lower-link-right-frame: [288, -430, -233]\n", ""),
            ("        lower-link-right-axle: [-590, -506, -454]\n", ""));

        mirrored.Findings.ShouldNotContain(f => f.Rule == "axle-not-square");
        Reason(mirrored, "axle-not-square").ShouldContain("one rear hub was taken as the mirror image of the other");
    }

    private static Finding Only(InspectionResult result, string rule) => result.Findings.Where(f => f.Rule == rule).ShouldHaveSingleItem();

    private static string Reason(InspectionResult result, string rule) => result.MatchedNothing.Single(m => m.Rule == rule).Reason;

    private static InspectionResult Inspect(params (string Old, string Fresh)[] changes)
    {
        string text = Encoding.UTF8.GetString(FixtureFiles.Bytes("wheel-well", "inspection.yaml").Span).ReplaceLineEndings("\n");
        foreach ((string old, string fresh) in changes)
        {
            int at = text.IndexOf(old, StringComparison.Ordinal);
            at.ShouldBeGreaterThanOrEqualTo(0, old);
            text = string.Concat(text.AsSpan(0, at), fresh.ReplaceLineEndings("\n"), text.AsSpan(at + old.Length));
        }

        InspectionReading reading = InspectionFileReader.Read(new InspectionFile("inspection.yaml", Encoding.UTF8.GetBytes(text), file => FixtureFiles.Beside("wheel-well", file)));
        RuleLibrary rules = RuleLibraryReader.Read([.. BaseLibrary.Files], QuantityCatalogue.Standard).Library!;
        return OneLine.Inspect(reading.Vehicle.ShouldNotBeNull(), 1, rules with { Rules = [.. rules.Rules.Where(r => OnlyRead.Contains(r.Id))] });
    }
}
