using System.Collections.Immutable;
using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Rules.Loading;

namespace ClearanceCheck.Rules.Layers;

/// <summary>Puts an overlay on the rules below it.</summary>
internal static class OverlayLayer
{
    /// <summary>The header of an overlay's files; null when they can't be used, and then it has been said why.</summary>
    public static OverlayHeader? Header(LayerFiles layer, DiagnosticBag diagnostics)
    {
        ImmutableArray<OverlayFile?> read = [.. layer.Files.Select(OverlayFile.Read)];
        ImmutableArray<OverlayFile> files = [.. read.OfType<OverlayFile>()];
        bool isOne = true;
        foreach (OverlayFile other in files.Skip(1).Where(f => !IsOfSameOverlay(files[0], f)))
        {
            OverlayMessages.OtherOverlay(diagnostics, files[0], other);
            isOne = false;
        }

        bool isSound = isOne && files.Length == read.Length && !files.Any(f => new RuleFaults(f.File.Root!, f.Sections, f.File.Faults).OutsideRules);
        if (isSound) return new OverlayHeader(files[0].Name, files[0].Version, files[0].On.Library, files[0].On.From, files[0].On.Before, files, layer);
        foreach (LayerFile file in layer.Files) diagnostics.AddRange(file.Faults.Ordered);
        return null;
    }

    /// <summary>Changes, switches off and adds rules.</summary>
    public static void Apply(OverlayHeader overlay, LayeredRules counting, RuleReader reader, DateOnly? today, DiagnosticBag diagnostics)
    {
        counting.Name(overlay.Card, overlay.Layer.Files);
        var put = new OverlayChanges(overlay, counting, reader, today, diagnostics);
        HashSet<string> below = [.. counting.KnownIds];
        var seen = new Dictionary<string, MappingEntry>(StringComparer.Ordinal);
        foreach (OverlayFile file in overlay.Files)
        {
            Dictionary<MappingEntry, OverlayEntry> entries = OverlayEntry.ReadAll(file, counting, reader).ToDictionary(e => e.Entry);
            var faults = new RuleFaults(file.File.Root!, file.Sections, file.File.Faults);
            diagnostics.AddRange(file.File.Faults.Ordered);
            foreach (MappingEntry entry in file.Sections.SelectMany(s => s.Entries))
            {
                if (!seen.TryAdd(entry.Key.Text, entry)) put.Twice(entry, seen[entry.Key.Text]);
                else if (faults.Of(entry).Count > 0 || !entries.TryGetValue(entry, out OverlayEntry? read)) put.NotLoaded(entry, faults.Of(entry));
                else put.Apply(read, below);
            }
        }
    }

    private static bool IsOfSameOverlay(OverlayFile a, OverlayFile b) =>
        a.Name.Value == b.Name.Value && a.Version.Value == b.Version.Value && a.On.Library.Value == b.On.Library.Value && a.On.From == b.On.From && a.On.Before == b.On.Before;
}
