namespace ClearanceCheck.Documents.Nodes;

/// <summary>Keys with values, in file order; no key stands twice.</summary>
public sealed class MappingNode : Node
{
    private readonly Dictionary<string, MappingEntry> byKey;

    internal MappingNode(string path, SourceSpan span, SourceSpan? heading, IReadOnlyList<MappingEntry> entries)
        : base(path, span, heading)
    {
        Entries = entries;
        byKey = entries.ToDictionary(entry => entry.Key.Text, StringComparer.Ordinal);
    }

    public IReadOnlyList<MappingEntry> Entries { get; }

    /// <summary>The entry of a key, or null.</summary>
    public MappingEntry? Find(string key) => byKey.GetValueOrDefault(key);
}
