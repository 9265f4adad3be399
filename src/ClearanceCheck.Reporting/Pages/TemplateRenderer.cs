using Scriban;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Pages;

/// <summary>Turns a template and its view into markup.</summary>
internal static class TemplateRenderer
{
    /// <exception cref="InvalidOperationException">The template does not parse; the message lists the faults.</exception>
    public static RawHtml Render(string name, string template, ScriptObject view)
    {
        Template parsed = Template.Parse(template, name);
        if (parsed.HasErrors) throw new InvalidOperationException($"Template '{name}' does not parse: {string.Join("; ", parsed.Messages)}");
        return new RawHtml(parsed.Render(new EncodingContext(view)));
    }
}
