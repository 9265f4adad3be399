using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;

namespace ClearanceCheck.Documents.Csv;

/// <summary>A row of a table; its cells are read like the values of a map.</summary>
public sealed class CsvRow
{
    private readonly Dictionary<string, ScalarNode> cells;
    private readonly ReadingContext context;

    internal CsvRow(SourceSpan span, Dictionary<string, ScalarNode> cells, ReadingContext context)
    {
        Span = span;
        this.cells = cells;
        this.context = context;
    }

    /// <summary>Where the row stands.</summary>
    public SourceSpan Span { get; }

    /// <summary>A cell that may be empty or whose column may be missing; absent then.</summary>
    public Field Optional(string column) =>
        new(cells.GetValueOrDefault(column) is { Text.Length: > 0 } cell ? cell : null, context);

    /// <summary>A cell that has to be filled; an empty one is reported.</summary>
    /// <param name="column">The column's name.</param>
    /// <param name="what">What it is, a phrase without a full stop.</param>
    public Field Required(string column, string what)
    {
        var field = Optional(column);
        if (!field.IsPresent) context.Diagnostics.Add(DocumentMessages.EmptyCell(cells.TryGetValue(column, out var cell) ? cell.Span : Span, column, what));
        return field;
    }
}
