namespace ClearanceCheck.House.Tests;

public sealed class TextTests
{
    private static readonly string[] Pictures = [".png", ".jpg", ".ico", ".woff2"];

    // Tests of how odd characters are read or shown need them as they are.
    private static readonly string[] TestsOfTexts = ["tests/ClearanceCheck.Units.Tests/", "tests/ClearanceCheck.Documents.Tests/", "tests/ClearanceCheck.Reporting.Tests/", "tests/ClearanceCheck.Rules.Tests/"];

    private static IEnumerable<string> Texts => Repository.Files.Where(f => !Pictures.Contains(Path.GetExtension(f)));

    [Fact]
    public void The_tree_is_read()
    {
        Repository.Files.ShouldContain("Directory.Packages.props");
        Repository.Files.ShouldContain("src/ClearanceCheck.Units/Length.cs");
        Repository.Files.ShouldNotContain(f => f.Contains("/obj/", StringComparison.Ordinal));
    }

    [Fact]
    public void No_file_names_a_path_of_a_machine() => Texts.SelectMany(f => TextRules.MachinePaths(f, Repository.Read(f))).ShouldBeEmpty();

    [Fact]
    public void No_file_names_the_address_of_a_registry() => Texts.SelectMany(f => TextRules.Registries(f, Repository.Read(f))).ShouldBeEmpty();

    [Fact]
    public void No_file_below_src_is_long() =>
        Texts.Where(f => f.StartsWith("src/", StringComparison.Ordinal) && TextRules.IsTooLong(Repository.Read(f))).ShouldBeEmpty();

    [Fact]
    public void Source_is_plain_ASCII_but_for_tests_of_texts() =>
        Texts.Where(f => f.EndsWith(".cs", StringComparison.Ordinal) && !TestsOfTexts.Any(t => f.StartsWith(t, StringComparison.Ordinal)))
            .SelectMany(f => TextRules.OtherCharacters(f, Repository.Read(f)))
            .ShouldBeEmpty();

    [Theory]
    [InlineData("home", "x/a.txt")]
    [InlineData("root", "x")]
    [InlineData("tmp", "x")]
    [InlineData("Users", "x")]
    public void A_path_of_a_machine_is_found(string top, string rest)
    {
        TextRules.MachinePaths("a.cs", $"one\n\"/{top}/{rest}\"").Single().ShouldStartWith("a.cs:2:");
        TextRules.MachinePaths("a.cs", $"see docs/{top}/{rest}").ShouldBeEmpty();
    }

    [Fact]
    public void A_path_of_another_system_is_found() => TextRules.MachinePaths("a.cs", @"C:\" + @"Users\x").ShouldNotBeEmpty();

    [Theory]
    [InlineData("https://api.nuget.", "org/v3/index.json")]
    [InlineData("https://registry.", "npm" + "js.example")]
    public void An_address_of_a_registry_is_found(string start, string end) => TextRules.Registries("a.json", start + end).ShouldNotBeEmpty();

    [Fact]
    public void A_character_outside_ASCII_is_found()
    {
        TextRules.OtherCharacters("src/ClearanceCheck.Geometry/A.cs", "// 5 \u00b0").Count().ShouldBe(1);
        TextRules.OtherCharacters("src/ClearanceCheck.Units/A.cs", "// 5 \u00b0").ShouldBeEmpty();
        TextRules.OtherCharacters("src/ClearanceCheck.Units/A.cs", "// \u2013").Count().ShouldBe(1);
    }

    [Fact]
    public void A_long_file_is_found()
    {
        TextRules.IsTooLong(string.Concat(Enumerable.Repeat("x\n", TextRules.MostLines + 1))).ShouldBeTrue();
        TextRules.IsTooLong(string.Concat(Enumerable.Repeat("x\n", TextRules.MostLines))).ShouldBeFalse();
    }
}
