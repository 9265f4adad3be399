using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting;

namespace ClearanceCheck.Cli.Tests.BadInputs;

/// <summary>Rows about what does not fit together, or can't be answered.</summary>
internal static partial class BadInputs
{
    private const string Script = "<script>alert(1)</script>{{ 6 * 7 }} \u202Egnirts";

    private static IEnumerable<BadInput> OfVehicle =>
    [
        new(15, "left-and-right-swapped", s =>
        {
            s.Change("inspection.yaml", "hub-left: [-612, 738, -402]", "hub-left: [-612, -738, -404]");
            s.Change("inspection.yaml", "hub-right: [-612, -738, -404]\n", "hub-right: [-612, 738, -402]\n");
            s.Change("inspection.yaml", "lower-link-left-frame: [288, 432, -232]", "lower-link-left-frame: [288, -432, -232]");
        }),
        BadInput.Changed(15, "one-sign-turned", "lower-link-left-axle: [-590, 505, -452]", "lower-link-left-axle: [-590, -505, -452]"),
        BadInput.Changed(16, "droop-above-ride", "rear-left: 742 mm", "rear-left: 624 mm"),
        new(17, "no-stop-and-no-hanging-state", s =>
        {
            foreach (string side in new[] { "left", "right" }) Without(s, $"  rear-shock-{side}:");
            s.Change("inspection.yaml", "free-length: 262 mm", "free-length: 420 mm");
        }, s => Hoses(s)),
        new(18, "hose-shorter-than-its-way", s => s.Change("inspection.yaml", "free-length: 262 mm", "free-length: 255 mm"), s => Hoses(s)),
        new(19, "point-repeated", s =>
        {
            s.Change("inspection.yaml", "      - [-420, 340, -96]\n", "      - [-420, 340, -96]\n      - [-420, 340, -96]\n");
            s.Change("inspection.yaml", "clips: [ 1, 2, 4, 6 ]", "clips: [ 1, 2, 5, 7 ]");
        }, Nothing),
        new(20, "hostile-name", s => s.Change("inspection.yaml", "name: Tailpipe over the axle", $"name: '{Script}'"), s => InReport(s, "gnirts")),
        new(20, "name-of-ten-thousand-characters", s => s.Change("inspection.yaml", "name: Tailpipe over the axle", "name: " + new string('x', 10_000)), Nothing),
        new(21, "formula-in-a-name", s =>
        {
            s.Change("inspection.yaml", "name: Left rear shock", "name: '=HYPERLINK(\"http://x\",\"y\")'");
        }, s => Cells(s)) { Options = ["--format", "csv,json"] },
        BadInput.Changed(29, "mirrored-hose", "    kind: brake-hose\n", "    kind: brake-hose\n    side: left\n"),
        BadInput.Changed(29, "mirrored-line", "    name: \"Brake line along the frame to the hose bracket\"\n", "    side: left\n"),
        BadInput.Changed(29, "mirrored-exhaust", "    kind: exhaust-pipe\n", "    kind: exhaust-pipe\n    side: left\n"),
        new(30, "shield-beside", s => s.Change("inspection.yaml", "  tailpipe:\n", """
              shield:
                kind: heat-shield
                name: Shield of the tank
                body: chassis
                thickness: 2 mm
                outline: [[900, 100, -100], [1100, 100, -100], [1100, 300, -100], [900, 300, -100]]
              tailpipe:

            """), s => string.Join('\n', Result(s).Findings.SelectMany(f => f.Shields).Distinct(StringComparer.Ordinal))),
    ];

    private static string Nothing(Workshop shop) => "";

    private static InspectionResult Result(Workshop shop) => FindingsJson.Read(shop.Read("out/findings.json"));

    /// <summary>The decision, what is open about hoses, and how much longer one has to be.</summary>
    private static string Hoses(Workshop shop)
    {
        InspectionResult result = Result(shop);
        IEnumerable<string> open = result.Findings.Where(f => f.Quantity.Id == "hose-slack" && f.Verdict != Verdict.Conforms)
            .Select(f => FormattableString.Invariant($"{f.Rule}: {f.Verdict} {f.Evidence?.Value:0.0} {f.Quantity.Unit} {f.Missing}").TrimEnd());
        IEnumerable<string> remedies = result.Decision.DoThis.Select(d => d.Text).Where(t => t.Contains("free length", StringComparison.Ordinal));
        return string.Join('\n', [result.Decision.Kind.ToString(), .. open, .. remedies]);
    }

    /// <summary>The lines of the report that hold a word; more than the text as shown would be markup.</summary>
    private static string InReport(Workshop shop, string word)
    {
        string report = shop.Read("out/report.html");
        report.ShouldNotContain("<script>alert");
        report.ShouldNotContain("\u202E");
        int at = report.IndexOf(word, StringComparison.Ordinal);
        return report[(at - 90)..(at + word.Length)].ReplaceLineEndings(" ");
    }

    /// <summary>The first cells of each line: those of words.</summary>
    private static string Cells(Workshop shop)
    {
        string table = shop.Read("out/travel.csv");
        table.ShouldNotContain("HYPERLINK");
        return string.Join('\n', table.Split('\n').Select(l => string.Join(',', l.Split(',').Take(4))));
    }

    private static void Without(Workshop shop, string part)
    {
        string text = shop.Read("inspection.yaml");
        int from = text.IndexOf(part, StringComparison.Ordinal), to = from + part.Length;
        while (text[to..].StartsWith("\n    ", StringComparison.Ordinal)) to = text.IndexOf('\n', to + 1);
        shop.Write("inspection.yaml", text.Remove(from, to + 1 - from));
    }
}
