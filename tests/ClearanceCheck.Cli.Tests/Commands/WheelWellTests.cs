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
        findings["moving-parts-close--frame-rail-left--rear-shock-left"]["verdict"]!.GetValue<string>().ShouldBe("fails");
        result["exempt"]!.AsArray().ShouldContain(z => z!.ToJsonString().Contains("rear-left-tire") && z.ToJsonString().Contains("rear-left-wheel"));
    }

    private static double Value(JsonNode finding) => finding["value"]!.GetValue<double>();
}
