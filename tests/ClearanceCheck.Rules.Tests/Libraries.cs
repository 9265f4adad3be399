using System.Text;
using ClearanceCheck.Documents;
using ClearanceCheck.Quantities;

namespace ClearanceCheck.Rules.Tests;

/// <summary>Small rule files for tests, and the base library as loaded.</summary>
internal static class Libraries
{
    /// <summary>The five lines that a shop has to write, and whose limit the base library does not have.</summary>
    public const string Shop = """
        format: 1
        library: the-shop
        version: 1.0.0
        rules:
          line-near-pipe:
            quantity: gap
            part: { kind: [ brake-line ] }
            to: { group: [ hot-exhaust ] }
            limit: { at-least: 60 mm }
            severity: warning
            source: { basis: shop }
          hose-short:
            quantity: hose-slack
            part: { kind: [ brake-hose ] }
            limit: { at-least: 7 % }
            severity: caution
            source: { basis: shop }

        """;

    public static RuleLibrary Base { get; } = Read([.. BaseLibrary.Files]).Library!;

    public static RuleFile File(string name, string text) => new(name, Encoding.UTF8.GetBytes(text));

    public static (RuleLibrary? Library, DiagnosticBag Diagnostics) Read(params IReadOnlyList<RuleFile> files) =>
        RuleLibraryReader.Read(files, QuantityCatalogue.Standard);

    public static (RuleLibrary? Library, DiagnosticBag Diagnostics) Read(string text) => Read(File("shop.yaml", text));

    /// <summary>The shop's file with one stretch of text changed.</summary>
    public static string Changed(string from, string to)
    {
        string text = Shop.ReplaceLineEndings("\n");
        int at = text.IndexOf(from, StringComparison.Ordinal);
        at.ShouldBeGreaterThanOrEqualTo(0, from);
        return string.Concat(text.AsSpan(0, at), to, text.AsSpan(at + from.Length));
    }

    /// <summary>All that is said about files: messages, their ids, and what was not loaded.</summary>
    public static string Said(params RuleFile[] files)
    {
        (RuleLibrary? library, DiagnosticBag diagnostics) = Read(files);
        string ids = string.Join(' ', diagnostics.Ordered.Select(d => d.Id));
        string loaded = library is null ? "no library" : $"loaded: {string.Join(' ', library.Rules.Select(r => r.Id))}";
        return $"{DiagnosticRenderer.Render(diagnostics)}{ids}\n{loaded}\n{string.Join('\n', library?.NotLoaded ?? [])}".TrimEnd('\n');
    }
}
