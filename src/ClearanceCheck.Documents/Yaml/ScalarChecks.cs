using System.Text.RegularExpressions;
using ClearanceCheck.Documents.Nodes;

namespace ClearanceCheck.Documents.Yaml;

/// <summary>Refuses plain values that YAML would change or cut in silence.</summary>
internal sealed partial class ScalarChecks
{
    /// <summary>No measured value with its unit is longer; keeps the pattern from being tried on whole paragraphs.</summary>
    private const int LongestMeasured = 60;

    private readonly SourceText source;
    private readonly DiagnosticBag diagnostics;

    public ScalarChecks(SourceText source, DiagnosticBag diagnostics)
    {
        this.source = source;
        this.diagnostics = diagnostics;
    }

    /// <summary>Reports the first such fault of a value; true when there is none.</summary>
    public bool Check(ScalarNode node)
    {
        if (node.Style != Nodes.ScalarStyle.Plain) return true;
        var fault = NoValue(node) ?? OverLines(node) ?? WithoutSpace(node) ?? CutByComment(node);
        if (fault is not null) diagnostics.Add(fault);
        return fault is null;
    }

    private static Diagnostic? NoValue(ScalarNode node)
    {
        if (node.Text.Length == 0) return DocumentMessages.NoItem(node.Span);
        return node.Text is "~" or "null" or "Null" or "NULL" ? DocumentMessages.NullWord(node.Span, node.Text) : null;
    }

    private Diagnostic? OverLines(ScalarNode node)
    {
        var (first, last) = (node.Span.Line, node.Span.EndLine);
        if (first == last) return null;
        for (var line = first; line <= last; line++)
        {
            if ((line > first || StartsLine(node)) && MissingSpace.InLine(source, line) is { } missing) return missing;
        }

        return DocumentMessages.OverLines(source.Span(node.Span.Start, source.EndOf(first)));
    }

    /// <summary>A word such as <c>name:front</c> is a key where it starts a line, and plain text after a key.</summary>
    private Diagnostic? WithoutSpace(ScalarNode node)
    {
        var isItem = node.Heading.Start == node.Span.Start;
        return isItem || StartsLine(node) ? MissingSpace.In(node)?.Report : null;
    }

    private Diagnostic? CutByComment(ScalarNode node)
    {
        var start = node.Span.End;
        while (source.At(start) is ' ' or '\t') start++;
        if (source.At(start) != '#' || start == node.Span.End) return null;
        if (node.Text.Length <= LongestMeasured && Measured().IsMatch(node.Text)) return null;
        var lineEnd = source.EndOf(source.LineOf(start));
        var comment = source.Text[start..lineEnd].TrimEnd();
        var isRemark = comment.Length == 1 || (comment[1] == ' ' && !char.IsAsciiDigit(comment.AsSpan(1).TrimStart() is [var c, ..] ? c : ' '));
        if (isRemark && OneWord().IsMatch(node.Text)) return null;
        // A number with a fault is a number all the same: its reader says what is wrong with it, and not the remark behind it.
        if (isRemark && node.Text.Length <= LongestMeasured && LikeNumber().IsMatch(node.Text)) return null;
        return DocumentMessages.CutByComment(source.Span(start, lineEnd), KeyOf(node) + Quoting.Quote(node.Text + source.Text[node.Span.End..start] + comment));
    }

    private bool StartsLine(ScalarNode node) =>
        source.Text.AsSpan(source.StartOf(node.Span.Line), node.Span.Start - source.StartOf(node.Span.Line)).Trim(' ').IsEmpty;

    private static string KeyOf(ScalarNode node) => node.Heading.Start == node.Span.Start ? "" : node.Heading.Text + ": ";

    /// <summary>A number, with one word or mark after it at most: a measured value, a date, a version, a size.</summary>
    [GeneratedRegex(@"^[-+−]?[.\d][-\d./:'""° ]*(?:[\p{L}%°""'/.²³·]+\d*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Measured();

    /// <summary>What begins as a number does, with something as short as a unit after it at most.</summary>
    [GeneratedRegex(@"^[-+−]?[.\d∞]\S*(?: \S{1,4})?$", RegexOptions.CultureInvariant)]
    private static partial Regex LikeNumber();

    /// <summary>A word as ids and choices are written.</summary>
    [GeneratedRegex(@"^[a-z][a-z0-9/._-]*$", RegexOptions.CultureInvariant)]
    private static partial Regex OneWord();
}
