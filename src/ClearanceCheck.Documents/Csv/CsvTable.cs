namespace ClearanceCheck.Documents.Csv;

/// <summary>A table with a header row.</summary>
/// <param name="Columns">Names of the columns in file order.</param>
/// <param name="Rows">The rows that could be read.</param>
public sealed record CsvTable(IReadOnlyList<string> Columns, IReadOnlyList<CsvRow> Rows);
