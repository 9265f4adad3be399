using System.Diagnostics;

namespace ClearanceCheck.Cli.Tests;

/// <summary>The program as it is started by a person: a process of its own.</summary>
public sealed class ProcessTests
{
    [Fact]
    public void Results_and_faults_go_to_their_own_streams_without_colour()
    {
        using Workshop shop = Workshop.WithFixture();

        Answer pose = Start(shop, null, "pose", "inspection.yaml", "--format", "json"), bad = Start(shop, null, "pose", "none.yaml");

        pose.ShouldBe(new Answer(0, shop.Run("pose", "inspection.yaml", "--format", "json").Output, ""));
        bad.Status.ShouldBe(2);
        bad.Output.ShouldBeEmpty();
        bad.Error.ShouldContain("none.yaml");
    }

    [Fact]
    public void An_inspection_from_standard_input_writes_the_same_report_as_in_process()
    {
        using Workshop shop = Workshop.WithFixture();
        string text = shop.Read("inspection.yaml");
        shop.Type(text);
        shop.Run("inspect", "-", "--out", "within");

        Answer answer = Start(shop, text, "--verbose", "inspect", "-", "--today", "2031-04-02", "--out", "apart");

        answer.Status.ShouldBe(1);
        answer.Output.ShouldNotContain("\e");
        answer.Error.ShouldContain("read standard-input");
        answer.Error.ShouldNotContain("\e");
        foreach (string name in new[] { "report.html", "findings.json" }) shop.Read("apart/" + name).ShouldBe(shop.Read("within/" + name));
    }

    [Theory]
    [InlineData("DOTNET_EnableAVX512F")]
    [InlineData("DOTNET_EnableAVX2")]
    public void The_same_bytes_come_out_with_the_processors_vector_units_switched_off(string unit)
    {
        using Workshop shop = Workshop.WithFixture();
        shop.Run("inspect", "inspection.yaml", "--out", "with");

        StartWith(shop, null, new() { [unit] = "0" }, "inspect", "inspection.yaml", "--today", "2031-04-02", "--out", "without").Status.ShouldBe(1);

        foreach (string name in new[] { "report.html", "findings.json" }) shop.Read("without/" + name).ShouldBe(shop.Read("with/" + name));
    }

    [Fact]
    public void The_version_is_that_of_the_assembly()
    {
        using var shop = new Workshop();

        Start(shop, null, "--version").Output.ShouldBe(ProgramVersion.Text + "\n");
    }

    private static Answer Start(Workshop shop, string? input, params string[] args) => StartWith(shop, input, [], args);

    private static Answer StartWith(Workshop shop, string? input, Dictionary<string, string> environment, params string[] args)
    {
        string program = Path.Combine(AppContext.BaseDirectory, "clearance-check.dll");
        var start = new ProcessStartInfo("dotnet", [program, .. args])
        {
            WorkingDirectory = shop.Folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach ((string name, string value) in environment) start.Environment[name] = value;
        using Process process = Process.Start(start)!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        if (input is not null) process.StandardInput.Write(input);
        process.StandardInput.Close();
        process.WaitForExit();
        return new Answer(process.ExitCode, output.GetAwaiter().GetResult(), error.GetAwaiter().GetResult());
    }
}
