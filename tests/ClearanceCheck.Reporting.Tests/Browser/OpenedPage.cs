using Microsoft.Playwright;

namespace ClearanceCheck.Reporting.Tests.Browser;

/// <summary>A page in the browser and what went wrong in it so far.</summary>
public sealed record OpenedPage(IPage Page, IReadOnlyList<string> Faults);
