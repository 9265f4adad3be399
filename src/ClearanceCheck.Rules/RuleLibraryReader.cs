using System.Collections.Immutable;
using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Documents.Yaml;
using ClearanceCheck.Quantities;
using ClearanceCheck.Rules.Checklists;
using ClearanceCheck.Rules.Loading;

namespace ClearanceCheck.Rules;

/// <summary>Reads a rule library from its files. A faulty rule is reported and left out; the others still load.</summary>
public static class RuleLibraryReader
{
    /// <summary>Reads all files of one library, in ordinal order of their names.</summary>
    /// <param name="files">The files; their order does not matter.</param>
    /// <param name="quantities">What rules can limit.</param>
    /// <returns>
    /// The library, with a sentence in <see cref="RuleLibrary.NotLoaded"/> for each rule that was left out; null when a file can't be read,
    /// its header is unusable, or a fault stands outside every rule. Each fault with its place is among the diagnostics.
    /// </returns>
    public static (RuleLibrary? Library, DiagnosticBag Diagnostics) Read(IReadOnlyList<RuleFile> files, QuantityCatalogue quantities)
    {
        var diagnostics = new DiagnosticBag();
        if (files.Count == 0) diagnostics.Add(RuleMessages.NoFiles());
        ImmutableArray<RuleFile> ordered = [.. files.OrderBy(f => f.Name, StringComparer.Ordinal)];
        var reader = new RuleReader(quantities);
        var read = ordered.Select(file => ReadFile(file, reader, diagnostics)).ToList();
        ImmutableArray<LoadedFile> loaded = [.. read.OfType<LoadedFile>()];
        foreach (LoadedFile other in loaded.Skip(1).Where(f => !IsOfSameLibrary(f.Header, loaded[0].Header)))
            RuleMessages.OtherLibrary(diagnostics, loaded[0].Header, other.Header);
        bool isOneLibrary = loaded.All(f => IsOfSameLibrary(f.Header, loaded[0].Header));
        bool isUsable = files.Count > 0 && loaded.Length == read.Count && isOneLibrary && !loaded.Any(f => f.Faults.OutsideRules);
        return (isUsable ? Join(loaded, LibraryHash.Of(ordered), diagnostics) : null, diagnostics);
    }

    private static LoadedFile? ReadFile(RuleFile file, RuleReader reader, DiagnosticBag diagnostics)
    {
        var own = new DiagnosticBag();
        MappingNode? root = YamlText.Read(file.Name, file.Content.Span, own);
        if (root is not null && ChecklistFile.IsOne(root)) return ReadChecklist(root, own, diagnostics);
        LibraryHeader? header = root is null ? null : MappingReader.ReadFile(root, own, LibraryHeader.Read);
        var rules = new Dictionary<string, Rule>(StringComparer.Ordinal);
        foreach ((Placed<string> key, Field value) in header?.Entries ?? [])
            if (reader.Read(key.Value, value) is { } rule) rules.Add(rule.Id, rule);
        diagnostics.AddRange(own.Ordered);
        return header is null ? null : new LoadedFile(header, rules, new RuleFaults(root!, header.Rules, own));
    }

    private static LoadedFile? ReadChecklist(MappingNode root, DiagnosticBag own, DiagnosticBag diagnostics)
    {
        ChecklistFile? checklist = ChecklistFile.Read(root, own);
        diagnostics.AddRange(own.Ordered);
        return checklist is null ? null : new LoadedFile(checklist.Header, [], new RuleFaults(root, checklist.Header.Rules, own), checklist);
    }

    private static bool IsOfSameLibrary(LibraryHeader a, LibraryHeader b) => a.Name.Value == b.Name.Value && a.Version.Value == b.Version.Value;

    private static RuleLibrary Join(ImmutableArray<LoadedFile> files, string hash, DiagnosticBag diagnostics)
    {
        Dictionary<string, Placed<string>> twice = ReportDuplicates(files, diagnostics);
        var rules = ImmutableArray.CreateBuilder<Rule>();
        var items = ImmutableArray.CreateBuilder<ChecklistItem>();
        var coverage = ImmutableArray.CreateBuilder<CoverageRow>();
        var notLoaded = ImmutableArray.CreateBuilder<string>();
        foreach (LoadedFile file in files)
        {
            foreach (MappingEntry entry in file.Header.Rules.Entries)
            {
                string id = entry.Key.Text;
                if (twice.TryGetValue(id, out Placed<string>? first))
                {
                    if (first.Node == entry.Key) notLoaded.Add($"{id} was not loaded: it stands in more than one file, first at {entry.Key.Span}.");
                }
                else if (file.Rules.TryGetValue(id, out Rule? rule) && file.Faults.Of(id).Count == 0) rules.Add(rule);
                else if (file.Faults.Of(id).Count == 0 && file.Checklist?.Items.TryGetValue(id, out ChecklistItem? item) == true) items.Add(item);
                else if (file.Faults.Of(id).Count == 0 && file.Checklist?.Rows.TryGetValue(id, out CoverageRow? row) == true) coverage.Add(row);
                else notLoaded.Add(Sentence(entry, file.Faults.Of(id)));
            }
        }

        LibraryHeader header = files[0].Header;
        return new RuleLibrary(header.Name.Value, header.Version.Value, hash, rules.ToImmutable(), notLoaded.ToImmutable()) { Items = items.ToImmutable(), Coverage = coverage.ToImmutable() };
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

    private static string Sentence(MappingEntry rule, IReadOnlyList<Diagnostic> faults) =>
        $"{VisibleText.Of(rule.Key.Text)} was not loaded: {(faults.Count == 1 ? "1 fault" : FormattableString.Invariant($"{faults.Count} faults, the first"))} at {(faults.Count == 0 ? rule.Key.Span : faults[0].Span)}.";

    private sealed record LoadedFile(LibraryHeader Header, Dictionary<string, Rule> Rules, RuleFaults Faults, ChecklistFile? Checklist = null);
}
