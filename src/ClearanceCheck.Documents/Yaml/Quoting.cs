namespace ClearanceCheck.Documents.Yaml;

/// <summary>Writes a text in the quotes that change nothing in it.</summary>
internal static class Quoting
{
    /// <summary>Double quotes, or single ones where the text holds a double quote or a backslash.</summary>
    public static string Quote(string text) =>
        text.AsSpan().IndexOfAny('"', '\\') < 0 ? $"\"{text}\"" : $"'{text.Replace("'", "''", StringComparison.Ordinal)}'";
}
