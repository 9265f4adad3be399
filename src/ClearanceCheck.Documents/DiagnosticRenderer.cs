using System.Globalization;
using System.Text;

namespace ClearanceCheck.Documents;

/// <summary>Writes diagnostics as text: place and fault, the line as typed, a caret under the fault, the help, other places; five lines at most.</summary>
public static class DiagnosticRenderer
{
    /// <summary>Faults shown of one run; the rest is counted.</summary>
    public const int MostShown = 20;

    /// <summary>Characters of a source line that are shown around the caret.</summary>
    private const int LineWidth = 100;

    /// <summary>Characters of a message or help line that are shown.</summary>
    private const int MessageWidth = 400;

    /// <summary>The first faults in order, a blank line between, and how many more there are.</summary>
    public static string Render(DiagnosticBag diagnostics)
    {
        var ordered = diagnostics.Ordered;
        var text = string.Join("\n", ordered.Take(MostShown).Select(Render));
        var more = ordered.Count - MostShown;
        return more <= 0 ? text : text + "\n" + string.Create(CultureInfo.InvariantCulture, $"and {more} more\n");
    }

    /// <summary>One diagnostic; every line ends with LF.</summary>
    public static string Render(Diagnostic diagnostic)
    {
        var text = new StringBuilder();
        var word = diagnostic.Severity == Severity.Error ? "error" : "note";
        text.Append(OneLine(diagnostic.Span.ToString())).Append(": ").Append(word).Append(": ").Append(OneLine(diagnostic.Message)).Append('\n');
        AppendLine(text, diagnostic.Span);
        if (diagnostic.Help.Length > 0) text.Append("help: ").Append(OneLine(diagnostic.Help)).Append('\n');
        if (diagnostic.Related.Count > 0)
        {
            text.Append("see: ").Append(OneLine(string.Join("; ", diagnostic.Related.Select(related => $"{related.Span}: {related.Text}")))).Append('\n');
        }

        return text.ToString();
    }

    private static void AppendLine(StringBuilder text, SourceSpan span)
    {
        var start = span.Source.StartOf(span.Line);
        var line = span.Source.Line(span.Line);
        if (line.AsSpan().Trim().IsEmpty) return;
        var (visible, caretStart, caretEnd) = Visible(line, span.Start - start, span.End - start);
        var from = Math.Max(0, Math.Min(caretStart - (LineWidth / 3), visible.Length - LineWidth));
        var to = Math.Min(visible.Length, from + LineWidth);
        var lead = from > 0 ? "..." : "";
        text.Append("  ").Append(lead).Append(visible, from, to - from).Append(to < visible.Length ? "...\n" : "\n");
        var width = Math.Clamp(Math.Min(caretEnd, to) - caretStart, 1, LineWidth);
        text.Append(' ', 2 + lead.Length + caretStart - from).Append('^', width).Append('\n');
    }

    private static (string Line, int CaretStart, int CaretEnd) Visible(string line, int faultStart, int faultEnd)
    {
        var visible = new StringBuilder(line.Length);
        int? caretStart = null;
        int? caretEnd = null;
        for (var i = 0; i < line.Length; i += VisibleText.RuneLength(line, i))
        {
            if (i >= faultStart) caretStart ??= visible.Length;
            if (i >= faultEnd) caretEnd ??= visible.Length;
            visible.Append(VisibleText.OfOne(line, i));
        }

        return (visible.ToString(), caretStart ?? visible.Length, caretEnd ?? visible.Length);
    }

    private static string OneLine(string text)
    {
        var visible = VisibleText.Of(text);
        return visible.Length <= MessageWidth ? visible : visible[..MessageWidth] + "...";
    }
}
