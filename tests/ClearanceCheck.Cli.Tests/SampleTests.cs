namespace ClearanceCheck.Cli.Tests;

/// <summary>The sample report in the repository is what the program writes today.</summary>
/// <remarks>Renewed by one command, which DEVELOPERS.md gives; whoever renews it reads what changed.</remarks>
public sealed class SampleTests
{
    [Theory]
    [InlineData("report.html")]
    [InlineData("findings.json")]
    public void The_sample_of_the_demo_is_what_the_program_writes(string name)
    {
        using Workshop shop = Workshop.WithFixture();

        shop.Run("inspect", "inspection.yaml", "--out", "out");

        string[] sample = Lines(Path.Combine(AppContext.BaseDirectory, "samples", "one-line", name)), now = Lines(shop.At("out/" + name));
        int first = Enumerable.Range(0, Math.Max(sample.Length, now.Length)).FirstOrDefault(i => i >= sample.Length || i >= now.Length || sample[i] != now[i], -1);
        (first < 0 ? "the same" : $"line {first + 1} of {name} differs: {now.ElementAtOrDefault(first)}").ShouldBe("the same");
    }

    private static string[] Lines(string file) => File.ReadAllText(file).ReplaceLineEndings("\n").Split('\n');
}
