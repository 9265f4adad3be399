using System.Buffers.Binary;
using System.Text;

namespace ClearanceCheck.Cli.Tests.BadInputs;

/// <summary>Rows about what lies beside the inspection file: meshes and rules.</summary>
internal static partial class BadInputs
{
    private const string Placing = "unit: mm, up: +z, forward: +x, ";

    private static IEnumerable<BadInput> Beside =>
    [
        new(23, "mesh-that-claims-too-much", s => WithScan(s, Stl(40_000_000, 0), Placing)),
        new(23, "mesh-cut-short", s => WithScan(s, Stl(12, 6), Placing)),
        new(23, "mesh-without-unit", s => WithScan(s, Stl(1, 1), "up: +z, forward: +x, ")),
        new(23, "mesh-without-up", s => WithScan(s, Stl(1, 1), "unit: mm, ")),
        OfRules("quantity-unknown", "quantity: gap", "quantity: gpa"),
        OfRules("limit-without-unit", "at-least: 25 mm", "at-least: 25"),
        OfRules("kind-unknown", "kind: [ brake-line ]", "kind: [ brakeline ]"),
        new(24, "exception-without-reason", s => Accept(s, "until: 2031-10-01")),
        new(24, "exception-past-its-day", s =>
        {
            s.Write("shop/shop.yaml", Accepting);
            Accept(s, "until: 2031-03-01, reason: Checked hot");
        }, s => Accepted(s)) { Options = ["--rules", "shop"] },
    ];

    private static BadInput OfRules(string name, string from, string to) => new(24, name, s => WriteRules(s, from, to), s => NotLoaded(s)) { Options = ["--rules", "shop"] };

    private static void WriteRules(Workshop shop, string from, string to)
    {
        string rules = ShopRules.Write("line-near-exhaust", "25 mm", "warning").ReplaceLineEndings("\n");
        rules.ShouldContain(from);
        shop.Write("shop/rules.yaml", rules.Replace(from, to, StringComparison.Ordinal) + SecondRule);
    }

    private static string NotLoaded(Workshop shop) =>
        $"on top of the report: {shop.Read("out/report.html").Contains("1 rule not loaded", StringComparison.Ordinal)}\nchecked all the same: {Result(shop).Findings.Any(f => f.Rule == "line-near-tube")}";

    private const string SecondRule = """
          line-near-tube: { quantity: gap, part: { kind: [ brake-line ] }, to: { kind: [ axle-tube ] }, limit: { at-least: 1 mm }, severity: notice, source: { basis: shop } }

        """;

    private const string Accepting = """
        format: 1
        overlay: lowland-garage
        version: 1.0.0
        on: { library: base, from: 1.0.0, before: 2.0.0 }
        change: { brake-line-near-exhaust: { accept: { floor: 1 mm, days: 300 }, because: Ours, by: R. Amsel, until: 2031-12-31 } }

        """;

    private static void Accept(Workshop shop, string terms) => shop.Write("inspection.yaml", shop.Read("inspection.yaml")
        + $"accepted:\n  line-by-pipe: {{ rule: brake-line-near-exhaust, parts: [ axle-brake-line, tailpipe ], floor: 2 mm, by: R. Amsel, {terms} }}\n");

    private static string Accepted(Workshop shop) => string.Join('\n', Result(shop).Findings.Where(f => f.Accepted is not null).Select(f => $"{f.Rule}: {f.Verdict}, open {f.IsOpen}: {f.Accepted!.Void}"));

    private static void WithScan(Workshop shop, byte[] mesh, string placing)
    {
        File.WriteAllBytes(shop.At("gearbox.stl"), mesh);
        shop.Change("inspection.yaml", "  tailpipe:\n", $"  gearbox: {{ kind: gearbox, body: chassis, scan: {{ file: gearbox.stl, {placing}size: {{ x: 400 mm, within: 10 mm }}, at: [500, 20, -100] }} }}\n  tailpipe:\n");
    }

    /// <summary>A binary STL that claims some triangles and holds others.</summary>
    private static byte[] Stl(int claimed, int held)
    {
        byte[] bytes = new byte[84 + (50 * held)];
        Encoding.ASCII.GetBytes("made by a test").CopyTo(bytes, 0);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(80), claimed);
        return bytes;
    }
}
