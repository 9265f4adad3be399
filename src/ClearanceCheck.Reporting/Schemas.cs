using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
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

    private const string PartSuffix = ".defs.json";

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The schema of a name, such as <c>findings</c>; null for an unknown name.</summary>
    /// <remarks>Definitions that stand in files of their own, <c>findings.travel.defs.json</c>, are put among its <c>$defs</c>.</remarks>
    public static string? Of(string name)
    {
        if (!Names.Contains(name, StringComparer.Ordinal)) return null;
        string text = EmbeddedText.Read(Prefix + name + Suffix);
        string[] parts =
        [
            .. typeof(Schemas).Assembly.GetManifestResourceNames()
                .Where(n => n.StartsWith($"{Prefix}{name}.", StringComparison.Ordinal) && n.EndsWith(PartSuffix, StringComparison.Ordinal)).Order(StringComparer.Ordinal),
        ];
        if (parts.Length == 0) return text;
        JsonNode whole = JsonNode.Parse(text)!;
        foreach ((string definition, JsonNode? schema) in parts.SelectMany(p => JsonNode.Parse(EmbeddedText.Read(p))!.AsObject())) whole["$defs"]!.AsObject().Add(definition, schema!.DeepClone());
        return whole.ToJsonString(Indented) + "\n";
    }
}
