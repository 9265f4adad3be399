using ClearanceCheck.Documents.Nodes;

namespace ClearanceCheck.Documents.Yaml;

/// <summary>The keys of one mapping while it is being read: catches keys without values and keys that stand twice.</summary>
internal sealed class MappingEntries
{
    private readonly string path;
    private readonly bool isFlow;
    private readonly SourceText source;
    private readonly DiagnosticBag diagnostics;
    private readonly List<MappingEntry> entries = [];
    private readonly Dictionary<string, int> places = new(StringComparer.Ordinal);
    private string? lastTyped;

    public MappingEntries(string path, bool isFlow, SourceText source, DiagnosticBag diagnostics)
    {
        this.path = path;
        this.isFlow = isFlow;
        this.source = source;
        this.diagnostics = diagnostics;
    }

    public int? Start { get; private set; }

    public int? End { get; private set; }

    /// <summary>Adds a key with its value; a key that stands already makes both values void, so that nothing is chosen.</summary>
    public void Add(ScalarNode key, Node value)
    {
        Extend(key.Span.Start, Math.Max(key.Span.End, value.Span.End));
        if (MissingSpace.In(key) is { } missing)
        {
            diagnostics.Add(missing.Report);
            Put(missing.Key, new FaultyNode(missing.Key.Path, value.Span, missing.Key.Span));
            return;
        }

        if (key.Text.Length == 0) diagnostics.Add(DocumentMessages.EmptyKey(ColonBefore(value.Span.Start)));
        else Put(key, value);
        lastTyped = source.Text[key.Span.Start..Math.Max(key.Span.End, value.Span.End)];
    }

    /// <summary>Reports a key whose value is missing; false when it has one.</summary>
    public bool TakeWithoutValue(ScalarNode key, int? emptyAt)
    {
        if (emptyAt is not { } at) return false;
        if (MissingSpace.In(key) is not null)
        {
            Add(key, new FaultyNode(key.Path, key.Span, key.Span));
            return true;
        }

        Extend(key.Span.Start, key.Span.End);
        if (key.Text.Length == 0)
        {
            diagnostics.Add(DocumentMessages.EmptyKey(key.Span));
            return true;
        }

        var hasColon = at > key.Span.End && source.Text[key.Span.End..at].Contains(':', StringComparison.Ordinal);
        if (hasColon || at < key.Span.End)
        {
            diagnostics.Add(DocumentMessages.NoValue(key.Span, key.Text));
            Put(key, new FaultyNode(key.Path, key.Span, key.Span));
        }
        else
        {
            diagnostics.Add(DocumentMessages.StrayText(key.Span, key.Text, lastTyped));
        }

        return true;
    }

    public IReadOnlyList<MappingEntry> Finish() => entries;

    private void Put(ScalarNode key, Node value)
    {
        if (!places.TryGetValue(key.Text, out var place))
        {
            places.Add(key.Text, entries.Count);
            entries.Add(new MappingEntry(key, value));
            return;
        }

        var first = entries[place];
        diagnostics.Add(DocumentMessages.DuplicateKey(key.Span, first.Key.Span, key.Text));
        entries[place] = first with { Value = new FaultyNode(Node.Join(path, key.Text), first.Value.Span, first.Key.Span) };
    }

    private SourceSpan ColonBefore(int valueStart)
    {
        var colon = source.Text.LastIndexOf(':', Math.Max(0, valueStart - 1));
        return source.Span(Math.Max(0, colon), colon + 1);
    }

    private void Extend(int start, int end)
    {
        if (isFlow && End is { } before) FlowSeparators.ReportMissingComma(source, before, start, diagnostics);
        Start ??= start;
        End = end;
    }
}
