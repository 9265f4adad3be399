using System.Text;

namespace ClearanceCheck.Cli.Tests.BadInputs;

/// <summary>Rows about the text itself.</summary>
internal static partial class BadInputs
{
    private static IEnumerable<BadInput> Text =>
    [
        BadInput.Changed(1, "tab", "  hanging: {", "\thanging: {"),
        BadInput.Changed(2, "no-space-after-colon", "    name: Left rear shock", "    name:Left rear shock"),
        BadInput.Changed(3, "unclosed-quote", "name: Tailpipe over the axle", "name: \"Tailpipe over the axle"),
        BadInput.Changed(3, "inch-in-quotes", "outside-diameter: 2-1/2 in", "outside-diameter: \"2-1/2\" in"),
        BadInput.Changed(4, "key-twice", "    free-length: 262 mm", "    free-length: 280 mm\n    free-length: 262 mm"),
        BadInput.Changed(5, "misspelt-key", "free-length: 262 mm", "free-lenght: 262 mm"),
        BadInput.Whole(6, "alias-bomb", Encoding.UTF8.GetBytes("a: &a [x, x, x, x, x, x, x, x, x]\nb: &b [*a, *a, *a, *a, *a, *a, *a, *a, *a]\nc: &c [*b, *b, *b, *b, *b, *b, *b, *b, *b]\n")),
        BadInput.Whole(7, "nested-too-deep", Encoding.UTF8.GetBytes("format: 1\ndatum: " + new string('[', 20_000) + "\n")),
        BadInput.Changed(26, "decimal-comma-in-a-list", "[-612, 738, -402]", "[-612,5, 738, -402]"),
        BadInput.Changed(26, "decimal-comma-among-three", "at: [-482, 112, -120] }", "at: [-482,5, -120] }"),
        BadInput.Changed(27, "number-sign-in-prose", "name: Tailpipe over the axle", "name: Tailpipe clip #2 over the axle"),
        BadInput.Changed(27, "colon-in-prose", "name: Tailpipe over the axle", "name: Tailpipe: over the axle"),
        BadInput.Changed(27, "begins-with-greater-than", "name: Tailpipe over the axle", "name: > 10 mm of play"),
        BadInput.Changed(27, "begins-with-bar", "name: Tailpipe over the axle", "name: | left one"),
        BadInput.Changed(27, "begins-with-percent", "name: Tailpipe over the axle", "name: %left one"),
        BadInput.Changed(27, "begins-with-at", "name: Tailpipe over the axle", "name: @left one"),
        BadInput.Changed(28, "empty-key", "brakes-bled: { is: ok,", "brakes-bled: { is: ok, left side,"),
        BadInput.Changed(28, "no-space-before-bracket", "{ body: chassis, at: [-482, 112, -120] }", "{ body: chassis, at:[-482, 112, -120] }"),
        BadInput.Changed(28, "tag", "name: Tailpipe over the axle", "name: !x Tailpipe"),
        BadInput.Whole(25, "empty", []),
        new(25, "byte-order-mark", s => File.WriteAllBytes(s.At("inspection.yaml"), [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(s.Read("inspection.yaml").Replace("layout: three-link", "layout: three-lnk", StringComparison.Ordinal))])),
        BadInput.Whole(25, "utf-16", [0xFF, 0xFE, .. Encoding.Unicode.GetBytes("format: 1\n")]),
        BadInput.Whole(25, "two-documents", Encoding.UTF8.GetBytes("format: 1\n---\nformat: 1\n")),
        BadInput.Whole(25, "binary", [0x7F, 0x45, 0x4C, 0x46, 0, 0, 1, 2, 3]),
        new(25, "hundred-megabytes", s => { using FileStream file = File.Create(s.At("inspection.yaml")); file.SetLength(100_000_000); }),
    ];
}
