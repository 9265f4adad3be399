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

    /// <summary>This map with entries of a layer above: each takes the place of the entry with its key, or follows the others. Every entry keeps the place it was typed at.</summary>
    /// <param name="upper">The entries above, no key twice.</param>
    /// <param name="dropped">Keys of this map that the layer above leaves out.</param>
    public MappingNode Overlaid(IReadOnlyCollection<MappingEntry> upper, params ReadOnlySpan<string> dropped)
    {
        Dictionary<string, MappingEntry> above = upper.ToDictionary(e => e.Key.Text, StringComparer.Ordinal);
        var entries = new List<MappingEntry>();
        foreach (MappingEntry own in Entries)
        {
            if (above.Remove(own.Key.Text, out MappingEntry? entry)) entries.Add(entry);
            else if (!dropped.Contains(own.Key.Text)) entries.Add(own);
        }

        return new MappingNode(Path, Span, Heading, [.. entries, .. upper.Where(e => above.ContainsKey(e.Key.Text))]);
    }
}
