using System.Collections.Immutable;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Rules.Checklists;

namespace ClearanceCheck.Rules.Layers;

/// <summary>What counts in a layer and may be changed by the next, with the map it was read from.</summary>
/// <param name="Key">Where its id stands.</param>
internal abstract record CountingEntry(ScalarNode Key, MappingNode Node)
{
    public string Id => Key.Text;

    public abstract string Title { get; }

    public abstract Severity Severity { get; }

    /// <summary>The keys that an overlay may name.</summary>
    public abstract ImmutableArray<string> Keys { get; }
}

/// <summary>A rule that counts.</summary>
internal sealed record CountingRule(Rule Rule, ScalarNode Key, MappingNode Node) : CountingEntry(Key, Node)
{
    public override string Title => Rule.Title;

    public override Severity Severity => Rule.Severity;

    public override ImmutableArray<string> Keys => Loading.RuleReader.Keys;
}

/// <summary>An item that is asked.</summary>
internal sealed record CountingItem(ChecklistItem Item, ScalarNode Key, MappingNode Node) : CountingEntry(Key, Node)
{
    public override string Title => Item.Title;

    public override Severity Severity => Item.Severity;

    public override ImmutableArray<string> Keys => ItemReader.Keys;
}

/// <summary>Something that is expected.</summary>
internal sealed record CountingRow(CoverageRow Row, ScalarNode Key, MappingNode Node) : CountingEntry(Key, Node)
{
    public override string Title => $"Expected of a whole vehicle: {Row.Title}";

    public override Severity Severity => Row.Severity;

    public override ImmutableArray<string> Keys => CoverageReader.Keys;
}
