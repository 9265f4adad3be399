using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Pages;

namespace ClearanceCheck.Reporting;

/// <summary>The hazard report: one HTML file that needs neither network nor script.</summary>
public static class HtmlReport
{
    /// <summary>Writes the whole page. The same result gives the same text.</summary>
    /// <exception cref="ArgumentException">The result holds a number that is not finite, or one coordinate twice in a pose.</exception>
    public static string Write(InspectionResult result) => Write(result, SectionCatalogue.All);

    /// <summary>Writes the page with the sections given; the first carries the decision.</summary>
    /// <exception cref="ArgumentException">The result holds a number that is not finite, or one coordinate twice in a pose.</exception>
    public static string Write(InspectionResult result, ImmutableArray<ReportSection> sections) => ReportPage.Write(result, sections);

    /// <summary>The <c>findings.json</c> that a report carries in itself, so that an old report can be compared with a new one; null when it carries none.</summary>
    public static string? FindCarriedFindings(string html)
    {
        int start = html.IndexOf(CarriedStart, StringComparison.Ordinal);
        if (start < 0) return null;
        start += CarriedStart.Length;
        int end = html.IndexOf(CarriedEnd, start, StringComparison.Ordinal);
        return end < 0 ? null : System.Net.WebUtility.HtmlDecode(html[start..end]);
    }

    private const string CarriedStart = "<template class=\"findings-json\">";
    private const string CarriedEnd = "</template>";
}
