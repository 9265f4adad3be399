using System.Security.Cryptography;
using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Tests.Samples;

namespace ClearanceCheck.Reporting.Tests;

public sealed class HtmlReportTests
{
    [Fact]
    public void The_same_result_gives_the_same_page() => HtmlReport.Write(SampleResult.Whole()).ShouldBe(HtmlReport.Write(SampleResult.Whole()));

    [Fact]
    public void The_decision_stands_before_everything_else()
    {
        IDocument page = Page(SampleResult.Whole());

        page.QuerySelector("main")!.FirstElementChild!.Id.ShouldBe("section-decision");
        page.QuerySelectorAll("h1, h2, h3, h4")[0].TextContent.ShouldBe("Held");
        page.Title.ShouldBe("Held - Harrow Ridgeback 4x4, 1997");
    }

    [Theory]
    [InlineData(DecisionKind.Held, "Held", "Do not drive")]
    [InlineData(DecisionKind.Conditions, "First drive with conditions", "first gate signed")]
    [InlineData(DecisionKind.Clear, "Nothing stands against a first slow drive", "Void after any change")]
    [InlineData(DecisionKind.None, "No decision: nothing found against it in the part inspected", "cannot say that it may drive")]
    public void Each_decision_has_its_words_and_says_what_they_mean(DecisionKind kind, string words, string meaning)
    {
        IDocument page = Page(SampleResult.Whole() with { Decision = new DecisionCard(kind, [], []) });

        page.QuerySelector("h1")!.TextContent.ShouldBe(words);
        page.QuerySelector(".meaning")!.TextContent.ShouldContain(meaning);
    }

    [Fact]
    public void At_most_seven_lines_say_what_to_do_and_the_rest_is_counted()
    {
        DecisionCard decision = new(DecisionKind.Held, [], [.. Enumerable.Range(1, 9).Select(i => new ActionLine($"line {i}", null))]);

        IDocument page = Page(SampleResult.Whole() with { Decision = decision });

        page.QuerySelectorAll(".actions li").Length.ShouldBe(7);
        page.QuerySelector("#section-decision")!.TextContent.ShouldContain("And 2 more");
    }

    [Theory]
    [InlineData(Verdict.Fails)]
    [InlineData(Verdict.Conforms)]
    public void What_was_found_by_hand_stands_beside_the_hand_check_as_text(Verdict verdict)
    {
        const string Said = "By hand 17 mm (11/16 in) was found, by <b>R. A.</b> & son; 18.2 mm was expected.";
        InspectionResult result = SampleResult.Small();

        IDocument page = Page(result with { Findings = [result.Findings[0] with { Verdict = verdict, Checked = Said }] });

        IElement told = page.QuerySelectorAll(".checked").ShouldHaveSingleItem();
        told.TextContent.ShouldBe("Checked: " + Said);
        told.QuerySelectorAll("b").ShouldBeEmpty();
        told.ParentElement!.ClassName.ShouldBe(verdict == Verdict.Fails ? "hand-check" : "compact-body");
        Page(result with { Findings = [result.Findings[0] with { Verdict = verdict, Checked = null }] }).QuerySelectorAll(".checked").ShouldBeEmpty();
    }

    [Fact]
    public void Headings_go_down_one_step_at_a_time()
    {
        int last = 0;
        foreach (IElement heading in Page(SampleResult.Whole()).QuerySelectorAll("h1, h2, h3, h4"))
        {
            int level = heading.LocalName[1] - '0';
            level.ShouldBeLessThanOrEqualTo(last + 1, heading.TextContent);
            last = level;
        }
    }

    [Fact]
    public void There_is_one_main_one_first_heading_and_every_section_is_named()
    {
        IDocument page = Page(SampleResult.Whole());

        page.QuerySelectorAll("main").Length.ShouldBe(1);
        page.QuerySelectorAll("h1").Length.ShouldBe(1);
        page.DocumentElement.GetAttribute("lang").ShouldBe("en");
        IHtmlCollection<IElement> sections = page.QuerySelectorAll("section");
        sections.Length.ShouldBe(15);
        foreach (IElement section in sections) page.GetElementById(section.GetAttribute("aria-labelledby")!).ShouldNotBeNull(section.Id);
        foreach (IElement picture in page.QuerySelectorAll("svg:not([aria-hidden]):not(svg svg)")) picture.GetAttribute("aria-label").ShouldNotBeNullOrWhiteSpace();
    }

    [Fact]
    public void Nothing_runs_and_nothing_is_fetched()
    {
        IDocument page = Page(SampleResult.Whole());

        page.QuerySelectorAll("script, link, iframe, object, embed, img, form, input, base").ShouldBeEmpty();
        page.All.Where(e => e.HasAttribute("style") || e.Attributes.Any(a => a.Name.StartsWith("on", StringComparison.Ordinal))).ShouldBeEmpty();
        page.All.SelectMany(e => e.Attributes).Where(a => a.Name is "href" or "src").ShouldAllBe(a => a.Value.StartsWith('#'));
        HtmlReport.Write(SampleResult.Whole()).ShouldNotContain("http://");
    }

    [Fact]
    public void The_policy_lets_in_the_one_style_block_by_its_hash()
    {
        IDocument page = Page(SampleResult.Whole());
        string style = page.QuerySelectorAll("style").ShouldHaveSingleItem().TextContent;

        string policy = page.QuerySelector("meta[http-equiv=Content-Security-Policy]")!.GetAttribute("content")!;

        policy.ShouldStartWith("default-src 'none'; ");
        policy.ShouldContain($"style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)))}'");
    }

    [Fact]
    public void Ids_are_unique_and_each_finding_is_linked_by_its_own_id()
    {
        InspectionResult result = SampleResult.Whole();
        IDocument page = Page(result);

        string[] ids = [.. page.All.Where(e => e.HasAttribute("id")).Select(e => e.Id!)];
        ids.ShouldBeUnique();
        page.QuerySelectorAll(".finding, .compact details").Select(e => e.Id).ShouldBe(result.Findings.Select(f => f.Id));
        foreach (IElement link in page.QuerySelectorAll("a")) ids.ShouldContain(link.GetAttribute("href")![1..]);
    }

    [Fact]
    public void A_finding_that_takes_the_id_of_a_section_or_of_another_finding_gets_a_number()
    {
        Finding finding = SampleFindings.LineNearTailpipe();

        IDocument page = Page(SampleResult.Small() with { Findings = [finding with { Id = "section-decision" }, finding, finding, finding with { Id = "a b" }] });

        page.QuerySelectorAll(".finding").Select(e => e.Id).ShouldBe(["section-decision-2", finding.Id, finding.Id + "-2", "a-b"]);
    }

    [Fact]
    public void A_finding_says_what_fails_by_how_much_where_and_what_to_do()
    {
        IElement finding = Page(SampleResult.Whole()).GetElementById("brake-line-near-exhaust--rear-line--tailpipe")!;

        string text = Plain(finding);
        foreach (string wanted in new[]
        {
            "DANGER", "fails", "rear brake line", "tailpipe", "If nothing is done: The fluid boils", "Do: Move the clip", "18 mm (11/16 in)", "give or take 4 mm (3/16 in)",
            "at least 50 mm (1-15/16 in)", "Never less than 17 mm (5/8 in)", "checked:", "hub to fender rear left 432 mm", "travel ended there by: rear left bump stop",
            "Seen from the left", "Wheels hanging, then at ride height", "Found:", "not measured", "Common practice, no source", "gap, hose slack", "61 % of the doubt", "Other places almost as bad 20 mm",
        })
        {
            text.ShouldContain(wanted);
        }

        finding.QuerySelectorAll("svg.drawing").Length.ShouldBe(1);
        finding.QuerySelectorAll("svg.plot").Length.ShouldBe(1);
    }

    [Theory]
    [InlineData("tire-near-brake-line--rear-left-tire--rear-line", "too close to call: measure the rear left tire's sidewall within 2 mm")]
    [InlineData("brake-hose-too-short--front-left-hose", "could not be checked: the free length of the front left brake hose is missing")]
    public void A_finding_without_a_clear_answer_says_what_would_give_it(string id, string sentence) =>
        Plain(Page(SampleResult.Whole()).GetElementById(id)!).ShouldContain(sentence);

    [Fact]
    public void An_overlap_is_told_in_words_and_nobody_is_asked_to_force_it()
    {
        IElement finding = Page(SampleResult.Shapes()).QuerySelector(".finding")!;

        string text = Plain(finding);
        foreach (string wanted in new[]
        {
            "Worst found overlap by at least 12 mm (7/16 in)", "Overlap never deeper than 13 mm (9/16 in)", "never force them", "inner fender, overlap by at least 12 mm.", "Below zero the two overlap",
        })
        {
            text.ShouldContain(wanted);
        }

        text.ShouldNotContain("-12 mm");
        text.ShouldNotContain("Set the pose above");
        foreach (IElement described in finding.QuerySelectorAll("[aria-label]")) described.GetAttribute("aria-label")!.ShouldNotContain("-12 mm");
    }

    [Fact]
    public void A_contact_that_is_meant_has_a_limit_in_words()
    {
        IDocument page = Page(SampleResult.Shapes());

        Plain(page.GetElementById("meant")!).ShouldContain("overlap by at least 1.6 mm (0.062 in) give or take 0.1 mm (under 1/16 in), limit overlap of at most 2 mm (0.079 in)");
        Plain(page.QuerySelector("[id^=meant-contact]")!).ShouldContain("Worst found overlap by at least 2.3 mm");
        Plain(page.QuerySelector("[id^=meant-contact]")!).ShouldContain("limit overlap 2 mm");
    }

    [Fact]
    public void What_was_found_about_shields_stands_with_an_open_finding_and_with_one_that_conforms()
    {
        Finding finding = SampleFindings.LumpNearPipe();
        string said = finding.Shields.ShouldHaveSingleItem();

        IDocument page = Page(SampleResult.Small() with { Findings = [finding, finding with { Id = "met", Verdict = Verdict.Conforms }] });

        Plain(page.GetElementById(finding.Id)!).ShouldContain("Heat shields " + said);
        Plain(page.GetElementById("met")!).ShouldContain(said);
        Page(SampleResult.Small()).QuerySelectorAll(".shields").ShouldBeEmpty();
    }

    [Fact]
    public void What_could_not_be_checked_and_what_was_not_inspected_stand_before_the_findings()
    {
        IDocument page = Page(SampleResult.Whole() with { Library = SampleResult.Whole().Library with { NotLoaded = ["rule x: no unit in line 4"] } });
        IElement open = page.GetElementById("section-unchecked")!;

        Plain(open).ShouldContain("front left brake hose");
        Plain(open).ShouldContain("rear driveshaft");
        Plain(open).ShouldContain("rule x: no unit in line 4");
        open.CompareDocumentPosition(page.GetElementById("section-findings")!).HasFlag(DocumentPositions.Following).ShouldBeTrue();
    }

    [Fact]
    public void A_conforming_line_shows_value_limit_and_pose_before_it_is_opened()
    {
        string summary = Plain(Page(SampleResult.Whole()).QuerySelector("#fuel-line-near-exhaust--fuel-line--tailpipe > summary")!);

        summary.ShouldContain("62 mm (2-7/16 in) give or take 3 mm");
        summary.ShouldContain("limit at least 25 mm (1 in)");
        summary.ShouldContain("hub to fender rear left 432 mm");
    }

    [Fact]
    public void Where_the_wheels_can_go_is_told_row_by_row_with_what_ends_it()
    {
        IElement section = Page(SampleResult.Whole()).GetElementById("section-travel")!;
        string[] rows = [.. section.QuerySelectorAll("table")[0].QuerySelectorAll("tbody tr").Select(Plain)];

        Plain(section).ShouldContain("at ride height the axle already stands 4 mm (3/16 in) beyond Left rear shock at full length");
        rows[0].ShouldBe("Ride height 640 mm 25-3/16 in ride height ride height lies 4 mm (3/16 in) beyond Left rear shock at full length");
        rows[1].ShouldBe("Both wheels hang 747 mm 29-7/16 in 107 mm down 105 mm down Left rear shock at full length no stop in the file: the travel looked at ends here");
        rows[2].ShouldBe("Both wheels up not known not known could not be worked out");
        string[] ways = [.. section.QuerySelectorAll(".rows > li").Select(Plain)];
        ways[0].ShouldBe("Both wheels down Left rear shock at full length: already 4 mm (3/16 in) beyond it at ride height Right rear shock at full length: 105 mm (4-1/8 in)");
        ways[1].ShouldBe("Both wheels up No stop within the travel looked at, which ends at 160 mm (6-5/16 in).");
        ways.ShouldNotContain(w => w.StartsWith("Left wheel down alone", StringComparison.Ordinal));
        // The left wheel goes up further in some pose than in any row; the right one has the table's own ends.
        ways.Where(w => w.Contains("farthest in any pose", StringComparison.Ordinal)).ShouldHaveSingleItem().ShouldBe(
            "Rear left wheel travel, farthest in any pose 112 mm down: rear shock fully out 88 mm up: rear bump stop");
    }

    [Fact]
    public void A_steered_axle_has_a_column_for_its_steering_and_angles_that_are_steered()
    {
        IElement section = Page(SampleResult.Whole()).GetElementById("section-travel")!;
        IElement[] tables = [.. section.QuerySelectorAll("table")];

        // Rear: poses, angles, lengths. Front: the same three.
        tables.Length.ShouldBe(6);
        Plain(tables[0]).ShouldNotContain("Steering");
        Plain(tables[1]).ShouldNotContain("steer angle");
        Plain(tables[3]).ShouldContain("Ride height, steered hard left ride height ride height 31 deg left steering lock left");
        Plain(tables[4]).ShouldContain("Left wheel, steer angle, deg Ride height, steered hard left 31.5");
        Plain(tables[5]).ShouldContain("812 5.0 - 0.0");
        Plain(tables[5]).ShouldContain("front axle: not measured, no point ahead of it in the file, deg");
        foreach (IElement table in tables)
        {
            int columns = table.QuerySelectorAll("thead th").Length;
            table.QuerySelectorAll("tbody tr").ShouldAllBe(row => row.Children.Length == columns);
            table.ParentElement!.ClassName.ShouldBe("table-frame");
        }
    }

    [Fact]
    public void The_word_of_release_stands_only_at_the_signature()
    {
        foreach (InspectionResult result in new[] { SampleResult.Whole(), SampleResult.Clear() })
        {
            IDocument page = Page(result);
            IElement signature = page.QuerySelector(".signature")!;
            Plain(signature).ShouldContain("not released: not signed");
            signature.Remove();
            page.Body!.TextContent.ToUpperInvariant().ShouldNotContain("RELEASED");
        }
    }

    [Theory]
    [InlineData("certified")]
    [InlineData("expanded uncertainty")]
    [InlineData("residual")]
    public void A_word_that_has_no_place_in_a_report_is_not_in_it(string word) =>
        Page(SampleResult.Whole()).Body!.TextContent.ShouldNotContain(word, Case.Insensitive);

    [Fact]
    public void The_page_carries_its_own_findings()
    {
        InspectionResult result = SampleResult.Whole();

        HtmlReport.FindCarriedFindings(HtmlReport.Write(result)).ShouldBe(FindingsJson.Write(result));
        HtmlReport.FindCarriedFindings("<p>another page</p>").ShouldBeNull();
    }

    [Fact]
    public void A_number_that_is_not_finite_stops_the_report()
    {
        Finding finding = SampleFindings.LineNearTailpipe();

        InspectionResult broken = SampleResult.Small() with { Findings = [finding with { Evidence = finding.Evidence! with { Value = double.NaN } }] };

        Should.Throw<ArgumentException>(() => HtmlReport.Write(broken));
        Should.Throw<ArgumentException>(() => FindingsJson.Write(broken)).Message.ShouldContain("'value'");
    }

    internal static IDocument Page(InspectionResult result) => new HtmlParser().ParseDocument(HtmlReport.Write(result));

    /// <summary>The element's text with every run of white space as one space.</summary>
    internal static string Plain(IElement element) =>
        string.Join(' ', string.Join(' ', element.Descendants<IText>().Select(t => t.Data)).Split([' ', '\n', '\t', '\u00a0'], StringSplitOptions.RemoveEmptyEntries)).Replace(" :", ":", StringComparison.Ordinal);
}
