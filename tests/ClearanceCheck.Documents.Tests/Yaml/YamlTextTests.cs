using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Yaml;

namespace ClearanceCheck.Documents.Tests.Yaml;

public sealed class YamlTextTests
{
    private const string Good = """
        format: 1                     # remarks after numbers stand
        name: "Brake line: clip #2"   # and after quotes
        kind: brake-hose              # and after one word
        date: 2031-04-02              # and after dates
        height: 31-5/8 in             # and after lengths
        tire: 285/75R16               # and after sizes
        upper: { body: rear/axle, at: [1, -2.5, 3] }   # and after brackets
        tight: [1,2,3]
        lines:
          [ 1,        # remarks between items stand
            2 ]
        parts:
          rear-hose:
            path:
              - [288, 402, -61]
              - [-310, 396, -64]
        note: |
          Two lines
          of text
        quoted: 'it''s "so"'
        ratio: 3:1
        inch: 2' 7-5/8"
        """;

    [Fact]
    public void A_good_file_gives_no_diagnostics() => Golden.Check(
        () =>
        {
            var diagnostics = new DiagnosticBag();
            YamlText.Read("t.yaml", Good, diagnostics).ShouldNotBeNull();
            return DiagnosticRenderer.Render(diagnostics);
        },
        "");

    [Theory]
    [InlineData("name", "Brake line: clip #2")]
    [InlineData("height", "31-5/8 in")]
    [InlineData("note", "Two lines\nof text\n")]
    [InlineData("quoted", "it's \"so\"")]
    [InlineData("ratio", "3:1")]
    [InlineData("inch", "2' 7-5/8\"")]
    public void Every_value_stays_the_text_that_was_typed(string key, string expected) =>
        Root().Find(key)!.Value.ShouldBeOfType<ScalarNode>().Text.ShouldBe(expected);

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void Every_node_knows_its_path_and_its_place(string lineBreak)
    {
        var root = YamlText.Read("t.yaml", Good.ReplaceLineEndings(lineBreak), new DiagnosticBag())!;
        var hose = root.Find("parts")!.Value.ShouldBeOfType<MappingNode>().Find("rear-hose")!;
        var path = hose.Value.ShouldBeOfType<MappingNode>().Find("path")!.Value.ShouldBeOfType<SequenceNode>();
        var number = path.Items[1].ShouldBeOfType<SequenceNode>().Items[2];

        number.Path.ShouldBe("parts/rear-hose/path/2/3");
        number.Label.ShouldBe("number 3 in item 2 of `path`");
        number.Span.ToString().ShouldBe("t.yaml:16:21");
        number.Span.Text.ShouldBe("-64");
        path.Items[1].Span.Text.ShouldBe("[-310, 396, -64]");
        hose.Value.Heading.Text.ShouldBe("rear-hose");
        hose.Value.Span.Line.ShouldBe(14);
        hose.Value.Span.EndLine.ShouldBe(16);
        root.Label.ShouldBe("the file");
    }

    [Fact]
    public void Of_a_key_that_stands_twice_no_value_is_given()
    {
        var diagnostics = new DiagnosticBag();
        var root = YamlText.Read("t.yaml", "height: 31 in\nheight: 33 in\nheight: 35 in\n", diagnostics)!;

        root.Entries.ShouldHaveSingleItem().Value.ShouldBeOfType<FaultyNode>();
        diagnostics.Ordered.Select(item => (item.Id, item.Span.Line, item.Related[0].Span.Line)).ShouldBe([("doc.duplicate-key", 2, 1), ("doc.duplicate-key", 3, 1)]);
    }

    [Fact]
    public void Numbers_with_mixed_separators_are_not_given() =>
        YamlText.Read("t.yaml", "at: [65,4, 12]", new DiagnosticBag())!.Find("at")!.Value.ShouldBeOfType<SequenceNode>()
            .Items.Select(item => item is FaultyNode).ShouldBe([true, true, false]);

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void A_block_of_lines_ends_with_its_last_line(string lineBreak)
    {
        var root = YamlText.Read("t.yaml", "note: |\n  Two lines\n  of text\nname: x\n".ReplaceLineEndings(lineBreak), new DiagnosticBag())!;

        root.Find("note")!.Value.Span.Text.ShouldEndWith("of text");
    }

    [Fact]
    public void A_column_counts_code_points() =>
        YamlText.Read("t.yaml", "{ a: \U0001F527, b: c }", new DiagnosticBag())!.Find("b")!.Value.Span.Column.ShouldBe(12);

    [Fact]
    public void A_place_inside_a_value_is_the_whole_value_where_escapes_hide_it()
    {
        var plain = (ScalarNode)YamlText.Read("t.yaml", "a: 31-9/8 in", new DiagnosticBag())!.Find("a")!.Value;
        var escaped = (ScalarNode)YamlText.Read("t.yaml", "a: \"31-9/8\\x22\"", new DiagnosticBag())!.Find("a")!.Value;

        plain.Place(3, 3).Text.ShouldBe("9/8");
        escaped.Text.ShouldBe("31-9/8\"");
        escaped.Place(3, 3).Text.ShouldBe("\"31-9/8\\x22\"");
    }

    private static MappingNode Root() => YamlText.Read("t.yaml", Good, new DiagnosticBag())!;
}
