using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Yaml;
using ClearanceCheck.Rules.Checklists;
using Json.Schema;

namespace ClearanceCheck.Rules.Tests;

/// <summary>The JSON Schema of rule files holds for everything that loads, and refuses what the reader refuses by its keys and words.</summary>
public sealed class RuleSchemaTests
{
    private const string Overlay = """
        format: 1
        overlay: lowland-garage
        version: 1.2.0
        on: { library: base, from: 1.0.0, before: 2.0.0 }
        change:
          brake-line-near-exhaust: { limit: { at-least: 60 mm }, because: "Two comebacks" }
          brake-hose-short-of-slack: { accept: { floor: 4 %, days: 90 }, because: "Ours", by: R. Amsel, until: 2031-12-31 }
        switch-off: { tire-rubs-liner: { because: "We cut them" } }
        rules:
          hose-bent-too-tight:
            quantity: gap
            part: { kind: [ brake-hose ] }
            to: { group: [ any ] }
            limit: { at-least-by: { property: outside-diameter, steps: [[0 mm, 40 mm], [11 mm, 60 mm]] } }
            severity: caution
            decision: simple
            floor: 10 mm
            source: { basis: shop }
            examples: [ { value: 41 mm, uncertainty: 1 mm, part: { outside-diameter: 5 mm }, facts: [ moving ], expect: conforms } ]
        items:
          winch-bolts:
            title: Winch bolts
            ask: The winch is bolted at four places.
            severity: danger
            consequence: It flies off.
            family: bodywork
            gate: before-first-drive
            expects: [ value, mark ]
            units: [ Nm ]
            applies-to: { kind: [ bodywork ], axle: [ steered ], fitted: [ body-lift ] }
            source: { basis: shop }
        coverage:
          winch-cable: { title: winch cable, each: axle, kind: [ wiring ], count: 2, where: [ driven ], severity: notice, consequence: Unknown., source: { basis: shop } }

        """;

    private const string ChangesOfLists = """
        format: 1
        overlay: lowland-garage
        version: 1.2.0
        on: { library: base, from: 1.0.0, before: 2.0.0 }
        change:
          u-bolts-torqued: { severity: danger, expects: [ value ], units: [ Nm ] }
          shocks: { count: 3, because: "Ours" }

        """;

    private static readonly JsonSchema Schema = JsonSchema.FromText(RuleSchema.Write(BrokenSet.Quantities));

    public static TheoryData<string> Files => [.. BaseLibrary.Files.Select(f => f.Name)];

    [Fact]
    public void The_schema_is_one_and_ends_with_a_line_end()
    {
        string text = RuleSchema.Write(BrokenSet.Quantities);

        MetaSchemas.Draft202012.Evaluate(JsonDocument.Parse(text).RootElement).IsValid.ShouldBeTrue();
        text.ShouldEndWith("}\n");
        text.ShouldNotContain("oneOf");
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_file_of_the_base_library_is_valid(string name)
    {
        IsValid(Text(name)).ShouldBeTrue();
    }

    [Fact]
    public void An_overlay_with_every_section_is_valid() => IsValid(Overlay).ShouldBeTrue();

    [Theory]
    [InlineData("format: 1", "format: 2")]
    [InlineData("overlay: lowland-garage", "overlay: Lowland")]
    [InlineData("version: 1.2.0", "version: \"1.2\"")]
    [InlineData(", before: 2.0.0", "")]
    [InlineData("overlay: lowland-garage", "library: lowland-garage")]
    [InlineData("at-least: 60 mm", "atleast: 60 mm")]
    [InlineData("at-least: 60 mm", "at-least: 60")]
    [InlineData("at-least: 60 mm", "at-least: 60 mm, at-most: 70 mm")]
    [InlineData("because: \"Two comebacks\"", "why: \"Two comebacks\"")]
    [InlineData("days: 90", "days: 0")]
    [InlineData("until: 2031-12-31", "until: 31.12.2031")]
    [InlineData("severity: caution", "severity: cautious")]
    [InlineData("kind: [ brake-hose ]", "kind: [ brake-hoses ]")]
    [InlineData("group: [ any ]", "group: []")]
    [InlineData("property: outside-diameter", "property: diameter")]
    [InlineData("[11 mm, 60 mm]", "[11 mm]")]
    [InlineData("decision: simple", "decision: easy")]
    [InlineData("basis: shop", "known: none")]
    [InlineData("expect: conforms", "expect: holds")]
    [InlineData("facts: [ moving ]", "facts: [ rusty ]")]
    [InlineData("    severity: caution\n", "")]
    [InlineData("family: bodywork", "family: bodywrok")]
    [InlineData("gate: before-first-drive", "gate: before")]
    [InlineData("expects: [ value, mark ]", "expects: [ photo ]")]
    [InlineData("units: [ Nm ]", "units: [ stone ]")]
    [InlineData("axle: [ steered ]", "axle: [ steering ]")]
    [InlineData("fitted: [ body-lift ]", "fitted: [ none ]")]
    [InlineData("    ask: The winch is bolted at four places.\n", "")]
    [InlineData("each: axle", "each: wheel")]
    [InlineData("count: 2", "count: 0")]
    [InlineData("where: [ driven ]", "where: [ drive ]")]
    [InlineData("kind: [ wiring ]", "kind: [ wires ]")]
    public void What_the_reader_refuses_by_its_keys_and_words_is_not_valid(string from, string to)
    {
        string text = Overlay.ReplaceLineEndings("\n");
        text.ShouldContain(from);

        IsValid(text.Replace(from, to, StringComparison.Ordinal)).ShouldBeFalse();
    }

    [Fact]
    public void An_overlay_may_change_items_and_expectations_by_their_own_keys()
    {
        string text = ChangesOfLists.ReplaceLineEndings("\n");

        IsValid(text).ShouldBeTrue();
        IsValid(text.Replace("count: 3", "count: 3, ask: More", StringComparison.Ordinal)).ShouldBeFalse();
    }

    [Theory]
    [InlineData("rules")]
    [InlineData("items")]
    public void A_file_of_a_library_holds_one_of_the_three_lists(string second)
    {
        string coverage = Text("coverage.yaml");

        IsValid(coverage).ShouldBeTrue();
        IsValid($"{coverage}{second}: {{ a: {{ }} }}\n").ShouldBeFalse();
        IsValid(coverage[..coverage.IndexOf("coverage:", StringComparison.Ordinal)]).ShouldBeFalse();
    }

    [Fact]
    public void Every_key_of_an_item_or_expectation_that_is_used_or_read_stands_in_the_schema()
    {
        JsonNode definitions = JsonNode.Parse(RuleSchema.Write(BrokenSet.Quantities))!["$defs"]!;

        definitions["item"]!["properties"]!.AsObject().Select(p => p.Key).ShouldBe(ItemReader.Keys);
        definitions["expectation"]!["properties"]!.AsObject().Select(p => p.Key).ShouldBe(CoverageReader.Keys);
    }

    [Fact]
    public void Every_key_of_a_rule_is_one_that_an_overlay_may_name()
    {
        IEnumerable<string> used = BaseLibrary.Files.Select(f => Root(System.Text.Encoding.UTF8.GetString(f.Content.Span)).Find("rules")?.Value).OfType<MappingNode>().SelectMany(r => r.Entries)
            .SelectMany(e => ((MappingNode)e.Value).Entries).Select(e => e.Key.Text).Distinct();
        JsonNode rule = JsonNode.Parse(RuleSchema.Write(BrokenSet.Quantities))!["$defs"]!["change"]!["anyOf"]![0]!["properties"]!;

        used.ShouldNotBeEmpty();
        used.Where(k => k != "quantity").ShouldAllBe(k => rule[k] != null);
    }

    private static string Text(string file) => System.Text.Encoding.UTF8.GetString(BaseLibrary.Files.Single(f => f.Name == file).Content.Span);

    private static bool IsValid(string yaml) => Schema.Evaluate(JsonDocument.Parse(Json(Root(yaml))!.ToJsonString()).RootElement).IsValid;

    private static MappingNode Root(string yaml) => YamlText.Read("a.yaml", System.Text.Encoding.UTF8.GetBytes(yaml), new DiagnosticBag()).ShouldNotBeNull();

    // A bare whole number is one, as YAML has it; everything else is text.
    private static JsonNode? Json(Node node) => node switch
    {
        MappingNode map => new JsonObject(map.Entries.Select(e => KeyValuePair.Create(e.Key.Text, Json(e.Value)))),
        SequenceNode list => new JsonArray([.. list.Items.Select(Json)]),
        ScalarNode { Style: ScalarStyle.Plain } scalar when int.TryParse(scalar.Text, NumberStyles.None, CultureInfo.InvariantCulture, out int whole) => whole,
        ScalarNode scalar => scalar.Text,
        _ => null,
    };
}
