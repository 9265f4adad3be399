using System.Collections.Immutable;
using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Rules.Layers;
using ClearanceCheck.Rules.Loading;

namespace ClearanceCheck.Rules.Checklists;

/// <summary>A file of the library that holds items or coverage instead of rules.</summary>
internal sealed record ChecklistFile(LibraryHeader Header, ImmutableSortedDictionary<string, CountingEntry> Entries)
{
    public const string ItemsKey = "items", CoverageKey = "coverage";

    private static readonly string[] Keys = ["rules", ItemsKey, CoverageKey];

    public static bool IsOne(MappingNode root) => root.Find(ItemsKey) is not null || root.Find(CoverageKey) is not null;

    /// <summary>Reads such a file; null after a report when its header is unusable.</summary>
    public static ChecklistFile? Read(MappingNode root, DiagnosticBag bag)
    {
        if (root.Entries.Where(e => Keys.Contains(e.Key.Text)).ToArray() is [var first, var second, ..])
        {
            ChecklistMessages.TwoLists(bag, first, second);
            return null;
        }

        bool isItems = root.Find(ItemsKey) is not null;
        if (MappingReader.ReadFile(root, bag, r => LibraryHeader.Read(r, isItems ? ItemsKey : CoverageKey)) is not { } header) return null;
        var entries = ImmutableSortedDictionary.CreateBuilder<string, CountingEntry>(StringComparer.Ordinal);
        foreach ((Placed<string> key, Field value) in header.Entries)
            if ((isItems ? ReadItem((ScalarNode)key.Node, value) : ReadRow((ScalarNode)key.Node, value)) is { } entry) entries[key.Value] = entry;
        return new ChecklistFile(header, entries.ToImmutable());
    }

    public static CountingEntry? ReadItem(ScalarNode key, Field value) => ItemReader.Read(key.Text, value) is { } item ? new CountingItem(item, key, (MappingNode)value.Node!) : null;

    public static CountingEntry? ReadRow(ScalarNode key, Field value) => CoverageReader.Read(key.Text, value) is { } row ? new CountingRow(row, key, (MappingNode)value.Node!) : null;
}
