using System.Globalization;
using ClearanceCheck.Documents;
using ClearanceCheck.Quantities;

namespace ClearanceCheck.Rules.Tests;

/// <summary>A set of broken rule files with everything that is said about them, one text file each: <c>&gt;&gt;&gt; folder/file.yaml</c> begins a file, <c>&gt;&gt;&gt; said</c> what is expected.</summary>
internal sealed record BrokenSet(IReadOnlyList<IReadOnlyList<RuleFile>> Layers, DateOnly? Today, string Input, string Said)
{
    private const string Mark = ">>> ", SaidMark = ">>> said\n", TodayMark = ">>> today ";

    public static QuantityCatalogue Quantities { get; } = new([.. QuantityCatalogue.Standard.All, new LargestTestQuantity(), new BothSidesTestQuantity()]);

    public static string Folder => Path.Combine(AppContext.BaseDirectory, "Broken");

    public static BrokenSet Read(string name)
    {
        string text = File.ReadAllText(Path.Combine(Folder, name + ".txt")).ReplaceLineEndings("\n");
        int said = text.IndexOf(SaidMark, StringComparison.Ordinal);
        string input = said < 0 ? text : text[..said];
        DateOnly? today = null;
        var layers = new List<(string Folder, List<RuleFile> Files)>();
        foreach (string block in input.Split("\n" + Mark, StringSplitOptions.RemoveEmptyEntries).Select((b, i) => i == 0 ? b : Mark + b))
        {
            string[] lines = block.Split('\n', 2);
            if (lines[0].StartsWith(TodayMark, StringComparison.Ordinal))
            {
                today = DateOnly.ParseExact(lines[0][TodayMark.Length..], "yyyy-MM-dd", CultureInfo.InvariantCulture);
                continue;
            }

            string[] path = lines[0][Mark.Length..].Split('/');
            if (layers.Count == 0 || layers[^1].Folder != path[0]) layers.Add((path[0], []));
            layers[^1].Files.Add(Libraries.File(path[1], lines[1] + "\n"));
        }

        return new BrokenSet([.. layers.Select(l => l.Files)], today, input, said < 0 ? "" : text[(said + SaidMark.Length)..].TrimEnd('\n'));
    }

    public (RuleLibrary? Library, DiagnosticBag Diagnostics) Load() => RuleSetReader.Read(Layers, [], Quantities, Today);

    /// <summary>Messages, their ids, what was loaded, what was not, and what overlays changed.</summary>
    public string Say()
    {
        (RuleLibrary? library, DiagnosticBag diagnostics) = Load();
        string ids = string.Join(' ', diagnostics.Ordered.Select(d => d.Id));
        string loaded = library is null ? "no library" : $"loaded: {string.Join(' ', library.Rules.Select(r => r.Id))}";
        IEnumerable<string> changes = library?.Changes.Select(c => $"{c.Kind} {c.Rule}") ?? [];
        return string.Join('\n', [$"{DiagnosticRenderer.Render(diagnostics)}{ids}", loaded, .. library?.NotLoaded ?? [], .. changes]).TrimEnd('\n');
    }

    public static string WithSaid(string input, string said) => input.TrimEnd('\n') + "\n" + SaidMark + said + "\n";
}
