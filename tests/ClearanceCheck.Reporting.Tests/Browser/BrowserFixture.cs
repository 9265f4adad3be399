using ClearanceCheck.Reporting.Tests.Browser;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(BrowserFixture))]

namespace ClearanceCheck.Reporting.Tests.Browser;

/// <summary>One Chromium for all browser tests, started on first use.</summary>
public sealed class BrowserFixture : IAsyncLifetime
{
    private static readonly string[] Arguments =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
    ];

    private readonly string folder = Directory.CreateTempSubdirectory("report-pages-").FullName;
    private IPlaywright? playwright;
    private IBrowser? browser;

    public async ValueTask InitializeAsync()
    {
        string program = Chromium.Find(Environment.GetEnvironmentVariable);
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = program, Args = Arguments });
    }

    /// <summary>Opens a page from a file of its own, as a reader does; faults of the console and of the page's policy are collected.</summary>
    public async Task<OpenedPage> Open(string html, int width, ColorScheme scheme = ColorScheme.Light)
    {
        string file = Path.Combine(folder, Guid.NewGuid().ToString("N") + ".html");
        await File.WriteAllTextAsync(file, html);
        IBrowserContext context = await browser!.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = width, Height = 900 },
            ColorScheme = scheme,
        });
        IPage page = await context.NewPageAsync();
        List<string> faults = [];
        page.Console += (_, message) => faults.Add(message.Text);
        page.PageError += (_, message) => faults.Add(message);
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith("file:", StringComparison.Ordinal)) faults.Add("fetched " + request.Url);
        };
        await page.GotoAsync(new Uri(file).AbsoluteUri);
        return new OpenedPage(page, faults);
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null) await browser.DisposeAsync();
        playwright?.Dispose();
        Directory.Delete(folder, recursive: true);
    }
}
