using System.Collections.Immutable;
using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Yaml;
using ClearanceCheck.Rules.Loading;

namespace ClearanceCheck.Rules.Layers;

/// <summary>The files of one layer as parsed, before anything is read out of them.</summary>
internal sealed record LayerFiles(ImmutableArray<LayerFile> Files, string Hash)
{
    /// <summary>True when the files are a shop's changes on top of a library.</summary>
    public bool IsOverlay => Files.Select(f => f.Root).FirstOrDefault(r => r is not null)?.Find("overlay") is not null;

    public static LayerFiles Parse(IReadOnlyList<RuleFile> files)
    {
        ImmutableArray<RuleFile> ordered = [.. files.OrderBy(f => f.Name, StringComparer.Ordinal)];
        return new LayerFiles([.. ordered.Select(LayerFile.Parse)], LibraryHash.Of(ordered));
    }
}

/// <summary>A file of a layer with what its parser found.</summary>
/// <param name="Faults">Faults of this file: what is read out of it adds to them.</param>
internal sealed record LayerFile(RuleFile File, MappingNode? Root, DiagnosticBag Faults)
{
    public static LayerFile Parse(RuleFile file)
    {
        var faults = new DiagnosticBag();
        return new LayerFile(file, YamlText.Read(file.Name, file.Content.Span, faults), faults);
    }
}
