using System.Text.RegularExpressions;
using ClearanceCheck.Reporting.Pages;

namespace ClearanceCheck.Reporting.Tests.Pages;

public sealed partial class TemplateTests
{
    public static TheoryData<string> Names => [.. SectionCatalogue.All.Select(s => s.Name).Append("page")];

    [Theory]
    [MemberData(nameof(Names))]
    public void Values_inside_a_tag_stand_in_quotes(string name)
    {
        // Encoding makes a value safe in text and in quotes, nowhere else in a tag.
        string template = EmbeddedText.Template(name);

        foreach (Match tag in Tag().Matches(template)) QuotedValue().Replace(tag.Value, "").ShouldNotContain("{{", customMessage: tag.Value);
    }

    [Theory]
    [InlineData("<p title={{ x }}>", false)]
    [InlineData("<p {{ x }}>", false)]
    [InlineData("<p title=\"{{ x }}\">{{ y }}</p>", true)]
    public void The_check_on_tags_knows_a_bare_value(string template, bool isSafe) =>
        Tag().Matches(template).All(tag => !QuotedValue().Replace(tag.Value, "").Contains("{{", StringComparison.Ordinal)).ShouldBe(isSafe);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_template_holds_no_style_attribute_no_handler_and_no_script(string name) =>
        EmbeddedText.Template(name).ShouldNotMatch(@"(?i)\sstyle\s*=|\son\w+\s*=|<script");

    [Fact]
    public void Every_class_that_a_template_uses_for_looks_is_plain()
    {
        string css = EmbeddedText.Read("reports/report.css");

        css.ShouldNotContain("@import");
        css.ShouldNotMatch(@"url\((?!#)");
        css.ShouldNotContain("</");
    }

    [Fact]
    public void A_text_that_the_program_does_not_carry_is_refused_by_name() =>
        Should.Throw<ArgumentException>(() => EmbeddedText.Template("absent")).Message.ShouldContain("reports/absent.sbn-html");

    [GeneratedRegex("<[a-zA-Z][^<>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex("\"[^\"]*\"")]
    private static partial Regex QuotedValue();
}
