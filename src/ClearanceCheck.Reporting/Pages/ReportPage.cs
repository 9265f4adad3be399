using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Drawings;
using ClearanceCheck.Reporting.Wording;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Pages;

/// <summary>Puts the sections into one page that carries its style and its own content policy.</summary>
internal static class ReportPage
{
    public static string Write(InspectionResult result, ImmutableArray<ReportSection> sections)
    {
        ReportContext context = new(result, sections.Select(s => s.Name));
        ScriptArray rendered = [.. sections.Select(s => Render(s, context)).OfType<ScriptObject>()];
        string style = EmbeddedText.Read("reports/report.css") + string.Concat(sections.Select(s => s.Style));
        ScriptObject view = new()
        {
            ["policy"] = Policy(style),
            ["title"] = $"{ReportWords.Decision(result.Decision.Kind)} - {VisibleText.Typed(result.Vehicle.Name)}",
            ["report_id"] = VisibleText.Typed(result.Provenance.ReportId),
            ["vehicle"] = VisibleText.Typed(result.Vehicle.Name),
            ["style"] = new RawHtml(style),
            ["patterns"] = SvgPatterns.Shared,
            ["sections"] = rendered,
            ["findings_json"] = new RawHtml(System.Net.WebUtility.HtmlEncode(FindingsJson.Write(result))),
        };
        return TemplateRenderer.Render("page", EmbeddedText.Template("page"), view).Markup;
    }

    private static ScriptObject? Render(ReportSection section, ReportContext context) => section.View(context) is { } view
        ? new ScriptObject
        {
            ["anchor"] = ReportContext.SectionAnchor(section.Name),
            ["name"] = section.Name,
            ["title"] = section.Title,
            ["html"] = TemplateRenderer.Render(section.Name, section.Template, view),
        }
        : null;

    /// <summary>Nothing is fetched and nothing runs; the one style block is let in by its hash.</summary>
    private static string Policy(string style)
    {
        string hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)));
        return $"default-src 'none'; style-src 'sha256-{hash}'; base-uri 'none'; form-action 'none'";
    }
}
