using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Reporting.Tests.Samples;

namespace ClearanceCheck.Reporting.Tests;

/// <summary>The printable checklist: a box a line, open ones empty, answered ones with initials; and the gates made from it.</summary>
public sealed class ChecklistSectionTests
{
    private static readonly Lazy<IDocument> Page = new(() => new HtmlParser().ParseDocument(HtmlReport.Write(SampleResult.Whole())));

    [Fact]
    public void Every_item_pivot_and_expectation_has_a_box()
    {
        RecordCard record = SampleRecord.Whole();

        Lines().Count.ShouldBe(record.Items.Length + record.Pivots.Length + record.Coverage.Length);
        Lines().ShouldAllBe(l => l.QuerySelectorAll(".tick").Length == 1);
    }

    [Theory]
    [InlineData("Wheel nuts tightened", "ticked box", "115 Nm, painted, R.A.")]
    [InlineData("Brakes bled", "box marked as not right", "R.A., Spongy: bled once, to be bled again")]
    [InlineData("Local law looked up", "empty tick box", "")]
    [InlineData("Headlamps aimed", "ticked box", "None fitted")]
    public void A_box_says_what_was_answered(string title, string box, string answer)
    {
        IElement line = Lines().Single(l => l.TextContent.Contains(title, StringComparison.Ordinal));

        line.QuerySelector(".tick")!.GetAttribute("aria-label").ShouldBe(box);
        (line.QuerySelector("bdi")?.TextContent ?? "").ShouldBe(answer);
    }

    [Fact]
    public void Each_gate_asks_for_what_is_open_on_its_own_side_of_the_drive()
    {
        string[] gates = [.. Page.Value.QuerySelectorAll(".gate").Select(g => g.TextContent)];

        gates.Length.ShouldBe(2);
        gates[0].ShouldContain("Brakes bled");
        gates[0].ShouldContain("Tightening audit closed");
        gates[0].ShouldContain("Front shaft out");
        gates[0].ShouldNotContain("Wheel nuts");
        gates[1].ShouldContain("Wheel nuts again (km or mi)");
        gates[1].ShouldContain("Tightened again at ride height: rear axle, track bar axle");
        gates[1].ShouldNotContain("Brakes bled");
    }

    [Fact]
    public void Released_stands_in_the_signature_block_alone()
    {
        IDocument page = new HtmlParser().ParseDocument(HtmlReport.Write(SampleResult.Clear()));

        foreach (IElement place in page.All.Where(e => e.Children.Length == 0 && e.TextContent.Contains("RELEASED", StringComparison.Ordinal)))
            place.Closest(".signature").ShouldNotBeNull();
        page.QuerySelector(".signature")!.TextContent.ShouldContain("not released: not signed");
    }

    [Fact]
    public void A_result_without_a_record_has_no_checklist() =>
        HtmlReport.Write(SampleResult.Whole() with { Record = RecordCard.Empty }).ShouldNotContain("section-checklist-heading");

    [Fact]
    public void The_record_survives_a_round_trip_as_json()
    {
        InspectionResult whole = SampleResult.Whole();

        string again = FindingsJson.Write(FindingsJson.Read(FindingsJson.Write(whole)));

        again.ShouldBe(FindingsJson.Write(whole));
        again.ShouldContain("\"not-applicable\"");
    }

    private static IHtmlCollection<IElement> Lines() => Page.Value.QuerySelectorAll(".checklines > li");
}
