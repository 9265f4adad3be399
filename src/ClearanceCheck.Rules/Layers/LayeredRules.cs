using System.Collections.Immutable;
using System.Diagnostics;
using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Rules.Loading;

namespace ClearanceCheck.Rules.Layers;

/// <summary>The rules that count while layer goes on layer.</summary>
internal sealed class LayeredRules
{
    private readonly Dictionary<SourceText, string> layerOf = [];

    public List<RuleLayer> Layers { get; } = [];

    /// <summary>Rules, items and expectations, in the order in which they were first written.</summary>
    public List<CountingEntry> Entries { get; } = [];

    /// <summary>What an overlay switched off.</summary>
    public List<CountingEntry> SwitchedOff { get; } = [];

    public IEnumerable<CountingRule> Rules => Entries.OfType<CountingRule>();

    public List<string> NotLoaded { get; } = [];

    public List<RuleChange> Changes { get; } = [];

    /// <summary>Ids that stand in a layer, whether or not the rule could be loaded.</summary>
    public HashSet<string> KnownIds { get; } = new(StringComparer.Ordinal);

    public CountingEntry? Find(string id) => Entries.Find(e => e.Id == id);

    /// <summary>Says in which layer the texts of some files stand.</summary>
    public void Name(RuleLayer layer, IEnumerable<LayerFile> files)
    {
        Layers.Add(layer);
        foreach (MappingNode root in files.Select(f => f.Root).OfType<MappingNode>()) layerOf[root.Span.Source] = $"{layer.Name} {layer.Version}";
    }

    /// <summary>The entry with the place of each of its fields.</summary>
    public CountingEntry WithOrigins(CountingEntry entry)
    {
        ImmutableArray<FieldOrigin> origins = [.. entry.Node.Entries.Select(e => new FieldOrigin(e.Key.Text, layerOf[e.Key.Span.Source], e.Key.Span.ToString(), Typed(e.Value)))];
        return entry switch
        {
            CountingRule rule => rule with { Rule = rule.Rule with { Origins = origins } },
            CountingItem item => item with { Item = item.Item with { Origins = origins } },
            CountingRow row => row with { Row = row.Row with { Origins = origins } },
            _ => throw new UnreachableException(),
        };
    }

    public RuleLibrary ToLibrary()
    {
        RuleLayer top = Layers[^1];
        string hash = Layers.Count == 1 ? top.Hash : LibraryHash.Of(Layers);
        return new RuleLibrary(top.Name, top.Version, hash, [.. Rules.Select(r => r.Rule)], [.. NotLoaded])
        {
            Layers = [.. Layers],
            Changes = [.. Changes],
            Items = [.. Entries.OfType<CountingItem>().Select(e => e.Item)],
            NoLongerAsked = [.. SwitchedOff.OfType<CountingItem>().Select(e => e.Item)],
            NoLongerExpected = [.. SwitchedOff.OfType<CountingRow>().Select(e => e.Row)],
            Coverage = [.. Entries.OfType<CountingRow>().Select(e => e.Row)],
        };
    }

    /// <summary>A value as it stands in the file, on one line.</summary>
    public static string Typed(Node value) => VisibleText.Of(string.Join(' ', value.Span.Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
}
