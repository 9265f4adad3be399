namespace ClearanceCheck.Documents.Nodes;

/// <summary>A value of a file that knows where it stands.</summary>
public abstract class Node
{
    private protected Node(string path, SourceSpan span, SourceSpan? heading)
    {
        Path = path;
        Span = span;
        Heading = heading ?? span.Source.Span(span.Start, span.Start);
    }

    /// <summary>Keys from the top of the file, list items by number from 1: <c>parts/rear-hose/upper/at/3</c>; empty for the whole file.</summary>
    public string Path { get; }

    /// <summary>Where the value stands.</summary>
    public SourceSpan Span { get; }

    /// <summary>The key or header that names the value; else where the value begins.</summary>
    public SourceSpan Heading { get; }

    /// <summary>What a message calls this value: its key, or its number in a list.</summary>
    public string Label
    {
        get
        {
            var parts = Path.Split('/');
            if (Path.Length == 0) return "the file";
            if (parts.Length == 1 || !IsNumber(parts[^1])) return $"`{parts[^1]}`";
            return parts.Length > 2 && IsNumber(parts[^2]) ? $"number {parts[^1]} in item {parts[^2]} of `{parts[^3]}`" : $"number {parts[^1]} of `{parts[^2]}`";
        }
    }

    private static bool IsNumber(string part) => part.Length > 0 && part.All(char.IsAsciiDigit);

    /// <summary>The path of a key or list item below this one's.</summary>
    internal static string Join(string path, string last) => path.Length == 0 ? last : path + "/" + last;
}
