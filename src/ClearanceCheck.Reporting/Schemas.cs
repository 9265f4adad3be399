using System.Collections.Immutable;
using ClearanceCheck.Reporting.Pages;

namespace ClearanceCheck.Reporting;

/// <summary>JSON Schemas (draft 2020-12) of what the program writes.</summary>
public static class Schemas
{
    /// <summary>The names that <see cref="Of"/> knows, sorted.</summary>
    public static ImmutableArray<string> Names { get; } =
    [
        .. typeof(Schemas).Assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal) && n.EndsWith(Suffix, StringComparison.Ordinal))
            .Select(n => n[Prefix.Length..^Suffix.Length]).Order(StringComparer.Ordinal),
    ];

    private const string Prefix = "schemas/";
    private const string Suffix = ".schema.json";

    /// <summary>The schema of a name, such as <c>findings</c>; null for an unknown name.</summary>
    public static string? Of(string name) => Names.Contains(name, StringComparer.Ordinal) ? EmbeddedText.Read(Prefix + name + Suffix) : null;
}
