namespace ClearanceCheck.Documents;

/// <summary>Another place that has to do with a fault.</summary>
/// <param name="Span">The place.</param>
/// <param name="Text">What it is, such as <c>first defined here</c>.</param>
public sealed record RelatedSpan(SourceSpan Span, string Text);
