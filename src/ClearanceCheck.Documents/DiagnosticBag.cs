namespace ClearanceCheck.Documents;

/// <summary>Collects what is found wrong while files are read.</summary>
public sealed class DiagnosticBag
{
    private readonly List<Diagnostic> items = [];

    /// <summary>Whether any fault keeps a file from being used.</summary>
    public bool HasErrors => items.Exists(item => item.Severity == Severity.Error);

    public int Count => items.Count;

    /// <summary>All diagnostics: files in the order in which they first had one, places in file order.</summary>
    public IReadOnlyList<Diagnostic> Ordered
    {
        get
        {
            var files = items.Select(item => item.Span.FileName).Distinct(StringComparer.Ordinal).ToList();
            return [.. items.OrderBy(item => files.IndexOf(item.Span.FileName)).ThenBy(item => item.Span.Start)];
        }
    }

    public void Add(Diagnostic diagnostic) => items.Add(diagnostic);

    /// <summary>When the fault found last ends just where the parser gave up, it was the cause: it then says that reading ended, and nothing is to be added.</summary>
    internal bool EndReadingAt(int offset)
    {
        if (items.Count == 0 || items[^1].Id != DocumentMessages.MissingSpaceId || items[^1].Span.End != offset) return false;
        items[^1] = DocumentMessages.EndReading(items[^1]);
        return true;
    }

    public void AddRange(IEnumerable<Diagnostic> diagnostics) => items.AddRange(diagnostics);
}
