using System.Collections.Immutable;
using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Rules.Checklists;
using ClearanceCheck.Rules.Loading;

namespace ClearanceCheck.Rules.Layers;

/// <summary>Reads the library that stands below everything.</summary>
internal static class LibraryLayer
{
    /// <summary>The rules of the library; null when its files can't be used.</summary>
    public static LayeredRules? Read(LayerFiles files, RuleReader reader, DiagnosticBag diagnostics)
    {
        ImmutableArray<LoadedFile?> read = [.. files.Files.Select(file => Read(file, reader, diagnostics))];
        ImmutableArray<LoadedFile> loaded = [.. read.OfType<LoadedFile>()];
        foreach (LoadedFile other in loaded.Skip(1).Where(f => !IsOfSameLibrary(f.Header, loaded[0].Header)))
            RuleMessages.OtherLibrary(diagnostics, loaded[0].Header, other.Header);
        bool isOneLibrary = loaded.All(f => IsOfSameLibrary(f.Header, loaded[0].Header));
        bool isUsable = loaded.Length > 0 && loaded.Length == read.Length && isOneLibrary && !loaded.Any(f => f.Faults.OutsideRules);
        return isUsable ? Join(files, loaded, diagnostics) : null;
    }

    private static LoadedFile? Read(LayerFile file, RuleReader reader, DiagnosticBag diagnostics)
    {
        if (file.Root is { } root && ChecklistFile.IsOne(root)) return ReadChecklist(file, root, diagnostics);
        LibraryHeader? header = file.Root is null ? null : MappingReader.ReadFile(file.Root, file.Faults, LibraryHeader.Read);
        var rules = new Dictionary<string, CountingEntry>(StringComparer.Ordinal);
        foreach ((Placed<string> key, Field value) in header?.Entries ?? [])
            if (reader.Read(key.Value, value) is { } rule) rules.Add(rule.Id, new CountingRule(rule, (ScalarNode)key.Node, (MappingNode)value.Node!));
        diagnostics.AddRange(file.Faults.Ordered);
        return header is null ? null : new LoadedFile(header, rules, new RuleFaults(file.Root!, [header.Rules], file.Faults));
    }

    private static LoadedFile? ReadChecklist(LayerFile file, MappingNode root, DiagnosticBag diagnostics)
    {
        ChecklistFile? checklist = ChecklistFile.Read(root, file.Faults);
        diagnostics.AddRange(file.Faults.Ordered);
        return checklist is null ? null : new LoadedFile(checklist.Header, checklist.Entries, new RuleFaults(root, [checklist.Header.Rules], file.Faults));
    }

    private static bool IsOfSameLibrary(LibraryHeader a, LibraryHeader b) => a.Name.Value == b.Name.Value && a.Version.Value == b.Version.Value;

    private static LayeredRules Join(LayerFiles layer, ImmutableArray<LoadedFile> files, DiagnosticBag diagnostics)
    {
        Dictionary<string, Placed<string>> twice = ReportDuplicates(files, diagnostics);
        LibraryHeader header = files[0].Header;
        var counting = new LayeredRules();
        counting.Name(new RuleLayer(header.Name.Value, header.Version.Value, false, layer.Hash), layer.Files);
        foreach (LoadedFile file in files)
        {
            foreach (MappingEntry entry in file.Header.Rules.Entries)
            {
                string id = entry.Key.Text;
                counting.KnownIds.Add(id);
                if (twice.TryGetValue(id, out Placed<string>? first))
                {
                    if (first.Node == entry.Key) counting.NotLoaded.Add($"{id} was not loaded: it stands in more than one file, first at {entry.Key.Span}.");
                }
                else if (file.Faults.Of(entry).Count == 0 && file.AddTo(counting, id)) continue;
                else counting.NotLoaded.Add(file.Faults.Sentence($"{VisibleText.Of(id)} was not loaded", entry));
            }
        }

        return counting;
    }

    private static Dictionary<string, Placed<string>> ReportDuplicates(ImmutableArray<LoadedFile> files, DiagnosticBag diagnostics)
    {
        var seen = new Dictionary<string, Placed<string>>(StringComparer.Ordinal);
        var twice = new Dictionary<string, Placed<string>>(StringComparer.Ordinal);
        foreach (Placed<string> key in files.SelectMany(f => f.Header.Entries).Select(e => e.Key))
        {
            if (seen.TryAdd(key.Value, key)) continue;
            RuleMessages.DuplicateRule(diagnostics, seen[key.Value], key);
            twice.TryAdd(key.Value, seen[key.Value]);
        }

        return twice;
    }

    private sealed record LoadedFile(LibraryHeader Header, IReadOnlyDictionary<string, CountingEntry> Entries, RuleFaults Faults)
    {
        /// <summary>Adds what has this id; false where it could not be read.</summary>
        public bool AddTo(LayeredRules counting, string id)
        {
            if (!Entries.TryGetValue(id, out CountingEntry? entry)) return false;
            counting.Entries.Add(counting.WithOrigins(entry));
            return true;
        }
    }
}
