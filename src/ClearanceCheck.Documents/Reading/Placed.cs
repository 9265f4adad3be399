using ClearanceCheck.Documents.Nodes;

namespace ClearanceCheck.Documents.Reading;

/// <summary>A value that was read, with the node it came from.</summary>
/// <param name="Value">The value.</param>
/// <param name="Node">Where it stands.</param>
public sealed record Placed<T>(T Value, Node Node)
{
    /// <summary>Where it stands in the file.</summary>
    public SourceSpan Span => Node.Span;
}
