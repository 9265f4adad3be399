using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Pages;

/// <summary>One section of the report: a view, a template, a style block.</summary>
/// <remarks>
/// A new section is a class like those in <c>Sections</c>, a template <c>reports/NAME.sbn-html</c>, a block in <c>reports/report.css</c>
/// and a line in <see cref="SectionCatalogue"/>. A template places values (always encoded), branches and loops; it calls nothing.
/// </remarks>
public abstract class ReportSection
{
    /// <summary>Name of the template and of the section's element id; lower case with dashes.</summary>
    public abstract string Name { get; }

    /// <summary>The heading, and the word in the list of sections.</summary>
    public abstract string Title { get; }

    /// <summary>The template's text.</summary>
    public virtual string Template => EmbeddedText.Template(Name);

    /// <summary>Style beyond <c>report.css</c>; empty for the sections whose block stands there.</summary>
    public virtual string Style => "";

    /// <summary>The values for the template; null when the section has nothing to say and is left out.</summary>
    public abstract ScriptObject? View(ReportContext context);
}
