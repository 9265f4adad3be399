using System.Diagnostics;
using System.Globalization;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using nietras.SeparatedValues;

namespace ClearanceCheck.Documents.Csv;

/// <summary>Turns the rows that Sep splits into cells that know their places.</summary>
internal sealed class CsvReader
{
    private readonly SourceText source;
    private readonly CsvColumns columns;
    private readonly ReadingContext context;
    private int at;

    public CsvReader(SourceText source, CsvColumns columns, ReadingContext context)
    {
        this.source = source;
        this.columns = columns;
        this.context = context;
    }

    public CsvTable? Read()
    {
        if (FirstLine() is not { } header) return Refuse(DocumentMessages.EmptyTable(source.Span(0, 0), columns.Required));
        if (Separator(header) is not { } separator) return null;
        var options = new SepReaderOptions(new Sep(separator)) { HasHeader = false, DisableColCountCheck = true, Unescape = false };
        using var reader = options.FromText(source.Text);
        List<string>? names = null;
        var rows = new List<CsvRow>();
        foreach (var row in reader)
        {
            var cells = Cells(row);
            if (cells.TrueForAll(cell => cell.Start == cell.End) && cells.Count <= 1) continue;
            if (names is null)
            {
                names = Names(cells);
                if (names is null) return null;
                continue;
            }

            if (rows.Count == DocumentLimits.MostRows) return Refuse(DocumentMessages.TooManyRows(cells[0]));
            if (ReadRow(cells, names, separator, rows.Count + 1) is { } read) rows.Add(read);
        }

        if (rows.Count == 0 && !context.Diagnostics.HasErrors) context.Diagnostics.Add(DocumentMessages.NoRows(source.Span(header.Start, header.End)));
        return new CsvTable(names ?? [], rows);
    }

    private SourceSpan? FirstLine()
    {
        for (var line = 1; line <= source.LineCount; line++)
        {
            if (!string.IsNullOrWhiteSpace(source.Line(line))) return source.Span(source.StartOf(line), source.EndOf(line));
        }

        return null;
    }

    private char? Separator(SourceSpan header)
    {
        var text = header.Text;
        var (commas, semicolons) = (text.Count(c => c == ','), text.Count(c => c == ';'));
        if (commas > 0 && semicolons > 0) return RefuseSeparator(DocumentMessages.TwoSeparators(header));
        if (commas + semicolons == 0 && text.Contains('\t', StringComparison.Ordinal)) return RefuseSeparator(DocumentMessages.TabSeparator(header));
        return semicolons > 0 ? ';' : ',';
    }

    private List<SourceSpan> Cells(SepReader.Row row)
    {
        // Sep gives texts, not offsets: rows and cells follow one another without gaps but for one separator or line break.
        var cells = new List<SourceSpan>(row.ColCount);
        for (var i = 0; i < row.ColCount; i++)
        {
            var typed = row[i].Span;
            if (!source.Text.AsSpan(Math.Min(at, source.Text.Length)).StartsWith(typed)) throw new UnreachableException("A cell was split at another place than it stands.");
            cells.Add(Trimmed(at, at + typed.Length));
            at += typed.Length + 1;
        }

        if (source.At(at - 1) == '\r' && source.At(at) == '\n') at++;
        return cells;
    }

    private SourceSpan Trimmed(int start, int end)
    {
        end = Math.Min(end, source.Text.Length);
        while (start < end && char.IsWhiteSpace(source.Text[start])) start++;
        while (end > start && char.IsWhiteSpace(source.Text[end - 1])) end--;
        return source.Span(start, end);
    }

    private List<string>? Names(List<SourceSpan> header)
    {
        var names = new List<string>();
        var isFaulty = false;
        var misspelt = new HashSet<string>(StringComparer.Ordinal);
        foreach (var cell in header)
        {
            if (Fault(cell, names, header, misspelt) is { } fault)
            {
                context.Diagnostics.Add(fault);
                isFaulty = true;
            }

            names.Add(Unquoted(cell));
        }

        foreach (var needed in columns.Required.Where(name => !names.Contains(name, StringComparer.Ordinal) && !misspelt.Contains(name)))
        {
            context.Diagnostics.Add(DocumentMessages.MissingColumn(source.Span(header[0].Start, header[^1].End), needed, columns.All));
            isFaulty = true;
        }

        return isFaulty ? null : names;
    }

    private Diagnostic? Fault(SourceSpan cell, List<string> before, List<SourceSpan> header, HashSet<string> misspelt)
    {
        if (QuoteFault(cell) is { } quote) return quote;
        var name = Unquoted(cell);
        if (before.IndexOf(name) is var first and >= 0) return DocumentMessages.ColumnTwice(cell, header[first], name);
        if (columns.All.Contains(name, StringComparer.Ordinal)) return null;
        var nearest = NearestWord.Find(name, columns.All);
        if (nearest is not null) misspelt.Add(nearest);
        return DocumentMessages.UnknownColumn(cell, name, nearest, columns.All);
    }

    private CsvRow? ReadRow(List<SourceSpan> cells, List<string> names, char separator, int number)
    {
        var whole = source.Span(cells[0].Start, cells[^1].End);
        if (cells.Select(QuoteFault).FirstOrDefault(fault => fault is not null) is { } quote) return RefuseRow(quote);
        if (cells.Count != names.Count) return RefuseRow(DocumentMessages.WrongCellCount(whole, cells.Count, names.Count, HasCommaBetweenDigits(whole, separator)));
        var path = "row " + number.ToString(CultureInfo.InvariantCulture);
        var named = new Dictionary<string, ScalarNode>(StringComparer.Ordinal);
        for (var i = 0; i < names.Count; i++)
        {
            var style = IsQuoted(cells[i]) ? ScalarStyle.Quoted : ScalarStyle.Plain;
            named.Add(names[i], new ScalarNode(Node.Join(path, names[i]), cells[i], null, Unquoted(cells[i]), style));
        }

        return new CsvRow(whole, named, context);
    }

    private static bool HasCommaBetweenDigits(SourceSpan row, char separator)
    {
        var text = row.Text;
        for (var i = 1; i + 1 < text.Length && separator == ','; i++)
        {
            if (text[i] == ',' && char.IsAsciiDigit(text[i - 1]) && char.IsAsciiDigit(text[i + 1])) return true;
        }

        return false;
    }

    private static bool IsQuoted(SourceSpan cell) => cell.End - cell.Start >= 2 && cell.Text[0] == '"';

    private static string Unquoted(SourceSpan cell) =>
        IsQuoted(cell) ? cell.Text[1..^1].Replace("\"\"", "\"", StringComparison.Ordinal) : cell.Text;

    /// <summary>A cell that begins with a quote has to end with one, with every quote between them doubled.</summary>
    private Diagnostic? QuoteFault(SourceSpan cell)
    {
        var text = cell.Text;
        var stray = text.IndexOf('"', StringComparison.Ordinal);
        if (stray < 0) return null;
        if (stray > 0) return DocumentMessages.CellStrayQuote(source.Span(cell.Start + stray, cell.Start + stray + 1));
        for (var i = 1; i < text.Length; i++)
        {
            if (text[i] != '"') continue;
            if (i + 1 < text.Length && text[i + 1] == '"') i++;
            else if (i + 1 < text.Length) return DocumentMessages.CellTextAfterQuote(source.Span(cell.Start + i + 1, cell.End));
            else return null;
        }

        return DocumentMessages.CellUnclosedQuote(source.Span(cell.Start, cell.Start + 1));
    }

    private CsvTable? Refuse(Diagnostic diagnostic)
    {
        context.Diagnostics.Add(diagnostic);
        return null;
    }

    private CsvRow? RefuseRow(Diagnostic diagnostic)
    {
        context.Diagnostics.Add(diagnostic);
        return null;
    }

    private char? RefuseSeparator(Diagnostic diagnostic)
    {
        context.Diagnostics.Add(diagnostic);
        return null;
    }
}
