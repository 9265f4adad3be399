using ClearanceCheck.Reporting.Wording;

namespace ClearanceCheck.Reporting.Tests.Wording;

public sealed class VisibleTextTests
{
    [Theory]
    [InlineData(null, "")]
    [InlineData("rear line", "rear line")]
    [InlineData("Zündkerze 車 \U0001F6FB", "Zündkerze 車 \U0001F6FB")]
    [InlineData("a\u202Eb", "a[U+202E]b")]
    [InlineData("\u001B[31m", "[U+001B][31m")]
    [InlineData("one\r\ntwo\tthree", "one two three")]
    [InlineData("a\u200Db\u00AD", "a[U+200D]b[U+00AD]")]
    [InlineData("\U000E0041", "[U+E0041]")]
    public void What_steers_or_hides_is_made_visible(string? typed, string shown) => VisibleText.Typed(typed).ShouldBe(shown);

    [Fact]
    public void Half_a_character_is_shown_as_its_number() => VisibleText.Typed("\uD800x").ShouldBe("[U+D800]x");

    [Fact]
    public void A_long_name_is_cut_and_says_so()
    {
        VisibleText.Typed(new string('x', 200)).ShouldBe(new string('x', 200));
        VisibleText.Typed(new string('x', 201)).ShouldBe(new string('x', 200) + " ... (cut: 201 characters)");
        VisibleText.Sentence(new string('x', 1500)).Length.ShouldBe(1500);
    }
}
