namespace ClearanceCheck.Documents.Nodes;

/// <summary>A value whose fault has been reported; whoever reads it stays silent.</summary>
public sealed class FaultyNode : Node
{
    internal FaultyNode(string path, SourceSpan span, SourceSpan? heading)
        : base(path, span, heading)
    {
    }
}
