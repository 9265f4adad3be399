using System.Text;
using ClearanceCheck.Documents.Yaml;
using CsCheck;

namespace ClearanceCheck.Documents.Tests.Yaml;

public sealed class YamlLimitTests
{
    private const string AliasBomb = """
        a: &a [x, x, x, x, x, x, x, x, x]
        b: &b [*a, *a, *a, *a, *a, *a, *a, *a, *a]
        c: &c [*b, *b, *b, *b, *b, *b, *b, *b, *b]
        d: &d [*c, *c, *c, *c, *c, *c, *c, *c, *c]
        e: &e [*d, *d, *d, *d, *d, *d, *d, *d, *d]
        f: &f [*e, *e, *e, *e, *e, *e, *e, *e, *e]
        """;

    [Fact]
    public void An_alias_bomb_is_refused_before_it_grows()
    {
        var before = GC.GetAllocatedBytesForCurrentThread();

        var diagnostics = Read(AliasBomb);

        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBeLessThan(50_000_000);
        diagnostics.Ordered.Count(item => item.Id == "doc.alias").ShouldBe(45);
        diagnostics.Ordered.Count(item => item.Id == "doc.anchor").ShouldBe(6);
        DiagnosticRenderer.Render(diagnostics).ShouldEndWith("\nand 31 more\n");
    }

    [Theory]
    [InlineData("[", 20_000)]
    [InlineData("- ", 20_000)]
    [InlineData("{a: ", 20_000)]
    public void Nesting_twenty_thousand_deep_is_refused_without_a_stack_overflow(string level, int depth)
    {
        var diagnostics = Read("a:\n " + string.Concat(Enumerable.Repeat(level, depth)));

        var fault = diagnostics.Ordered.ShouldHaveSingleItem();
        fault.Id.ShouldBe("doc.too-deep");
        fault.Message.ShouldBe("The file is nested deeper than 40 levels at line 2. Reading ended here; what follows is not checked yet.");
    }

    [Fact]
    public void Forty_levels_are_read_and_forty_one_are_not()
    {
        string Nested(int levels) => "a: " + new string('[', levels - 2) + "1" + new string(']', levels - 2);

        Read(Nested(40)).Count.ShouldBe(0);
        Read(Nested(41)).Ordered.ShouldHaveSingleItem().Id.ShouldBe("doc.too-deep");
    }

    [Fact]
    public void More_than_twenty_thousand_values_are_refused()
    {
        string List(int items) => "a: [" + string.Join(", ", Enumerable.Repeat("1", items)) + "]";

        Read(List(19_997)).Count.ShouldBe(0);
        Read(List(19_998)).Ordered.ShouldHaveSingleItem().Id.ShouldBe("doc.too-many-values");
    }

    [Fact]
    public void More_than_two_megabytes_are_refused_before_they_are_parsed()
    {
        Golden.Check(
            () => Golden.WithIds(Read(new string('[', DocumentLimits.MostText + 1))),
            """
            t.yaml:1:1: error: The file has more than 2 MB of text, and was not read.
            help: Check that it is the right file; scans and pictures stand in files of their own.
            doc.too-long
            """);
        Golden.Bytes(
            new byte[100_000_000],
            """
            t.yaml:1:1: error: The file has more than 2 MB of text, and was not read.
            help: Check that it is the right file; scans and pictures stand in files of their own.
            doc.too-long
            """);
    }

    /// <summary>A list on one line of two megabytes took half a minute while every value copied the rest of its line (2026-11).</summary>
    [Theory]
    [InlineData("a: [", "1,2, ")]
    [InlineData("a: ", "x y # ")]
    [InlineData("", "#\n")]
    [InlineData("", "a:\n")]
    [InlineData("a: ", "b: ")]
    [InlineData("a: ", "\"")]
    [InlineData("", "a:b ")]
    [InlineData("a: [", "a:b, ")]
    public void Two_megabytes_of_anything_are_dealt_with_without_growing_out_of_hand(string start, string piece)
    {
        var text = start + string.Concat(Enumerable.Repeat(piece, (DocumentLimits.MostText - start.Length) / piece.Length));
        var before = GC.GetAllocatedBytesForCurrentThread();

        DiagnosticRenderer.Render(Read(text)).ShouldNotBeEmpty();

        // All that was ever allocated, not what is held at once: work that grows with the square of the text would pass this by far.
        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBeLessThan(3_000_000_000);
    }

    [Fact]
    public void Random_text_never_throws_and_every_fault_stands_inside_it()
    {
        string[] words = ["a", ": ", ":", "- ", "\n", "  ", "[", "]", "{", "}", ", ", ",", "'", "\"", "#", " # ", "&x ", "*x", "!t ", "|", ">", "%", "@", "1", "\t", "? ", "---\n", "...\n", "\r\n", "\\", "~", "\u202E", "\uD800", "\u2028", "é", "=", "`"];
        var pieces = Gen.Int[0, words.Length - 1].Select(i => words[i]);

        pieces.Array[0, 20].Sample(
            parts =>
            {
                var text = string.Concat(parts);

                var diagnostics = new DiagnosticBag();
                var root = YamlText.Read("t.yaml", text, diagnostics);

                (root is not null || diagnostics.HasErrors).ShouldBeTrue(text);
                diagnostics.Ordered.ShouldAllBe(item => item.Span.Start >= 0 && item.Span.End <= text.Length);
                foreach (var item in diagnostics.Ordered) DiagnosticRenderer.Render(item).Split('\n').Length.ShouldBeLessThanOrEqualTo(6, text);
            },
            iter: 20_000);
    }

    [Fact]
    public void Random_bytes_never_throw() =>
        Gen.Byte.Array[0, 60].Sample(
            content =>
            {
                var diagnostics = new DiagnosticBag();

                var root = YamlText.Read("t.yaml", content, diagnostics);

                (root is not null || diagnostics.HasErrors).ShouldBeTrue();
                DiagnosticRenderer.Render(diagnostics);
            },
            iter: 5000);

    [Fact]
    public void A_byte_order_mark_is_accepted_and_does_not_shift_columns()
    {
        Golden.Bytes([0xEF, 0xBB, 0xBF, .. "format: 1\n"u8], "");
        Golden.Bytes(
            [0xEF, 0xBB, 0xBF, .. "a: ~"u8],
            """
            t.yaml:1:4: error: `~` means "no value" to YAML.
              a: ~
                 ^
            help: Leave the key out, or put the word in quotes if it is text.
            doc.null
            """);
    }

    [Fact]
    public void Utf_16_is_named_with_and_without_its_mark()
    {
        const string expected = """
            t.yaml:1:1: error: The file is written in UTF-16.
            help: Save it as UTF-8.
            doc.encoding
            """;

        Golden.Bytes([0xFF, 0xFE, .. Encoding.Unicode.GetBytes("format: 1")], expected);
        Golden.Bytes([0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes("format: 1")], expected);
        Golden.Bytes(Encoding.Unicode.GetBytes("format: 1"), expected);
        Golden.Bytes(Encoding.BigEndianUnicode.GetBytes("format: 1"), expected);
    }

    [Fact]
    public void Utf_32_is_named() =>
        Golden.Bytes(
            [0xFF, 0xFE, 0, 0, .. Encoding.UTF32.GetBytes("format: 1")],
            """
            t.yaml:1:1: error: The file is written in UTF-32.
            help: Save it as UTF-8.
            doc.encoding
            """);

    [Fact]
    public void A_binary_file_is_refused() =>
        Golden.Bytes(
            [0x50, 0x4B, 3, 4, 20, 0, 8, 8],
            """
            t.yaml:1:1: error: The file is not text: it holds NUL characters.
            help: Check that it is the right file; save it as UTF-8 text.
            doc.binary
            """);

    [Fact]
    public void A_text_in_another_encoding_is_marked_at_its_first_broken_character() =>
        Golden.Bytes(
            [.. "format: 1\nname: Gel"u8, 0xE4, .. "nde\n"u8],
            """
            t.yaml:2:10: error: The file is not UTF-8 text: what follows here cannot be decoded.
              name: Gel
                       ^
            help: Save it as UTF-8.
            doc.not-utf8
            """);

    private static DiagnosticBag Read(string text)
    {
        var diagnostics = new DiagnosticBag();
        YamlText.Read("t.yaml", text, diagnostics);
        return diagnostics;
    }
}
