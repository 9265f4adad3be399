using AngleSharp.Dom;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Tests.Samples;
using ClearanceCheck.Reporting.Wording;

namespace ClearanceCheck.Reporting.Tests;

public sealed class HostileTextTests
{
    public static TheoryData<int> Every => [.. Enumerable.Range(0, HostileTexts.All.Length)];

    [Theory]
    [MemberData(nameof(Every))]
    public void A_hostile_text_in_every_field_stays_text(int index)
    {
        string text = HostileTexts.All[index];

        IDocument page = HtmlReportTests.Page(HostileResult.Of(text));
        IDocument harmless = HtmlReportTests.Page(HostileResult.Of("harmless"));

        // The same elements in the same order: the text made none and closed none. Empty texts leave their lines out.
        if (!string.IsNullOrWhiteSpace(text)) Skeleton(page).ShouldBe(Skeleton(harmless));
        page.QuerySelectorAll("script, iframe, img, base").ShouldBeEmpty();
        page.All.Select(e => e.Id).Where(id => !string.IsNullOrEmpty(id)).ShouldBeUnique();
        HtmlReport.FindCarriedFindings(HtmlReport.Write(HostileResult.Of(text))).ShouldBe(FindingsJson.Write(HostileResult.Of(text)));
    }

    [Theory]
    [MemberData(nameof(Every))]
    public void A_hostile_name_is_shown_as_it_was_typed_with_what_is_hidden_made_visible(int index)
    {
        string text = HostileTexts.All[index];

        string shown = HtmlReportTests.Page(HostileResult.Of(text)).QuerySelector("#section-decision .which bdi")!.TextContent;

        shown.ShouldBe(VisibleText.Typed(text));
        shown.Length.ShouldBeLessThan(200 + (200 * "[U+E0041]".Length));
    }

    [Theory]
    [MemberData(nameof(Every))]
    public void A_hostile_text_steers_no_terminal(int index)
    {
        string summary = SummaryText.Write(HostileResult.Of(HostileTexts.All[index]), colour: false);

        summary.Where(c => char.IsControl(c) && c != '\n').ShouldBeEmpty();
        summary.ShouldNotContain('\u202E');
    }

    [Theory]
    [MemberData(nameof(Every))]
    public void A_hostile_text_goes_through_the_data_file_and_back(int index)
    {
        string text = HostileTexts.All[index];

        string json = FindingsJson.Write(HostileResult.Of(text));
        InspectionResult back = FindingsJson.Read(json);

        // A lone surrogate is no text in any encoding: it comes back as the replacement character.
        if (text.EnumerateRunes().All(r => r.Value != 0xFFFD)) back.Vehicle.Name.ShouldBe(text);
        FindingsJson.Write(back).ShouldBe(json);
        json.ShouldNotContain('<');
    }

    private static string Skeleton(IDocument page) => string.Join(' ', page.All.Select(e => e.LocalName + "." + e.ClassName));
}
