namespace ClearanceCheck.Documents.Csv;

/// <summary>The columns of a table: those that have to be there and those that may.</summary>
public sealed record CsvColumns(IReadOnlyList<string> Required, IReadOnlyList<string> Optional)
{
    /// <summary>All names in the order they are offered.</summary>
    public IEnumerable<string> All => Required.Concat(Optional);
}
