using System.Collections.Immutable;
using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Rules.Loading;

namespace ClearanceCheck.Rules.Checklists;

/// <summary>A file of the library that holds items or coverage instead of rules.</summary>
internal sealed record ChecklistFile(LibraryHeader Header, ImmutableSortedDictionary<string, ChecklistItem> Items, ImmutableSortedDictionary<string, CoverageRow> Rows)
{
    private const string ItemsKey = "items", CoverageKey = "coverage";

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
        var items = ImmutableSortedDictionary.CreateBuilder<string, ChecklistItem>(StringComparer.Ordinal);
        var rows = ImmutableSortedDictionary.CreateBuilder<string, CoverageRow>(StringComparer.Ordinal);
        foreach ((Placed<string> key, Field value) in header.Entries)
            if (isItems && ItemReader.Read(key.Value, value) is { } item) items[item.Id] = item;
            else if (!isItems && CoverageReader.Read(key.Value, value) is { } row) rows[key.Value] = row;
        return new ChecklistFile(header, items.ToImmutable(), rows.ToImmutable());
    }
}
