using ClearanceCheck.Reporting.Pages;
using Scriban.Runtime;
using Scriban.Syntax;

namespace ClearanceCheck.Reporting.Tests.Pages;

public sealed class EncodingContextTests
{
    [Theory]
    [InlineData("{{ value }}")]
    [InlineData("<p title=\"{{ value }}\">{{ value }}</p>")]
    [InlineData("{{ for item in [value] }}{{ item }}{{ end }}")]
    [InlineData("{{ value + value }}")]
    [InlineData("{{ capture kept }}{{ value }}{{ end }}{{ kept }}")]
    [InlineData("{{ func show(x) }}{{ x }}{{ end }}{{ show value }}")]
    [InlineData("{{ inner.value }}")]
    [InlineData("{{ value ?? \"\" }}")]
    [InlineData("{{ if true }}{{ value }}{{ end }}")]
    [InlineData("{{ value; value }}")]
    public void No_way_of_writing_a_value_in_a_template_leaves_it_unencoded(string template)
    {
        ScriptObject view = new() { ["value"] = "<i title='\"'>&", ["inner"] = new ScriptObject { ["value"] = "<i" } };

        string page = TemplateRenderer.Render("try", template, view).Markup;

        page.ShouldNotContain("<i");
        page.ShouldContain("&");
    }

    [Fact]
    public void Only_markup_of_this_room_is_written_as_it_is() =>
        TemplateRenderer.Render("try", "{{ a }}{{ b }}", new ScriptObject { ["a"] = new RawHtml("<b>"), ["b"] = "<b>" }).Markup.ShouldBe("<b>&lt;b&gt;");

    [Theory]
    [InlineData("{{ absent }}")]
    [InlineData("{{ inner.absent }}")]
    [InlineData("{{ value | string.upcase }}")]
    [InlineData("{{ include 'page' }}")]
    [InlineData("{{ for x in absent }}{{ end }}")]
    public void A_name_that_the_view_does_not_hold_stops_the_report(string template)
    {
        ScriptObject view = new() { ["value"] = "x", ["inner"] = new ScriptObject() };

        Should.Throw<ScriptRuntimeException>(() => TemplateRenderer.Render("try", template, view));
    }

    [Fact]
    public void A_template_that_does_not_parse_is_told_by_name() =>
        Should.Throw<InvalidOperationException>(() => TemplateRenderer.Render("broken", "{{ if }", [])).Message.ShouldContain("'broken'");

    [Fact]
    public void A_long_list_is_written_whole()
    {
        ScriptObject view = new() { ["rows"] = new ScriptArray(Enumerable.Range(0, 5000).Select(i => (object)new string('x', 400))) };

        TemplateRenderer.Render("try", "{{ for row in rows }}{{ row }}{{ end }}", view).Markup.Length.ShouldBe(2_000_000);
    }
}
