namespace ClearanceCheck.Cli.Tests.Commands;

public sealed class DemoTests
{
    [Fact]
    public void The_demo_writes_its_inspection_and_its_report_and_ends_well_though_the_vehicle_is_held()
    {
        using var shop = new Workshop();

        Answer answer = shop.Run("demo");

        answer.Status.ShouldBe(0);
        answer.Error.ShouldBeEmpty();
        answer.Output.ShouldStartWith("HELD");
        answer.Output.TrimEnd().Split('\n')[^1].ShouldContain(Path.Combine("clearance-demo", "report.html"));
        foreach (string name in Directory.GetFiles(Workshop.FixtureFolder).Select(f => Path.GetFileName(f)))
            File.ReadAllBytes(shop.At("clearance-demo/" + name)).ShouldBe(File.ReadAllBytes(Path.Combine(Workshop.FixtureFolder, name)), name);
        shop.Has("clearance-demo/report.html").ShouldBeTrue();
        shop.Has("clearance-demo/findings.json").ShouldBeTrue();
    }

    [Fact]
    public void Running_it_again_gives_the_same_bytes()
    {
        using var shop = new Workshop();
        shop.Run("demo", "--out", "d");
        string before = shop.Read("d/report.html");

        shop.Run("demo", "--out", "d").Status.ShouldBe(0);

        shop.Read("d/report.html").ShouldBe(before);
    }

    [Fact]
    public void An_inspection_file_that_is_not_the_demo_s_is_left_alone()
    {
        using var shop = new Workshop();
        shop.Write("d/inspection.yaml", "mine");

        Answer answer = shop.Run("demo", "--out", "d");

        answer.Status.ShouldBe(2);
        answer.Error.ShouldContain("inspection.yaml");
        shop.Read("d/inspection.yaml").ShouldBe("mine");
        shop.Names("d").ShouldBe(["inspection.yaml"]);
    }
}
