using System.Text.Json.Nodes;

namespace ClearanceCheck.Cli.Tests.Commands;

public sealed class InspectTests
{
    [Fact]
    public void The_report_and_its_data_are_written_and_the_summary_is_printed()
    {
        using Workshop shop = Workshop.WithFixture();

        Answer answer = shop.Run("inspect", "inspection.yaml");

        answer.Status.ShouldBe(1);
        answer.Output.ShouldStartWith("HELD");
        answer.Output.ShouldContain("Written: " + Path.Combine("clearance-report", "report.html"));
        answer.Error.ShouldBeEmpty();
        shop.Names("clearance-report").ShouldBe(["findings.json", "report.html"]);
        Findings(shop)["decision"]!.GetValue<string>().ShouldBe("held");
        shop.Read("clearance-report/report.html").ShouldEndWith("</html>\n");
    }

    [Fact]
    public void No_file_says_where_on_the_machine_it_was_made()
    {
        using Workshop shop = Workshop.WithFixture();

        shop.Run("inspect", shop.At("inspection.yaml"));

        foreach (string name in new[] { "findings.json", "report.html" }) shop.Read("clearance-report/" + name).ShouldNotContain(Path.GetFileName(shop.Folder));
        Findings(shop)["provenance"]!["inputs"]!.AsArray().Select(i => i!["name"]!.GetValue<string>()).ShouldBe(["inspection.yaml", "exhaust.csv"]);
    }

    [Fact]
    public void The_same_input_gives_the_same_bytes_with_one_thread_and_with_two()
    {
        using Workshop shop = Workshop.WithFixture();

        shop.Run("inspect", "inspection.yaml", "--out", "a", "--threads", "1");
        shop.Run("inspect", "inspection.yaml", "--out", "b", "--threads", "1");
        shop.Run("inspect", "inspection.yaml", "--out", "c", "--threads", "2");

        foreach (string name in new[] { "findings.json", "report.html" })
        {
            byte[] first = File.ReadAllBytes(shop.At("a/" + name));
            File.ReadAllBytes(shop.At("b/" + name)).ShouldBe(first);
            File.ReadAllBytes(shop.At("c/" + name)).ShouldBe(first);
        }
    }

    [Fact]
    public void Moving_the_tailpipe_by_5_mm_changes_findings_of_the_tailpipe_only()
    {
        using Workshop shop = Workshop.WithFixture();
        shop.Run("inspect", "inspection.yaml", "--out", "before");
        string row = shop.Read("exhaust.csv").Split('\n').Single(l => l.StartsWith("tailpipe,-560,", StringComparison.Ordinal));
        string[] cells = row.Split(',');
        shop.Change("exhaust.csv", row, $"{cells[0]},{cells[1]},{cells[2]},{int.Parse(cells[3], System.Globalization.CultureInfo.InvariantCulture) + 5}");

        shop.Run("inspect", "inspection.yaml", "--out", "after");

        Dictionary<string, JsonNode> before = ById(Findings(shop, "before")), after = ById(Findings(shop, "after"));
        after.Keys.Order().ShouldBe(before.Keys.Order());
        string[] changed = [.. before.Keys.Where(id => !JsonNode.DeepEquals(before[id], after[id]))];
        changed.ShouldNotBeEmpty();
        changed.ShouldAllBe(id => id.Contains("tailpipe", StringComparison.Ordinal));
        changed.Length.ShouldBeLessThan(before.Count);
    }

    [Fact]
    public void Only_what_was_asked_for_is_written_and_an_older_page_is_named()
    {
        using Workshop shop = Workshop.WithFixture();
        shop.Write("out/report.html", "old");

        Answer answer = shop.Run("inspect", "inspection.yaml", "--out", "out", "--format", "json");

        shop.Names("out").ShouldBe(["findings.json", "report.html"]);
        shop.Read("out/report.html").ShouldBe("old");
        answer.Error.ShouldContain("report.html is of an earlier run");
    }

    [Fact]
    public void The_travel_tables_are_written_as_csv_when_they_are_asked_for()
    {
        using Workshop shop = Workshop.WithFixture();

        Answer answer = shop.Run("inspect", "inspection.yaml", "--out", "out", "--format", "csv,json");

        shop.Names("out").ShouldBe(["findings.json", "travel.csv"]);
        answer.Output.ShouldContain($"Written: {Path.Combine("out", "findings.json")} and {Path.Combine("out", "travel.csv")}");
        string[] lines = shop.Read("out/travel.csv").TrimEnd('\n').Split('\n'), heading = lines[0].Split(',');
        lines.Length.ShouldBe(10);
        JsonNode table = Findings(shop, "out")["travel"]![0]!;
        foreach ((string line, JsonNode? row) in lines.Skip(1).Zip(table["rows"]!.AsArray()))
        {
            string[] cells = line.Split(',');
            cells.Length.ShouldBe(heading.Length);
            cells[1].ShouldBe(row!["pose"]!.GetValue<string>());
            foreach (JsonNode? column in table["columns"]!.AsArray())
            {
                string id = column!["id"]!.GetValue<string>();
                double.Parse(cells[Array.IndexOf(heading, $"{id} ({column["unit"]!.GetValue<string>()})")], System.Globalization.CultureInfo.InvariantCulture)
                    .ShouldBe(row["values"]![id]!.GetValue<double>(), id);
            }
        }
    }

    [Fact]
    public void Standard_input_is_read_and_the_files_beside_it_from_the_working_folder()
    {
        using Workshop shop = Workshop.WithFixture();
        shop.Type(shop.Read("inspection.yaml"));

        Answer answer = shop.Run("inspect", "-");

        answer.Status.ShouldBe(1);
        Findings(shop)["provenance"]!["inputs"]!.AsArray().Select(i => i!["name"]!.GetValue<string>()).ShouldBe(["standard-input", "exhaust.csv"]);
    }

    [Theory]
    [InlineData("danger", 0)]
    [InlineData("notice", 1)]
    public void A_lesser_finding_ends_with_1_only_when_it_is_asked_for(string failAt, int status)
    {
        using Workshop shop = Workshop.WithFixture();
        shop.Write("rules/shop.yaml", OneRule("500 mm", "notice"));

        Answer answer = shop.Run("inspect", "inspection.yaml", "--rules", "rules", "--fail-at", failAt);

        answer.Error.ShouldBeEmpty();
        answer.Status.ShouldBe(status);
        Findings(shop)["findings"]!.AsArray().Count(f => f!["verdict"]!.GetValue<string>() == "fails").ShouldBeGreaterThan(0);
    }

    [Fact]
    public void Nothing_found_ends_with_0()
    {
        using Workshop shop = Workshop.WithFixture();
        shop.Write("rules/shop.yaml", OneRule("1 mm", "danger"));

        shop.Run("inspect", "inspection.yaml", "--rules", "rules").Status.ShouldBe(0);
    }

    [Fact]
    public void A_faulty_rule_is_printed_with_its_place_and_holds_the_vehicle()
    {
        using Workshop shop = Workshop.WithFixture();
        shop.Write("rules/shop.yaml", OneRule("1 mm", "danger") + OneRule("1 mm", "grave").Split("rules:\n")[1].Replace("line-near-exhaust", "other-rule", StringComparison.Ordinal));

        Answer answer = shop.Run("inspect", "inspection.yaml", "--rules", "rules");

        answer.Status.ShouldBe(1);
        answer.Error.ShouldContain("shop.yaml:");
        answer.Error.ShouldContain("grave");
        Findings(shop)["decision"]!.GetValue<string>().ShouldBe("held");
        Findings(shop)["library"]!["ruleCount"]!.GetValue<int>().ShouldBe(1);
    }

    [Theory]
    [InlineData("no-such-folder")]
    [InlineData("empty")]
    public void Without_rules_nothing_is_inspected(string folder)
    {
        using Workshop shop = Workshop.WithFixture();
        Directory.CreateDirectory(shop.At("empty"));

        Answer answer = shop.Run("inspect", "inspection.yaml", "--rules", folder);

        answer.Status.ShouldBe(2);
        answer.Error.ShouldContain(folder);
        answer.Output.ShouldBeEmpty();
        shop.Names("clearance-report").ShouldBeEmpty();
    }

    [Fact]
    public void Verbose_logs_go_to_standard_error_only()
    {
        using Workshop shop = Workshop.WithFixture();

        Answer plain = shop.Run("inspect", "inspection.yaml"), verbose = shop.Run("--verbose", "inspect", "inspection.yaml");

        verbose.Error.ShouldContain("exhaust.csv");
        verbose.Output.ShouldBe(plain.Output);
    }

    private static JsonNode Findings(Workshop shop, string folder = "clearance-report") => JsonNode.Parse(shop.Read(folder + "/findings.json"))!;

    private static Dictionary<string, JsonNode> ById(JsonNode result) => result["findings"]!.AsArray().ToDictionary(f => f!["id"]!.GetValue<string>(), f => f!);

    private static string OneRule(string atLeast, string severity) => ShopRules.Write("line-near-exhaust", atLeast, severity);
}
