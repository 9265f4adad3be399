using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Tests.Samples;

namespace ClearanceCheck.Reporting.Tests.Pages;

public sealed class AddedSectionTests
{
    [Fact]
    public void A_new_section_is_a_view_a_template_and_a_style_and_touches_nothing_else()
    {
        IDocument page = new HtmlParser().ParseDocument(HtmlReport.Write(SampleResult.Small(), [.. SectionCatalogue.All, new AddedSection()]));

        page.QuerySelector("#section-torque .torque-line")!.TextContent.ShouldBe("Harrow Ridgeback 4x4, 1997");
        page.QuerySelector("nav")!.TextContent.ShouldContain("Torque");
        page.QuerySelector("style")!.TextContent.ShouldContain(".torque-line");
    }

    [Fact]
    public void A_section_with_nothing_to_say_is_left_out_of_the_page_and_the_list()
    {
        IDocument page = new HtmlParser().ParseDocument(HtmlReport.Write(SampleResult.Small()));

        page.GetElementById("section-reach").ShouldBeNull();
        page.QuerySelector("nav")!.TextContent.ShouldNotContain("How far it travels");
    }
}
