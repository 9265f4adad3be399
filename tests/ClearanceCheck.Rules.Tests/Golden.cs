namespace ClearanceCheck.Rules.Tests;

/// <summary>Compares everything that is said about rule files with what should be said, word by word, under two cultures.</summary>
internal static class Golden
{
    public static void Check(string text, string expected) => Check(expected, Libraries.File("shop.yaml", text));

    public static void Check(string first, string second, string expected) =>
        Check(expected, Libraries.File("a.yaml", first), Libraries.File("b.yaml", second));

    private static void Check(string expected, params RuleFile[] files)
    {
        foreach (string culture in new[] { "", "de-DE" }) Cultures.Under(culture, () => Libraries.Said(files)).ShouldBe(expected.ReplaceLineEndings("\n"));
    }
}
