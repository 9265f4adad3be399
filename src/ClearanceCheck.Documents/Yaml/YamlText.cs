using ClearanceCheck.Documents.Nodes;

namespace ClearanceCheck.Documents.Yaml;

/// <summary>Reads a YAML file into nodes that know their places.</summary>
/// <remarks>One document, keys and values only: no anchors, aliases or tags, no key twice. Every scalar stays text; typed readers come after.</remarks>
public static class YamlText
{
    /// <summary>Reads the content of a file; null when YAML's own syntax is broken, the file is none of ours or it does not start with a key. Every fault is in the bag.</summary>
    public static MappingNode? Read(string fileName, ReadOnlySpan<byte> content, DiagnosticBag diagnostics) =>
        TextLoader.Load(fileName, content, diagnostics) is { } source ? Read(source, diagnostics) : null;

    /// <summary>Reads text that is already decoded.</summary>
    public static MappingNode? Read(string fileName, string text, DiagnosticBag diagnostics) =>
        TextLoader.Load(fileName, text, diagnostics) is { } source ? Read(source, diagnostics) : null;

    private static MappingNode? Read(SourceText source, DiagnosticBag diagnostics)
    {
        if (TabIndent.Find(source) is { } tab)
        {
            diagnostics.Add(tab);
            return null;
        }

        var root = new YamlTreeBuilder(source, diagnostics).Build();
        if (root is null or MappingNode) return root as MappingNode;
        if (root is not FaultyNode) diagnostics.Add(DocumentMessages.TopIsNoMapping(root.Span));
        return null;
    }
}
