using System.Text.RegularExpressions;
using ClearanceCheck.Documents.Nodes;

namespace ClearanceCheck.Documents.Yaml;

/// <summary>A key whose colon has no space after it, so that YAML takes key and value for one word: <c>name:front</c>.</summary>
/// <param name="Key">The key that was meant.</param>
/// <param name="Report">What to say.</param>
internal sealed partial record MissingSpace(ScalarNode Key, Diagnostic Report)
{
    private const int MostShown = 80;

    /// <summary>Looks at a plain word that stands where a key could stand.</summary>
    public static MissingSpace? In(ScalarNode node)
    {
        if (node.Style != ScalarStyle.Plain) return null;
        var match = KeyWithoutSpace().Match(node.Text);
        if (!match.Success) return null;
        var word = match.Groups["key"].Value;
        var source = node.Span.Source;
        var key = new ScalarNode(Node.Join(Parent(node.Path), word), source.Span(node.Span.Start, node.Span.Start + word.Length), null, word, ScalarStyle.Plain);
        return new MissingSpace(key, InSource(source, node.Span.Start, word));
    }

    /// <summary>Looks for such a key at the beginning of a line.</summary>
    public static Diagnostic? InLine(SourceText source, int line)
    {
        var match = LineWithoutSpace().Match(source.Line(line));
        return match.Success ? InSource(source, source.StartOf(line) + match.Groups["key"].Index, match.Groups["key"].Value) : null;
    }

    /// <summary>The report for a key that starts at an offset; shows the rest of its line repaired.</summary>
    public static Diagnostic InSource(SourceText source, int start, string key)
    {
        var colon = start + key.Length;
        var end = ValueEnd(source, colon + 1);
        return DocumentMessages.MissingSpace(source.Span(colon, colon + 1), key, $"{key}: {source.Text[(colon + 1)..end].Trim()}");
    }

    /// <summary>The end of the value that was meant: the line's, a comma before a space, or a bracket that was opened before it.</summary>
    private static int ValueEnd(SourceText source, int from)
    {
        var depth = 0;
        var end = Math.Min(from, source.Text.Length);
        for (; end < source.Text.Length && end - from < MostShown && source.At(end) is not ('\n' or '\r'); end++)
        {
            if (source.At(end) is '[' or '{') depth++;
            else if (source.At(end) is ']' or '}') depth--;
            if (depth < 0 || (depth == 0 && source.At(end) == ',' && source.At(end + 1) is ' ')) break;
        }

        return end;
    }

    private static string Parent(string path) => path.LastIndexOf('/') is var cut and >= 0 ? path[..cut] : "";

    [GeneratedRegex(@"^(?<key>[A-Za-z][A-Za-z0-9_-]*):(?:(?!//)\S|$)", RegexOptions.CultureInvariant)]
    private static partial Regex KeyWithoutSpace();

    [GeneratedRegex(@"^ *(?:- +)*(?<key>[A-Za-z][A-Za-z0-9_-]*):(?!//)\S", RegexOptions.CultureInvariant)]
    private static partial Regex LineWithoutSpace();
}
