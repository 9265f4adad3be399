using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Tests.Samples;
using Microsoft.Playwright;

namespace ClearanceCheck.Reporting.Tests.Browser;

public sealed class BrowserTests(BrowserFixture browser)
{
    [Theory]
    [InlineData(360)]
    [InlineData(390)]
    [InlineData(768)]
    [InlineData(1440)]
    public async Task The_page_does_not_scroll_sideways_even_with_long_words(int width)
    {
        foreach (InspectionResult result in new[] { SampleResult.Whole(), SampleResult.Shapes(), HostileResult.Of(new string('M', 10_000)) })
        {
            OpenedPage opened = await browser.Open(HtmlReport.Write(result), width);

            (await opened.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth")).ShouldBeLessThanOrEqualTo(width);
            opened.Faults.ShouldBeEmpty();
        }
    }

    [Fact]
    public async Task The_browser_reports_no_fault_and_runs_nothing_that_was_typed()
    {
        foreach (string text in HostileTexts.All.Take(16))
        {
            OpenedPage opened = await browser.Open(HtmlReport.Write(HostileResult.Of(text)), 768);

            opened.Faults.ShouldBeEmpty();
            (await opened.Page.EvaluateAsync<bool>("() => window.hit === undefined")).ShouldBeTrue();
        }
    }

    [Fact]
    public async Task The_style_is_let_in_by_the_policy_and_a_changed_one_is_not()
    {
        string html = HtmlReport.Write(SampleResult.Small());
        OpenedPage good = await browser.Open(html, 768);
        OpenedPage changed = await browser.Open(html.Replace("</style>", " </style>", StringComparison.Ordinal), 768);

        (await Display(good)).ShouldBe("flex");
        (await Display(changed)).ShouldBe("block");
        changed.Faults.ShouldNotBeEmpty();

        static Task<string> Display(OpenedPage page) => page.Page.EvaluateAsync<string>("() => getComputedStyle(document.querySelector('.verdict-board')).display");
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Text_stands_out_and_what_decides_stands_out_more(ColorScheme scheme)
    {
        foreach (InspectionResult result in new[] { SampleResult.Whole(), SampleResult.Clear() })
        {
            OpenedPage opened = await browser.Open(HtmlReport.Write(result), 768, scheme);
            await opened.Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => d.open = true)");

            string[] weak = await opened.Page.EvaluateAsync<string[]>(PageScripts.WeakContrast);

            weak.ShouldBeEmpty();
        }
    }

    [Fact]
    public async Task Dark_and_light_are_two_pages()
    {
        string html = HtmlReport.Write(SampleResult.Small());

        string light = await Ground(await browser.Open(html, 768));
        string dark = await Ground(await browser.Open(html, 768, ColorScheme.Dark));

        light.ShouldBe("rgb(255, 255, 255)");
        dark.ShouldBe("rgb(20, 23, 26)");

        static Task<string> Ground(OpenedPage page) => page.Page.EvaluateAsync<string>("() => getComputedStyle(document.body).backgroundColor");
    }

    [Theory]
    [InlineData(390)]
    [InlineData(1440)]
    public async Task Letters_are_large_enough_to_read_under_a_vehicle(int width)
    {
        OpenedPage opened = await browser.Open(HtmlReport.Write(SampleResult.Whole()), width);

        string[] small = await opened.Page.EvaluateAsync<string[]>(PageScripts.SmallText);

        small.ShouldBeEmpty();
    }

    [Theory]
    [InlineData(360)]
    [InlineData(1440)]
    public async Task Every_letter_and_label_of_a_drawing_stands_inside_its_frame(int width)
    {
        InspectionResult shapes = SampleResult.Shapes();
        foreach (InspectionResult result in new[] { SampleResult.Whole(), shapes with { Findings = [.. shapes.Findings.Select(f => f with { Verdict = Verdict.Undecided })] } })
        {
            OpenedPage opened = await browser.Open(HtmlReport.Write(result), width);

            (await opened.Page.Locator("svg.drawing").CountAsync()).ShouldBeGreaterThan(4);
            (await opened.Page.EvaluateAsync<string[]>(PageScripts.TextCutOff)).ShouldBeEmpty();
            opened.Faults.ShouldBeEmpty();
        }
    }

    [Fact]
    public async Task Links_and_openers_are_large_enough_for_a_glove()
    {
        OpenedPage opened = await browser.Open(HtmlReport.Write(SampleResult.Whole()), 390);

        string[] small = await opened.Page.EvaluateAsync<string[]>(PageScripts.SmallTargets);

        small.ShouldBeEmpty();
    }

    [Fact]
    public async Task The_checks_on_contrast_size_and_targets_find_a_bad_page()
    {
        OpenedPage opened = await browser.Open(
            "<style>body{background:#fff}p{color:#999}small{font-size:12px}</style><p>weak</p><small>small</small><a href='#x'>x</a><h1 style='color:#666'>Held</h1>", 390);

        (await opened.Page.EvaluateAsync<string[]>(PageScripts.WeakContrast)).Length.ShouldBe(2);
        (await opened.Page.EvaluateAsync<string[]>(PageScripts.SmallText)).Length.ShouldBe(1);
        (await opened.Page.EvaluateAsync<string[]>(PageScripts.SmallTargets)).Length.ShouldBe(1);
    }

    [Fact]
    public async Task The_keyboard_reaches_every_link_and_opener_in_the_order_of_the_page()
    {
        OpenedPage opened = await browser.Open(HtmlReport.Write(SampleResult.Whole()), 768);
        int wanted = await opened.Page.EvaluateAsync<int>("() => [...document.querySelectorAll('a, summary, [tabindex]')].filter(e => e.checkVisibility({contentVisibilityAuto: true})).length");
        List<double> tops = [];
        for (int i = 0; i < wanted; i++)
        {
            await opened.Page.Keyboard.PressAsync("Tab");
            tops.Add(await opened.Page.EvaluateAsync<double>("() => document.activeElement.getBoundingClientRect().top + scrollY"));
            (await opened.Page.EvaluateAsync<string>("() => getComputedStyle(document.activeElement).outlineStyle")).ShouldBe("solid");
        }

        tops.ShouldBe(tops.Order());
        tops.Distinct().Count().ShouldBeGreaterThan(10);
    }

    [Fact]
    public async Task A_link_to_a_finding_leads_to_it()
    {
        OpenedPage opened = await browser.Open(HtmlReport.Write(SampleResult.Whole()), 390);

        await opened.Page.ClickAsync(".actions a >> nth=1");

        (await opened.Page.EvaluateAsync<string>("() => document.querySelector(':target').id")).ShouldBe("brake-hose-too-short--rear-hose");
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task Printed_it_has_the_report_id_on_every_page_and_every_detail_open(string paper)
    {
        OpenedPage opened = await browser.Open(HtmlReport.Write(SampleResult.Whole()), 1024);

        byte[] pdf = await opened.Page.PdfAsync(new PagePdfOptions { Format = paper, Tagged = true, PreferCSSPageSize = false });
        string[] pages = await PdfText.Pages(pdf);

        pages.Length.ShouldBeInRange(6, 30);
        pages.ShouldAllBe(page => page.Contains("7c21f0a93be4", StringComparison.Ordinal));
        string all = string.Join('\n', pages);
        all.ShouldContain("Readings that matter most");
        all.ShouldContain("At ride height, pipe cold.");
        all.ShouldNotContain("All parts of this report");
    }

    [Fact]
    public async Task A_page_of_two_hundred_findings_opens_fast_and_stays_small()
    {
        Finding finding = SampleFindings.LineNearTailpipe();
        InspectionResult many = SampleResult.Whole() with { Findings = [.. Enumerable.Range(0, 200).Select(i => finding with { Id = $"finding-{i}" })] };
        string html = HtmlReport.Write(many);

        html.Length.ShouldBeLessThan(6_000_000);
        OpenedPage opened = await browser.Open(html, 390);
        (await opened.Page.Locator(".finding").CountAsync()).ShouldBe(200);
    }

    [Fact]
    public void A_missing_browser_is_told_with_what_to_install()
    {
        Should.Throw<InvalidOperationException>(() => Chromium.Find(_ => null)).Message.ShouldContain("apt-get install -y chromium");
        Should.Throw<InvalidOperationException>(() => Chromium.Find(name => name == "CHROMIUM" ? "/no/such/program" : null)).Message.ShouldContain("'/no/such/program'");
    }
}
