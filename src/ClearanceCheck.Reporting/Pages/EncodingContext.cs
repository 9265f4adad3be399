using System.Net;
using ClearanceCheck.Reporting.Wording;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Pages;

/// <summary>A template context in which every value is encoded on its way out, whatever the template says.</summary>
/// <remarks>
/// It has no built-in functions, so a template can only place values, branch and loop. Right for text and for attributes in quotes;
/// a test walks the templates for attributes without quotes. A missing name is an error, never an empty place.
/// </remarks>
internal sealed class EncodingContext : TemplateContext
{
    public EncodingContext(ScriptObject view)
        : base(new ScriptObject())
    {
        StrictVariables = true;
        EnableRelaxedMemberAccess = false;
        EnableRelaxedTargetAccess = false;
        EnableRelaxedIndexerAccess = false;
        EnableRelaxedFunctionAccess = false;
        AutoIndent = false;
        LoopLimit = 0;
        LimitToString = 0;
        NewLine = "\n";
        PushGlobal(view);
        // A ScriptObject answers null for a name it does not hold; a report with a hole must not be written.
        TryGetMember = (TemplateContext _, SourceSpan span, object _, string member, out object? value) =>
            throw new Scriban.Syntax.ScriptRuntimeException(span, $"The view has no member '{member}'.");
    }

    public override TemplateContext Write(SourceSpan span, object? textAsObject)
    {
        string markup = textAsObject is RawHtml raw
            ? raw.Markup
            : WebUtility.HtmlEncode(VisibleText.Sentence(ObjectToString(textAsObject)));
        Write(markup);
        return this;
    }
}
