using System.Text.Json.Nodes;

namespace ClearanceCheck.Cli.Tests.Commands;

/// <summary>A vehicle of which nobody measured a line or a pipe by points, from the file to its findings.</summary>
public sealed class FirstLookTests
{
    [Fact]
    public void Readings_alone_decide_what_they_can_clear_nothing_planted_and_say_what_to_measure()
    {
        using Workshop shop = Workshop.WithFixture("first-look");

        shop.Run("inspect", "inspection.yaml").Status.ShouldBe(1);

        JsonNode result = JsonNode.Parse(shop.Read("clearance-report/findings.json"))!;
        Dictionary<string, JsonNode> findings = result["findings"]!.AsArray().ToDictionary(f => Text(f!["id"]), f => f!);
        Text(result["decision"]).ShouldBe("held");
        string[] Ids(string verdict) => [.. findings.Values.Where(f => Text(f["verdict"]) == verdict).Select(f => Text(f["id"]))];

        Ids("conforms").ShouldBe(
        [
            "brake-line-struck-by-moving-part--frame-line--rear-axle-tube", "brake-line-touches-exhaust--frame-line--tailpipe",
            "brake-line-near-exhaust--frame-line--tailpipe", "brake-line-near-moving-part--frame-line--rear-axle-tube",
        ]);
        Ids("fails").ShouldBe(
        [
            "brake-hose-pulled-tight--rear-hose", "fuel-line-struck-by-moving-part--fuel-line--rear-axle-tube", "brake-hose-short-of-slack--rear-hose", "fuel-line-near-moving-part--fuel-line--rear-axle-tube",
            "shock-bottoms--front-shock-left", "shock-bottoms--front-shock-right", "shock-bottoms--rear-shock-left", "shock-bottoms--rear-shock-right",
        ]);

        JsonNode fuel = findings["fuel-line-struck-by-moving-part--fuel-line--rear-axle-tube"], over = findings["brake-line-near-moving-part--frame-line--rear-axle-tube"];
        fuel["value"]!.GetValue<double>().ShouldBe(4);
        fuel["pose"]!["rear.left"]!.GetValue<double>().ShouldBe(560 - 640);
        Text(over["basis"]).ShouldBe("reading-and-travel");
        over["value"]!.GetValue<double>().ShouldBeInRange(60, 230 - 107);
        over["assumes"]!.AsArray().Select(Text).ShouldContain("Rear axle tube is taken to lie between the points measured on rear/axle: what of it lies outside them may move farther.");

        Text(findings["brake-line-near-moving-part--front-axle-tube--front-line"]["missing"]).ShouldStartWith(
            "measure points of Brake line over the front axle and of Front axle tube where they come near each other: 96 mm at ride height less up to ");
        Text(findings["brake-line-near-exhaust--front-line--tailpipe"]["missing"]).ShouldBe("Brake line over the front axle and Tailpipe have no shape in the file, and no gap between the two was read");
        shop.Read("clearance-report/report.html").ShouldContain("From the reading and the travel alone.");
    }

    private static string Text(JsonNode? node) => node!.GetValue<string>();
}
