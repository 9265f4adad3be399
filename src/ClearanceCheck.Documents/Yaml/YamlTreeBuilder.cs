using ClearanceCheck.Documents.Nodes;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace ClearanceCheck.Documents.Yaml;

/// <summary>Builds nodes from the parser's events; depth and number of nodes are capped, so nesting cannot overflow the stack.</summary>
internal sealed class YamlTreeBuilder
{
    private readonly SourceText source;
    private readonly DiagnosticBag diagnostics;
    private readonly Parser parser;
    private readonly ScalarChecks checks;
    private readonly List<int> openBrackets = [];
    private ParsingEvent? current;
    private Scalar? lastScalar;
    private int nodeCount;
    private bool isStopped;

    public YamlTreeBuilder(SourceText source, DiagnosticBag diagnostics)
    {
        this.source = source;
        this.diagnostics = diagnostics;
        parser = new Parser(new Scanner(new StringReader(source.Text), skipComments: true));
        checks = new ScalarChecks(source, diagnostics);
    }

    /// <summary>The top node, or null when reading had to end.</summary>
    public Node? Build()
    {
        Advance();
        Advance();
        if (!isStopped && current is StreamEnd) Stop(DocumentMessages.EmptyFile(source.Span(0, 0)));
        Advance();
        var root = isStopped ? null : ReadNode("", 1, null);
        Advance();
        if (!isStopped && current is DocumentStart second) Stop(DocumentMessages.SecondDocument(Place(second)));
        return isStopped ? null : root;
    }

    private Node? ReadNode(string path, int depth, SourceSpan? heading)
    {
        if (depth > DocumentLimits.MostDepth) return Stop(DocumentMessages.TooDeep(Place(current!)));
        if (++nodeCount > DocumentLimits.MostNodes) return Stop(DocumentMessages.TooManyNodes(Place(current!)));
        switch (current)
        {
            case Scalar scalar:
                return ReadScalar(scalar, path, heading);
            case AnchorAlias alias:
                diagnostics.Add(DocumentMessages.Alias(Place(alias)));
                Advance();
                return new FaultyNode(path, Place(alias), heading);
            case SequenceStart start:
                return ReadSequence(start, path, depth, heading);
            case MappingStart start:
                return ReadMapping(start, path, depth, heading);
            default:
                // After a lone colon the parser ends the map without the value that it owes.
                StopAtSyntax(Offset(current!.Start), false, false);
                return null;
        }
    }

    private Node ReadScalar(Scalar scalar, string path, SourceSpan? heading)
    {
        var node = new ScalarNode(path, ScalarSpan(scalar), heading, scalar.Value, StyleOf(scalar));
        var isFaulty = ReportProperties(scalar) | !checks.Check(node);
        Advance();
        return isFaulty ? new FaultyNode(path, node.Span, heading) : node;
    }

    private SequenceNode? ReadSequence(SequenceStart start, string path, int depth, SourceSpan? heading)
    {
        ReportProperties(start);
        var from = AfterProperties(Offset(start.Start));
        var isFlow = Open(from, '[');
        var items = new List<Node>();
        Advance();
        while (!isStopped && current is not SequenceEnd)
        {
            var number = (items.Count + 1).ToString(System.Globalization.CultureInfo.InvariantCulture);
            if (ReadNode(Node.Join(path, number), depth + 1, null) is { } item) items.Add(item);
        }

        if (isStopped) return null;
        var span = Close(isFlow, from, items.Count > 0 ? items[^1].Span.End : from);
        if (isFlow) FlowSeparators.Report(source, items, diagnostics);
        return new SequenceNode(path, span, heading, items);
    }

    private MappingNode? ReadMapping(MappingStart start, string path, int depth, SourceSpan? heading)
    {
        ReportProperties(start);
        var from = AfterProperties(Offset(start.Start));
        var isFlow = Open(from, '{');
        var entries = new MappingEntries(path, isFlow, source, diagnostics);
        Advance();
        while (!isStopped && current is not MappingEnd) ReadEntry(entries, path, depth);
        if (isStopped) return null;
        if (!isFlow) from = entries.Start ?? from;
        return new MappingNode(path, Close(isFlow, from, entries.End ?? from), heading, entries.Finish());
    }

    private void ReadEntry(MappingEntries entries, string path, int depth)
    {
        if (current is not Scalar scalar)
        {
            diagnostics.Add(DocumentMessages.KeyIsNoWord(Place(current!)));
            ReadNode(path, depth + 1, null);
            if (!isStopped) ReadNode(path, depth + 1, null);
            return;
        }

        if (++nodeCount > DocumentLimits.MostNodes)
        {
            Stop(DocumentMessages.TooManyNodes(Place(scalar)));
            return;
        }

        var key = new ScalarNode(Node.Join(path, scalar.Value), ScalarSpan(scalar), null, scalar.Value, StyleOf(scalar));
        var keyIsFaulty = ReportProperties(scalar);
        Advance();
        if (isStopped) return;
        if (entries.TakeWithoutValue(key, EmptyValueAt()))
        {
            Advance();
            return;
        }

        var value = ReadNode(key.Path, depth + 1, key.Span);
        if (value is not null) entries.Add(key, keyIsFaulty ? new FaultyNode(key.Path, value.Span, key.Span) : value);
    }

    /// <summary>Where the value should be that the parser made up, or null when there is a value.</summary>
    private int? EmptyValueAt() =>
        current is Scalar { Style: YamlDotNet.Core.ScalarStyle.Plain, Value: "" } scalar && scalar.Anchor.IsEmpty && !HasTag(scalar)
            ? Offset(scalar.Start)
            : null;

    private bool ReportProperties(NodeEvent node)
    {
        if (!node.Anchor.IsEmpty) diagnostics.Add(DocumentMessages.Anchor(FirstWord(node), node.Anchor.Value));
        if (!HasTag(node)) return false;
        diagnostics.Add(DocumentMessages.Tag(FirstWord(node), node.Tag.ToString()));
        return true;
    }

    private static bool HasTag(NodeEvent node) => !node.Tag.IsEmpty && node.Tag.ToString() != "?";

    /// <summary>The parser counts an anchor or tag as the start of what follows it.</summary>
    private int AfterProperties(int at)
    {
        while (source.At(at) is '&' or '!')
        {
            while (at < source.Text.Length && !char.IsWhiteSpace(source.Text[at])) at++;
            while (at < source.Text.Length && char.IsWhiteSpace(source.Text[at])) at++;
        }

        return at;
    }

    private bool Open(int from, char bracket)
    {
        if (source.At(from) != bracket) return false;
        openBrackets.Add(from);
        return true;
    }

    private SourceSpan Close(bool isFlow, int from, int lastEnd)
    {
        var end = isFlow ? Offset(current!.Start) + 1 : lastEnd;
        if (isFlow) openBrackets.RemoveAt(openBrackets.Count - 1);
        Advance();
        return source.Span(from, end);
    }

    private void Advance()
    {
        if (isStopped) return;
        if (current is Scalar scalar) lastScalar = scalar;
        try
        {
            isStopped = !parser.MoveNext() && current is not StreamEnd;
            current = parser.Current ?? current;
        }
        catch (YamlException fault)
        {
            StopAtSyntax(Offset(fault.Start), fault is SyntaxErrorException, false);
        }
        catch (Exception fault) when (fault is InvalidOperationException or ArgumentException or IndexOutOfRangeException or FormatException or OverflowException)
        {
            // The parser loses its place on some broken texts and throws without a mark: the last event is as near as it gets.
            StopAtSyntax(current is null ? 0 : Offset(current.End), false, true);
        }
    }

    private void StopAtSyntax(int at, bool isToken, bool isLost)
    {
        isStopped = true;
        if (diagnostics.EndReadingAt(at)) return;
        var lastSpan = lastScalar is null ? (SourceSpan?)null : ScalarSpan(lastScalar);
        int? bracket = openBrackets.Count > 0 ? openBrackets[^1] : null;
        diagnostics.Add(new SyntaxFaultFinder(source, at, isToken, isLost, lastSpan, bracket).Find());
    }

    private Node? Stop(Diagnostic diagnostic)
    {
        diagnostics.Add(diagnostic);
        isStopped = true;
        return null;
    }

    private SourceSpan Place(ParsingEvent parsed)
    {
        var start = Offset(parsed.Start);
        return source.Span(start, Math.Max(start + 1, Offset(parsed.End)));
    }

    private SourceSpan FirstWord(ParsingEvent parsed)
    {
        var start = Offset(parsed.Start);
        var end = start;
        while (end < source.Text.Length && !char.IsWhiteSpace(source.Text[end])) end++;
        return source.Span(start, end);
    }

    private SourceSpan ScalarSpan(Scalar scalar)
    {
        var (start, end) = (Offset(scalar.Start), Offset(scalar.End));
        while (end > start && source.At(end - 1) is '\n' or '\r') end--;
        return source.Span(start, end);
    }

    private int Offset(Mark mark) => (int)Math.Clamp(mark.Index, 0, source.Text.Length);

    private static Nodes.ScalarStyle StyleOf(Scalar scalar) => scalar.Style switch
    {
        YamlDotNet.Core.ScalarStyle.SingleQuoted or YamlDotNet.Core.ScalarStyle.DoubleQuoted => Nodes.ScalarStyle.Quoted,
        YamlDotNet.Core.ScalarStyle.Literal or YamlDotNet.Core.ScalarStyle.Folded => Nodes.ScalarStyle.Block,
        _ => Nodes.ScalarStyle.Plain,
    };
}
