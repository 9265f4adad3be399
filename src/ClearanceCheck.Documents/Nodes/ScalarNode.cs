namespace ClearanceCheck.Documents.Nodes;

/// <summary>One value as text.</summary>
public sealed class ScalarNode : Node
{
    internal ScalarNode(string path, SourceSpan span, SourceSpan? heading, string text, ScalarStyle style)
        : base(path, span, heading)
    {
        Text = text;
        Style = style;
    }

    /// <summary>The text without quotes.</summary>
    public string Text { get; }

    /// <summary>How it was written.</summary>
    public ScalarStyle Style { get; }

    /// <summary>Where a stretch of <see cref="Text"/> stands in the file; the whole value where escapes or line breaks make that unclear.</summary>
    public SourceSpan Place(int offset, int extent)
    {
        var typed = Span.Text;
        var lead = Style == ScalarStyle.Quoted ? 1 : 0;
        if (typed.Length != Text.Length + (2 * lead)) return Span;
        if (string.CompareOrdinal(typed, lead, Text, 0, Text.Length) != 0) return Span;
        return Span.Source.Span(Span.Start + lead + offset, Span.Start + lead + offset + extent);
    }
}
