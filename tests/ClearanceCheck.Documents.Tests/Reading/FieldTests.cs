using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Documents.Yaml;

namespace ClearanceCheck.Documents.Tests.Reading;

public sealed class FieldTests
{
    [Fact]
    public void Every_kind_of_value_is_read_under_both_cultures()
    {
        const string text = """
            format: 1
            unit: mm
            name: The left hose
            id: rear-hose-2
            kind: brake-hose
            side: right
            height: 31-5/8 in
            pitch: 18.5 deg
            slack: 5 %
            rate: 9000 N/mm
            twist: 4600 Nm/rad
            surface: 90 °C
            factor: 1.2e-5
            date: 2031-04-02
            points: scans/./left/../exhaust.csv
            at: [65.4, 2 in, -61]
            path: [[1, 2, 3], [4, 5, 6]]
            step: [0 mm, 40 mm]
            clips: [1, 3]
            scope: [ rear, front ]
            upper: { body: chassis, at: [1, 2, 3] }
            parts:
              rear-hose: { body: rear/axle, at: [4, 5, 6.5] }
            """;
        const string expected = "format=1; unit=Millimetre; name=The left hose; id=rear-hose-2; kind=brake-hose; side=-1; height=803.275 mm; pitch=18.5 deg; slack=5 %; rate=9000 N/mm; twist=4600 Nm/rad; surface=90 °C; factor=1.2E-05; "
            + "date=2031-04-02; points=scans/exhaust.csv; at=65.4 mm; path=2; step=40 mm; clips=1+3; scope=2; upper=chassis@3 mm; rear-hose=rear/axle@6.5 mm";

        Read(text).ShouldBe((expected, ""));
        Cultures.Under("de-DE", () => Read(text)).ShouldBe((expected, ""));
    }

    [Fact]
    public void A_bad_value_is_told_once_and_its_followers_stay_silent()
    {
        var diagnostics = new DiagnosticBag();
        var root = YamlText.Read("t.yaml", "height: ~", diagnostics)!;

        var read = MappingReader.ReadFile(root, diagnostics, reader => reader.Required("height", "the height").Length() is null ? "silent" : "read");

        read.ShouldBe("silent");
        diagnostics.Ordered.ShouldHaveSingleItem().Id.ShouldBe("doc.null");
    }

    [Fact]
    public void A_map_that_lacks_a_required_key_is_not_made()
    {
        var diagnostics = new DiagnosticBag();
        var root = YamlText.Read("t.yaml", "a: 1", diagnostics)!;

        var read = MappingReader.ReadFile(root, diagnostics, reader => { reader.Optional("a"); reader.Required("b", "the other"); return "made"; });

        read.ShouldBeNull();
        diagnostics.HasErrors.ShouldBeTrue();
    }

    [Fact]
    public void Of_two_keys_that_say_the_same_exactly_one_has_to_stand()
    {
        string Say(string text)
        {
            var diagnostics = new DiagnosticBag();
            MappingReader.ReadFile(YamlText.Read("t.yaml", text, diagnostics)!, diagnostics, reader => reader.RequireOneOf("path", "path-from", "the points of the line") ? "one" : null);
            return Golden.WithIds(diagnostics);
        }

        Golden.Check(() => Say("path: 1"), "");
        Golden.Check(
            () => Say("path: 1\npath-from: x.csv"),
            """
            t.yaml:2:1: error: `path` and `path-from` say the same in two ways; only one can stand.
              path-from: x.csv
              ^^^^^^^^^
            help: Keep the right one.
            see: t.yaml:1:1: the other one
            doc.both-keys
            """);
        Golden.Check(
            () => Say("{}"),
            """
            t.yaml:1:1: error: Neither `path` nor `path-from` is in the file: the points of the line.
              {}
              ^
            help: Write one of the two, `path: ...` or `path-from: ...`.
            doc.neither-key
            """);
    }

    [Fact]
    public void Unknown_keys_are_let_pass_where_the_word_that_decides_is_faulty()
    {
        var diagnostics = new DiagnosticBag();
        var root = YamlText.Read("t.yaml", "kind: hoes\nfree-length: 3", diagnostics)!;

        MappingReader.ReadFile(root, diagnostics, reader =>
        {
            if (reader.Required("kind", "the kind").Word(["hose"]) is null) reader.AllowAll();
            return "";
        });

        diagnostics.Ordered.ShouldHaveSingleItem().Id.ShouldBe("doc.unknown-word");
    }

    [Fact]
    public void A_fault_that_only_the_caller_knows_is_marked_at_the_value()
    {
        var diagnostics = new DiagnosticBag();
        var root = YamlText.Read("t.yaml", "tire: 33 mm", diagnostics)!;

        MappingReader.ReadFile(root, diagnostics, reader =>
        {
            reader.Optional("tire").Fault("files.tire-size", "33 mm is far under the range of a tire.", "33 in is 838 mm.");
            reader.Optional("absent").Fault("files.never", "This is never said.", "");
            return "";
        });

        diagnostics.Ordered.ShouldHaveSingleItem().Span.Text.ShouldBe("33 mm");
    }

    [Fact]
    public void A_text_keeps_its_hidden_characters_visible()
    {
        var diagnostics = new DiagnosticBag();
        var root = YamlText.Read("t.yaml", "name: \"<b>\\u202Eabc\\x07\"", diagnostics)!;

        MappingReader.ReadFile(root, diagnostics, reader => reader.Optional("name").Text()!.Value).ShouldBe("<b>[U+202E]abc[U+0007]");
        diagnostics.Count.ShouldBe(0);
    }

    [Fact]
    public void A_text_is_cut_at_two_hundred_characters()
    {
        var diagnostics = new DiagnosticBag();
        var root = YamlText.Read("t.yaml", "name: " + new string('x', 10_000), diagnostics)!;

        MappingReader.ReadFile(root, diagnostics, reader => reader.Optional("name").Text()!.Value).ShouldBe(new string('x', 197) + "...");
        diagnostics.HasErrors.ShouldBeFalse();
    }

    [Theory]
    [InlineData("exhaust.csv", "exhaust.csv")]
    [InlineData("scans/frame.ply", "scans/frame.ply")]
    [InlineData("./a/../b/c.csv", "b/c.csv")]
    public void A_path_below_the_folder_is_resolved(string path, string expected)
    {
        FolderPath.TryResolve(path, out var resolved).ShouldBeTrue();

        resolved.ShouldBe(expected);
    }

    [Theory]
    [InlineData("")]
    [InlineData(".")]
    [InlineData("..")]
    [InlineData("../x.csv")]
    [InlineData("a/../../x.csv")]
    [InlineData("/etc/passwd")]
    [InlineData("\\\\server\\x.csv")]
    [InlineData("a\\..\\..\\x.csv")]
    [InlineData("C:\\x.csv")]
    [InlineData("C:x.csv")]
    [InlineData("file:x.csv")]
    [InlineData("~/x.csv")]
    [InlineData("x\u0000.csv")]
    public void A_path_that_leads_outside_on_any_system_is_refused(string path) =>
        FolderPath.TryResolve(path, out _).ShouldBeFalse();

    private static (string?, string) Read(string text)
    {
        var diagnostics = new DiagnosticBag();
        var root = YamlText.Read("t.yaml", text, diagnostics)!;
        var read = MappingReader.ReadFile(root, diagnostics, SampleReader.Read);
        return (read, DiagnosticRenderer.Render(diagnostics));
    }
}
