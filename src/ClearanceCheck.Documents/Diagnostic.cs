namespace ClearanceCheck.Documents;

/// <summary>One thing that is wrong, or worth saying, at one place of a file.</summary>
/// <param name="Id">Stable id, such as <c>doc.duplicate-key</c>.</param>
/// <param name="Severity">Whether the file can still be used.</param>
/// <param name="Message">What is wrong, in words that stand alone.</param>
/// <param name="Span">The smallest place at fault.</param>
/// <param name="Help">What would be right, one line.</param>
/// <param name="Related">Other places, in the order to be shown.</param>
public sealed record Diagnostic(string Id, Severity Severity, string Message, SourceSpan Span, string Help, IReadOnlyList<RelatedSpan> Related)
{
    /// <summary>Whether nothing after this place was read.</summary>
    public bool EndsReading { get; init; }

    /// <summary>A fault that keeps the file from being used.</summary>
    public static Diagnostic Error(string id, SourceSpan span, string message, string help, params RelatedSpan[] related) =>
        new(id, Severity.Error, message, span, help, related);

    /// <summary>Something to be said that does not keep the file from being used.</summary>
    public static Diagnostic Note(string id, SourceSpan span, string message, string help, params RelatedSpan[] related) =>
        new(id, Severity.Note, message, span, help, related);
}
