using System.Globalization;
using System.Text.Json.Nodes;

namespace ClearanceCheck.Cli.Tests.Commands;

public sealed class MeasureTests
{
    private static readonly string[] Pair = ["--first", "axle-brake-line", "--second", "tailpipe"];

    [Fact]
    public void The_worst_gap_is_met_in_its_own_pose_and_no_pose_inside_the_stops_is_below_the_bound()
    {
        using Workshop shop = Workshop.WithFixture();
        JsonNode worst = Measure(shop, Pair);
        double value = Number(worst, "value"), bound = Number(worst, "bound");

        JsonNode there = Measure(shop, [.. Pair, "--at", string.Join(',', worst["pose"]!.AsObject().Select(c => string.Create(CultureInfo.InvariantCulture, $"{c.Key}={c.Value!.GetValue<double>():F9}mm")))]);

        Number(there, "value").ShouldBe(value, 1e-6);
        bound.ShouldBeLessThanOrEqualTo(value);
        int reached = 0;
        for (int left = -150; left <= 150; left += 60)
            for (int right = -150; right <= 150; right += 60)
            {
                JsonNode at = Measure(shop, [.. Pair, "--at", string.Create(CultureInfo.InvariantCulture, $"left={left}mm,right={right}mm")]);
                if (at["answer"]!.GetValue<string>() != "solved") continue;
                Number(at, "value").ShouldBeGreaterThanOrEqualTo(bound);
                reached++;
            }

        reached.ShouldBeGreaterThan(10);
    }

    [Fact]
    public void The_value_is_the_distance_of_the_witness_points_and_give_or_take_two_uncertainties()
    {
        using Workshop shop = Workshop.WithFixture();

        JsonNode worst = Measure(shop, Pair);

        double[][] points = [.. worst["witness"]!.AsArray().Select(p => p!.AsArray().Select(c => c!.GetValue<double>()).ToArray())];
        Math.Sqrt(points[0].Zip(points[1], (a, b) => (a - b) * (a - b)).Sum()).ShouldBe(Number(worst, "value"), 1e-6);
        Number(worst, "giveOrTake").ShouldBe(2 * Number(worst, "standardUncertainty"), 1e-8);
        Number(worst, "standardUncertainty").ShouldBeGreaterThan(0);
        worst["boundKind"]!.GetValue<string>().ShouldBe("proven");
        worst["parts"]!.AsArray().Select(p => p!.GetValue<string>()).ShouldBe(["axle-brake-line", "tailpipe"]);
    }

    [Fact]
    public void Both_orders_of_a_pair_give_the_same_value()
    {
        using Workshop shop = Workshop.WithFixture();

        Number(Measure(shop, ["--first", "tailpipe", "--second", "axle-brake-line"]), "value").ShouldBe(Number(Measure(shop, Pair), "value"), 1e-9);
    }

    [Fact]
    public void Without_parts_all_pairs_are_listed_the_closest_first()
    {
        using Workshop shop = Workshop.WithFixture();

        Answer text = shop.Run("measure", "inspection.yaml");
        JsonNode[] listed = [.. Measure(shop, [])["closest"]!.AsArray().Select(p => p!)];

        // Four parts have a surface: six pairs.
        listed.Length.ShouldBe(6);
        listed.Select(p => Number(p, "value")).ShouldBeInOrder();
        listed.ShouldContain(p => p["parts"]!.AsArray().Select(n => n!.GetValue<string>()).Order().SequenceEqual(new[] { "axle-brake-line", "tailpipe" }));
        text.Output.ShouldContain("Tailpipe over the axle");
        text.Output.ShouldContain("never less than");
    }

    [Fact]
    public void Hose_slack_follows_from_the_places_that_pose_prints()
    {
        using Workshop shop = Workshop.WithFixture();
        const string At = "rear.left=-60mm,rear.right=10mm";

        JsonNode slack = Measure(shop, ["--quantity", "hose-slack", "--first", "rear-brake-hose", "--at", At]);
        JsonNode points = JsonNode.Parse(shop.Run("pose", "inspection.yaml", "--at", At, "--format", "json").Output)!["points"]!;

        double chord = Math.Sqrt(Enumerable.Range(0, 3).Sum(i => Math.Pow(points["parts/rear-brake-hose/upper"]![i]!.GetValue<double>() - points["parts/rear-brake-hose/lower"]![i]!.GetValue<double>(), 2)));
        double free = double.Parse(shop.Read("inspection.yaml").Split("free-length:")[1].Split("mm")[0], CultureInfo.InvariantCulture);
        Number(slack, "value").ShouldBe(100 * ((free / chord) - 1), 1e-6);
        slack["unit"]!.GetValue<string>().ShouldBe("%");
        slack["bound"].ShouldBeNull();
    }

    [Fact]
    public void A_value_in_a_pose_beyond_a_stop_is_given_as_stopped()
    {
        using Workshop shop = Workshop.WithFixture();

        JsonNode at = Measure(shop, [.. Pair, "--at", "left=150mm,right=150mm"]);

        at["answer"]!.GetValue<string>().ShouldBe("stopped");
        at["stops"]!.AsArray().Count.ShouldBeGreaterThan(0);
        at["value"].ShouldNotBeNull();
    }

    [Theory]
    [InlineData(new[] { "--first", "tailpip", "--second", "rear-axle-tube" }, "Did you mean tailpipe?")]
    [InlineData(new[] { "--quantity", "gpa" }, "Did you mean gap?")]
    [InlineData(new[] { "--first", "tailpipe" }, "needs two parts")]
    [InlineData(new[] { "--second", "tailpipe" }, "no first one")]
    [InlineData(new[] { "--first", "tailpipe", "--second", "tailpipe" }, "the same one")]
    [InlineData(new[] { "--first", "tailpipe", "--second", "rear-shock-left" }, "no shape")]
    [InlineData(new[] { "--quantity", "hose-slack", "--first", "rear-brake-hose", "--second", "tailpipe" }, "belongs to one part")]
    [InlineData(new[] { "--quantity", "hose-slack", "--first", "tailpipe" }, "is not a hose")]
    public void What_can_t_be_measured_is_refused_with_what_would_be_right(string[] typed, string says)
    {
        using Workshop shop = Workshop.WithFixture();

        Answer answer = shop.Run(["measure", "inspection.yaml", .. typed]);

        answer.Status.ShouldBe(2);
        answer.Output.ShouldBeEmpty();
        answer.Error.ShouldContain(says);
    }

    private static JsonNode Measure(Workshop shop, string[] typed)
    {
        Answer answer = shop.Run(["measure", "inspection.yaml", "--format", "json", .. typed]);
        answer.Status.ShouldBe(0, answer.Error);
        return JsonNode.Parse(answer.Output)!;
    }

    private static double Number(JsonNode node, string name) => node[name]!.GetValue<double>();
}
