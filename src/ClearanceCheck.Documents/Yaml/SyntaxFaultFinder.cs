namespace ClearanceCheck.Documents.Yaml;

/// <summary>Finds out from the text what a person did where the parser only says that it can't go on.</summary>
internal sealed class SyntaxFaultFinder
{
    private readonly SourceText source;
    private readonly int at;
    private readonly bool isToken;
    private readonly bool isLost;
    private readonly SourceSpan? lastScalar;
    private readonly int? openBracket;

    /// <param name="source">The file.</param>
    /// <param name="at">Where the parser gave up.</param>
    /// <param name="isToken">Whether it gave up inside a word or quote, not between them.</param>
    /// <param name="isLost">Whether it gave no place, so that <paramref name="at"/> is only the last thing it had read.</param>
    /// <param name="lastScalar">The last value it had read.</param>
    /// <param name="openBracket">The innermost bracket that is open.</param>
    public SyntaxFaultFinder(SourceText source, int at, bool isToken, bool isLost, SourceSpan? lastScalar, int? openBracket)
    {
        this.source = source;
        this.at = Math.Min(at, source.Text.Length);
        this.isToken = isToken;
        this.isLost = isLost;
        this.lastScalar = lastScalar;
        this.openBracket = openBracket;
    }

    private int Line => source.LineOf(at);

    public Diagnostic Find()
    {
        var fault = Lost() ?? Quote() ?? KeyWithoutSpace() ?? AfterQuote() ?? Mark() ?? Colon() ?? Bracket() ?? Shape() ?? DocumentMessages.Unreadable(OneChar(at));
        return DocumentMessages.EndReading(fault);
    }

    private Diagnostic? Lost() => isLost && openBracket is { } open ? Unclosed(open) : null;

    private Diagnostic Unclosed(int open) => DocumentMessages.UnclosedBracket(OneChar(open), source.At(open) == '[' ? ']' : '}');

    private Diagnostic? Quote()
    {
        if (!isToken || source.At(at) is not ('"' or '\'')) return null;
        var lineEnd = source.EndOf(Line);
        var closing = source.Text.AsSpan(at + 1, Math.Max(0, lineEnd - at - 1)).LastIndexOf(source.At(at));
        return closing >= 0 && source.At(at) == '"' && HasBackslash(at, lineEnd)
            ? DocumentMessages.BadEscape(source.Span(at, lineEnd))
            : DocumentMessages.UnclosedQuote(OneChar(at));
    }

    private bool HasBackslash(int from, int to) => source.Text.AsSpan(from, to - from).Contains('\\');

    private Diagnostic? KeyWithoutSpace()
    {
        if (lastScalar is { } last && last.End > last.Start + 1 && source.At(last.End - 1) == ':' && char.IsLetter(source.At(last.Start)))
        {
            return MissingSpace.InSource(source, last.Start, last.Text[..^1]);
        }

        for (var line = Math.Max(1, lastScalar?.EndLine ?? 1); line <= Line; line++)
        {
            if (MissingSpace.InLine(source, line) is { } missing) return missing;
        }

        return null;
    }

    private Diagnostic? AfterQuote()
    {
        var before = at - 1;
        while (before >= 0 && source.At(before) == ' ') before--;
        if (source.At(before) is not ('"' or '\'') || before < source.StartOf(Line)) return null;
        if (lastScalar is { } last && last.End == before + 1 && source.At(last.Start) is '"' or '\'')
        {
            if (last.Line != last.EndLine) return DocumentMessages.UnclosedQuote(OneChar(last.Start));
            return TextAfterQuote(last.Start);
        }

        var opening = before == 0 ? -1 : source.Text.LastIndexOf(source.At(before), before - 1);
        return opening < source.StartOf(Line) ? null : TextAfterQuote(opening);
    }

    private Diagnostic? TextAfterQuote(int opening)
    {
        var end = at;
        var lineEnd = source.EndOf(Line);
        while (end < lineEnd && source.At(end) is not (',' or '}' or ']' or '#')) end++;
        if (end <= at) return null;
        var whole = source.Text[opening..end].TrimEnd();
        var quote = whole[..1];
        var isEnclosed = whole.Length > 2 && whole[^1] == whole[0];
        var bare = isEnclosed ? whole[1..^1] : whole.Replace(quote, "", StringComparison.Ordinal);
        return DocumentMessages.TextAfterQuote(source.Span(at, opening + whole.Length), bare, Quoting.Quote(bare));
    }

    private Diagnostic? Mark()
    {
        var rest = source.Text[at..Math.Max(at, source.EndOf(Line))];
        return source.At(at) is '>' or '|' or '%' or '@' or '`' or '*' or '&' or '!'
            ? DocumentMessages.ReservedStart(OneChar(at), Quoting.Quote(rest.TrimEnd()))
            : null;
    }

    private Diagnostic? Colon()
    {
        if (source.At(at) != ':') return null;
        var lineStart = source.StartOf(Line);
        var before = source.Text[lineStart..at];
        var first = before.IndexOf(": ", StringComparison.Ordinal);
        if (before.Trim(' ', '-').Trim().Length == 0) return DocumentMessages.EmptyKey(OneChar(at));
        if (first < 0) return DocumentMessages.TooDeepIndent(source.Span(lineStart, lineStart + before.Length - before.TrimStart().Length), before.Trim());
        var (from, to) = openBracket is null ? (lineStart, source.EndOf(Line)) : EntryInBrackets(lineStart);
        var entry = source.Text[from..to].Trim(' ', '-');
        var colon = entry.IndexOf(": ", StringComparison.Ordinal);
        return DocumentMessages.ColonInProse(OneChar(at), colon < 0 ? Quoting.Quote(entry) : entry[..colon] + ": " + Quoting.Quote(entry[(colon + 2)..].Trim()));
    }

    /// <summary>The entry around the fault: from the comma or bracket before it to the one after it.</summary>
    private (int From, int To) EntryInBrackets(int lineStart)
    {
        var before = source.Text.AsSpan(lineStart, at - lineStart).LastIndexOfAny('{', '[', ',');
        var after = source.Text.AsSpan(at, source.EndOf(Line) - at).IndexOfAny('}', ']', ',');
        return (lineStart + before + 1, after < 0 ? source.EndOf(Line) : at + after);
    }

    private Diagnostic? Bracket()
    {
        if (openBracket is { } open)
        {
            var isElsewhere = source.LineOf(open) != Line || source.Text.AsSpan(at).Trim().IsEmpty;
            if (isElsewhere) return Unclosed(open);
            if (source.At(at) == ',') return DocumentMessages.EmptyBetweenCommas(OneChar(at));
            if (source.At(at) is ']' or '}') return DocumentMessages.WrongBracket(OneChar(at), OneChar(open));
            return DocumentMessages.MissingComma(OneChar(at));
        }

        return source.At(at) switch
        {
            ']' or '}' => DocumentMessages.ExtraBracket(OneChar(at)),
            ',' => DocumentMessages.ReservedStart(OneChar(at), Quoting.Quote(source.Text[at..source.EndOf(Line)].TrimEnd())),
            _ => null,
        };
    }

    private Diagnostic? Shape()
    {
        var lineStart = source.StartOf(Line);
        var line = source.Line(Line);
        var indent = line.Length - line.TrimStart(' ').Length;
        if (source.At(at) == '-' && at > lineStart + indent) return DocumentMessages.ListOnKeyLine(OneChar(at));
        if (at >= lineStart + line.TrimEnd().Length) return null;
        if (at > lineStart + indent) return DocumentMessages.TextAfterValue(source.Span(at, lineStart + line.TrimEnd().Length));
        if (line.TrimStart().StartsWith("- ", StringComparison.Ordinal)) return DocumentMessages.ItemAmongKeys(OneChar(at));
        return line.Contains(':', StringComparison.Ordinal)
            ? DocumentMessages.UnevenIndent(source.Span(lineStart, lineStart + indent))
            : DocumentMessages.NoColon(source.Span(at, lineStart + line.TrimEnd().Length));
    }

    private SourceSpan OneChar(int offset) => source.Span(offset, offset + 1);
}
