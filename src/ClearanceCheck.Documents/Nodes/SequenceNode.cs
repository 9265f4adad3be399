namespace ClearanceCheck.Documents.Nodes;

/// <summary>A list.</summary>
public sealed class SequenceNode : Node
{
    internal SequenceNode(string path, SourceSpan span, SourceSpan? heading, IReadOnlyList<Node> items)
        : base(path, span, heading) => Items = items;

    public IReadOnlyList<Node> Items { get; }
}
