using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Rules.Checklists;
using ClearanceCheck.Rules.Loading;

namespace ClearanceCheck.Rules.Layers;

/// <summary>The rules that count while layer goes on layer.</summary>
internal sealed class LayeredRules
{
    private readonly Dictionary<SourceText, string> layerOf = [];

    public List<RuleLayer> Layers { get; } = [];

    /// <summary>In the order in which they were first written.</summary>
    public List<CountingRule> Rules { get; } = [];

    /// <summary>What the library asks a person.</summary>
    public List<ChecklistItem> Items { get; } = [];

    /// <summary>What it expects a whole vehicle to have.</summary>
    public List<CoverageRow> Coverage { get; } = [];

    public List<string> NotLoaded { get; } = [];

    public List<RuleChange> Changes { get; } = [];

    /// <summary>Ids that stand in a layer, whether or not the rule could be loaded.</summary>
    public HashSet<string> KnownIds { get; } = new(StringComparer.Ordinal);

    public CountingRule? Find(string id) => Rules.Find(r => r.Rule.Id == id);

    /// <summary>Says in which layer the texts of some files stand.</summary>
    public void Name(RuleLayer layer, IEnumerable<LayerFile> files)
    {
        Layers.Add(layer);
        foreach (MappingNode root in files.Select(f => f.Root).OfType<MappingNode>()) layerOf[root.Span.Source] = $"{layer.Name} {layer.Version}";
    }

    /// <summary>The rule with the place of each of its fields.</summary>
    public Rule WithOrigins(Rule rule, MappingNode node) => rule with
    {
        Origins = [.. node.Entries.Select(e => new FieldOrigin(e.Key.Text, layerOf[e.Key.Span.Source], e.Key.Span.ToString(), Typed(e.Value)))],
    };

    public RuleLibrary ToLibrary()
    {
        RuleLayer top = Layers[^1];
        string hash = Layers.Count == 1 ? top.Hash : LibraryHash.Of(Layers);
        return new RuleLibrary(top.Name, top.Version, hash, [.. Rules.Select(r => r.Rule)], [.. NotLoaded])
        {
            Layers = [.. Layers],
            Changes = [.. Changes],
            Items = [.. Items],
            Coverage = [.. Coverage],
        };
    }

    /// <summary>A value as it stands in the file, on one line.</summary>
    public static string Typed(Node value) => VisibleText.Of(string.Join(' ', value.Span.Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
}

/// <summary>A rule that counts, and the map it was read from.</summary>
/// <param name="Key">Where its id stands.</param>
internal sealed record CountingRule(Rule Rule, ScalarNode Key, MappingNode Node);
