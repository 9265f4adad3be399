namespace ClearanceCheck.Cli.Tests;

/// <summary>What the README shows of a shop's rules is run word for word.</summary>
public sealed class ReadmeTests
{
    [Fact]
    public void The_shop_rules_of_the_readme_count()
    {
        using var shop = new Workshop();
        shop.Write("shop-rules/shop.yaml", Shown());

        Answer answer = shop.Run("rules", "list", "--rules", "shop-rules");

        answer.Error.ShouldBe("");
        answer.Status.ShouldBe(ExitStatus.Nothing);
        string[] lines = answer.Output.Split('\n');
        lines.Single(l => l.StartsWith("brake-line-near-exhaust ", StringComparison.Ordinal)).ShouldMatch("at least 60 mm +our-shop 1.0.0$");
        lines.Single(l => l.StartsWith("fuel-line-near-exhaust ", StringComparison.Ordinal)).ShouldMatch("warning +gap +at least 75 mm +our-shop 1.0.0$");
        shop.Run("rules", "check", "shop-rules").Error.ShouldBe("");
    }

    // The block that begins with the format, without its indent.
    private static string Shown()
    {
        string[] lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "README.md"));
        IEnumerable<string> block = lines.SkipWhile(l => l != "    format: 1").TakeWhile(l => l.StartsWith("    ", StringComparison.Ordinal)).Select(l => l[4..]);
        string text = string.Join('\n', block) + "\n";
        text.Split('\n').Length.ShouldBe(14);
        return text;
    }
}
