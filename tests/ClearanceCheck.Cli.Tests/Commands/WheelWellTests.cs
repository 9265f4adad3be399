using System.Text.Json.Nodes;

namespace ClearanceCheck.Cli.Tests.Commands;

/// <summary>The inspection with every kind of shape around a wheel, from the file to its findings.</summary>
public sealed class WheelWellTests
{
    [Fact]
    public void What_was_planted_around_the_wheel_is_found()
    {
        using Workshop shop = Workshop.WithFixture("wheel-well");

        shop.Run("inspect", "inspection.yaml").Status.ShouldBe(1);

        JsonNode result = JsonNode.Parse(shop.Read("clearance-report/findings.json"))!;
        Dictionary<string, JsonNode> findings = result["findings"]!.AsArray().ToDictionary(f => f!["id"]!.GetValue<string>(), f => f!);
        result["decision"]!.GetValue<string>().ShouldBe("held");

        // The caliper's upper edge is 40 mm beside the axle line and 185.8 above it, the barrel's inside 192; the hubs' heights differ by 2 mm.
        double caliper = Value(findings["wheel-near-caliper--rear-caliper-left--rear-left-wheel"]);
        caliper.ShouldBe(192 - Math.Sqrt((40 * 40) + (185.8 * 185.8)), 0.15);
        foreach (string id in new[]
        {
            "driveshaft-strikes-part--crossmember--rear-driveshaft", "tire-rubs-bodywork--fender-left--rear-left-tire",
            "tire-rubs-bodywork--inner-panel-left--rear-left-tire", "tire-rubs-liner--liner-left--rear-left-tire",
        })
        {
            Value(findings[id]).ShouldBeLessThan(0, id);
            findings[id]["verdict"]!.GetValue<string>().ShouldBe("fails", id);
            findings[id]["drawing"]!.AsArray().ShouldContain(d => d!["pieces"]!.AsArray().Count > 0, id);
        }

        // Inboard stops: the tire goes highest with the other wheel hanging.
        findings["tire-rubs-bodywork--fender-left--rear-left-tire"]["pose"]!["rear.right"]!.GetValue<double>().ShouldBeLessThan(-100);
        findings["shock-strikes-part--frame-rail-left--rear-shock-left"]["verdict"]!.GetValue<string>().ShouldBe("fails");
        ShaftIsInTheTravelTable(result["travel"]![0]!);
        result["exempt"]!.AsArray().ShouldContain(z => z!.ToJsonString().Contains("rear-left-tire") && z.ToJsonString().Contains("rear-left-wheel"));
    }

    // Measured hanging, 62 of 120 mm engaged: whatever the shaft is longer is less engaged, and a link's turn is counted from there.
    private static void ShaftIsInTheTravelTable(JsonNode table)
    {
        string[] columns = [.. table["columns"]!.AsArray().Select(c => c!["id"]!.GetValue<string>())];
        foreach (string end in new[] { "first-angle", "second-angle", "equivalent", "slip", "engaged", "left-in" }) columns.ShouldContain("rear-driveshaft." + end);
        columns.ShouldNotContain("rear-driveshaft.first-turn");
        columns.ShouldContain("rear-upper-link.first-swing");
        foreach (JsonNode? row in table["rows"]!.AsArray())
        {
            double Cell(string column) => row!["values"]![column]!.GetValue<double>();
            Cell("rear-driveshaft.engaged").ShouldBe(62 - Cell("rear-driveshaft.slip"), 1e-6);
            Cell("rear-driveshaft.left-in").ShouldBe(120 - Cell("rear-driveshaft.engaged"), 1e-6);
        }
    }

    private static double Value(JsonNode finding) => finding["value"]!.GetValue<double>();
}
