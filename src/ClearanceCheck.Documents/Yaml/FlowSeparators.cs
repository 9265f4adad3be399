using ClearanceCheck.Documents.Nodes;

namespace ClearanceCheck.Documents.Yaml;

/// <summary>Looks at what stands between the items of a list in brackets.</summary>
/// <remarks><c>[65,4, 12]</c> is three numbers to YAML, though 65.4 and 12 were meant; and the parser lets <c>[[1, 2] 3]</c> pass without its comma.</remarks>
internal static class FlowSeparators
{
    /// <summary>Reports every missing comma, and every comma between digits without a space in a list that also has commas with one.</summary>
    public static void Report(SourceText source, List<Node> items, DiagnosticBag diagnostics)
    {
        var tight = new List<int>();
        var hasLoose = false;
        for (var i = 1; i < items.Count; i++)
        {
            var (end, start) = (items[i - 1].Span.End, items[i].Span.Start);
            ReportMissingComma(source, end, start, diagnostics);
            if (source.At(end) == ',' && start == end + 1) tight.Add(i);
            else hasLoose = true;
        }

        foreach (var i in hasLoose ? tight : []) ReportMixed(source, items, i, diagnostics);
    }

    /// <summary>Reports when no comma stands between two entries; remarks between them are passed over.</summary>
    public static void ReportMissingComma(SourceText source, int end, int start, DiagnosticBag diagnostics)
    {
        var isRemark = false;
        for (var i = end; i < start; i++)
        {
            if (source.At(i) == ',' && !isRemark) return;
            if (source.At(i) == '#') isRemark = true;
            else if (source.At(i) is '\n' or '\r') isRemark = false;
        }

        diagnostics.Add(DocumentMessages.MissingComma(source.Span(start, start + 1)));
    }

    private static void ReportMixed(SourceText source, List<Node> items, int i, DiagnosticBag diagnostics)
    {
        var comma = items[i - 1].Span.End;
        if (!char.IsAsciiDigit(source.At(comma - 1)) || !char.IsAsciiDigit(source.At(comma + 1))) return;
        diagnostics.Add(DocumentMessages.MixedSeparators(source.Span(comma, comma + 1), items[i - 1].Span.Text, items[i].Span.Text));
        items[i - 1] = Faulty(items[i - 1]);
        items[i] = Faulty(items[i]);
    }

    private static FaultyNode Faulty(Node node) => new(node.Path, node.Span, null);
}
