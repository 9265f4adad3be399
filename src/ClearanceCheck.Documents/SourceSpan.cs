namespace ClearanceCheck.Documents;

/// <summary>A stretch of a file's text; lines and columns count from 1.</summary>
/// <param name="Source">The file.</param>
/// <param name="Start">Offset of the first character.</param>
/// <param name="End">Offset just after the last character.</param>
public readonly record struct SourceSpan(SourceText Source, int Start, int End)
{
    public string FileName => Source.FileName;

    public int Line => Source.LineOf(Start);

    public int Column => Source.ColumnOf(Start);

    public int EndLine => Source.LineOf(End);

    public int EndColumn => Source.ColumnOf(End);

    /// <summary>The characters of the span.</summary>
    public string Text => Source.Text[Start..End];

    /// <summary><c>file:line:column</c></summary>
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{FileName}:{Line}:{Column}");
}
