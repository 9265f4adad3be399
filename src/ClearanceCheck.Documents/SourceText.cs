namespace ClearanceCheck.Documents;

/// <summary>The text of one file with its name and the places of its lines.</summary>
public sealed class SourceText
{
    private readonly int[] lineStarts;

    /// <summary>Wraps a text; lines end with LF, CR LF or CR.</summary>
    public SourceText(string fileName, string text)
    {
        FileName = fileName;
        Text = text;
        lineStarts = FindLines(text);
    }

    /// <summary>The name as it is shown in messages.</summary>
    public string FileName { get; }

    /// <summary>The whole text.</summary>
    public string Text { get; }

    /// <summary>Number of lines, at least 1.</summary>
    public int LineCount => lineStarts.Length;

    /// <summary>The 1-based line of an offset.</summary>
    public int LineOf(int offset)
    {
        var found = Array.BinarySearch(lineStarts, offset);
        return found >= 0 ? found + 1 : ~found;
    }

    /// <summary>The 1-based column of an offset, counted in code points.</summary>
    public int ColumnOf(int offset)
    {
        var column = 1;
        for (var i = StartOf(LineOf(offset)); i < offset && i < Text.Length; i++)
        {
            if (!char.IsLowSurrogate(Text[i])) column++;
        }

        return column;
    }

    /// <summary>The offset at which a 1-based line starts.</summary>
    public int StartOf(int line) => lineStarts[line - 1];

    /// <summary>The offset just after the last character of a 1-based line, its line break left out.</summary>
    public int EndOf(int line)
    {
        var end = line < LineCount ? lineStarts[line] : Text.Length;
        while (end > StartOf(line) && Text[end - 1] is '\n' or '\r') end--;
        return end;
    }

    /// <summary>The text of a 1-based line without its line break.</summary>
    public string Line(int line) => Text[StartOf(line)..EndOf(line)];

    /// <summary>A span of this text, cut to its length.</summary>
    public SourceSpan Span(int start, int end)
    {
        var from = Math.Clamp(start, 0, Text.Length);
        return new SourceSpan(this, from, Math.Clamp(end, from, Text.Length));
    }

    /// <summary>The character at an offset, or NUL outside the text.</summary>
    internal char At(int offset) => (uint)offset < (uint)Text.Length ? Text[offset] : '\0';

    private static int[] FindLines(string text)
    {
        var starts = new List<int> { 0 };
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n'))) starts.Add(i + 1);
        }

        return [.. starts];
    }
}
