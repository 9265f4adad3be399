using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Rules.Checklists;
using ClearanceCheck.Rules.Loading;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Rules;

/// <summary>The JSON Schema (draft 2020-12) of rule files, libraries and overlays alike, made from the catalogues. A file may be valid and still be refused: units, sides and examples are looked at when it is loaded.</summary>
public static class RuleSchema
{
    private const string Id = "^[a-z][a-z0-9-]{0,59}$", Version = "^[0-9]+\\.[0-9]+\\.[0-9]+$", Day = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", ValueWithUnit = "[0-9].*[a-z%\"']$";

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The schema as text that ends with a line end.</summary>
    public static string Write(QuantityCatalogue quantities)
    {
        JsonObject schema = Closed(("format", new JsonObject { ["const"] = 1 }), ("library", Text(Id)), ("overlay", Text(Id)), ("version", Text(Version)), ("on", Ref("on")),
            ("rules", ById(Ref("rule"))), ("items", ById(Ref("item"))), ("coverage", ById(Ref("expectation"))), ("change", ById(Ref("change"))), ("switch-off", ById(Ref("reasons"))));
        schema["$schema"] = "https://json-schema.org/draft/2020-12/schema";
        schema["title"] = "A file of rules: of a library, or of a shop's overlay on one";
        schema["required"] = Names("format", "version");
        schema["if"] = new JsonObject { ["required"] = Names("overlay") };
        schema["then"] = new JsonObject { ["required"] = Names("on"), ["properties"] = new JsonObject { ["library"] = false } };
        schema["else"] = new JsonObject
        {
            ["required"] = Names("library"),
            ["properties"] = new JsonObject { ["on"] = false, ["change"] = false, ["switch-off"] = false },
            // Of a library each file holds one of the three; an overlay is short and may hold all.
            ["anyOf"] = new JsonArray(Holding("rules", "items", "coverage"), Holding("items", "rules", "coverage"), Holding("coverage", "rules", "items")),
        };
        schema["$defs"] = Definitions(quantities);
        return schema.ToJsonString(Indented) + "\n";
    }

    private static JsonObject Definitions(QuantityCatalogue quantities)
    {
        JsonObject rule = Closed(RuleFields(quantities));
        rule["required"] = Names("quantity", "part", "limit", "severity", "source");
        // What an id stands for is known below the overlay only: a change may name the keys of any of the three.
        JsonObject change = new() { ["anyOf"] = new JsonArray(Change(RuleFields(quantities).Where(f => f.Name != "quantity")), Change(ChecklistSchema.ItemFields), Change(ChecklistSchema.ExpectationFields)) };
        return new JsonObject
        {
            ["rule"] = rule,
            ["item"] = ChecklistSchema.Item,
            ["expectation"] = ChecklistSchema.Expectation,
            ["source"] = Required(Closed(("basis", Word(SourceReader.Bases)), ("known", Word(SourceReader.Marks)), ("text", Text(null))), "basis"),
            ["change"] = change,
            ["reasons"] = Closed(Reasons),
            ["on"] = Required(Closed(("library", Text(Id)), ("from", Text(Version)), ("before", Text(Version))), "library", "from", "before"),
            ["value"] = Text(ValueWithUnit),
            ["limit"] = Limit(),
            ["case"] = Required(Closed(("when", List(Word(RuleFacts.All))), ("limit", Ref("limit"))), "when", "limit"),
            ["selector"] = AtLeastOne(Closed(("kind", List(Word(Kinds))), ("group", List(Word(PartKinds.Groups))), ("id", List(Text(Id))))),
            ["examplePart"] = Closed([("kind", Word(Kinds)), ("id", Text(Id)), .. PartProperties.All.Select(p => (p.Id, (JsonNode)Ref("value")))]),
            ["example"] = Required(
                Closed(("value", Ref("value")), ("uncertainty", Ref("value")), ("facts", List(Word(RuleFacts.All))), ("part", Ref("examplePart")), ("to", Ref("examplePart")),
                    ("expect", Word(Enum.GetValues<ExampleOutcome>().Select(ExampleReader.Word)))),
                "value", "expect"),
        };
    }

    private static (string Name, JsonNode Schema)[] RuleFields(QuantityCatalogue quantities) =>
    [
        ("title", Text(null)),
        ("severity", Word(SeverityWords.All.Keys)),
        ("consequence", Text(null)),
        ("quantity", Word(quantities.All.Select(q => q.Id))),
        ("part", Ref("selector")),
        ("to", Ref("selector")),
        ("only-when", List(Word(RuleFacts.All))),
        // Which sets of poses there are is the search's; a word that is none is refused when the rule is loaded.
        ("over", Word(PoseSetWords.Sets.Keys)),
        ("limit", Ref("limit")),
        ("cases", List(Ref("case"))),
        ("decision", Word(["guarded", "simple"])),
        ("floor", Ref("value")),
        ("accept", Required(Closed(("floor", Ref("value")), ("days", new JsonObject { ["type"] = "integer", ["minimum"] = 1 })), "floor", "days")),
        ("source", Ref("source")),
        ("advice", Text(null)),
        ("hand-check", Text(null)),
        ("recheck", List(Word(quantities.All.Select(q => q.Id)))),
        ("examples", List(Ref("example"))),
    ];

    private static (string Name, JsonNode Schema)[] Reasons => [("because", Text(null)), ("by", Text(null)), ("until", Text(Day))];

    private static JsonObject Change(IEnumerable<(string Name, JsonNode Schema)> fields)
    {
        JsonObject change = Closed([.. fields, .. Reasons]);
        change["minProperties"] = 1;
        return change;
    }

    private static JsonObject Holding(string one, params string[] others) =>
        new() { ["required"] = Names(one), ["properties"] = new JsonObject(others.Select(o => KeyValuePair.Create(o, (JsonNode?)false))) };

    private static JsonObject Limit()
    {
        JsonObject steps = List(new JsonObject { ["type"] = "array", ["items"] = Ref("value"), ["minItems"] = 2, ["maxItems"] = 2 });
        JsonObject limit = Closed(
            ("at-least", Ref("value")),
            ("at-most", Ref("value")),
            ("between", new JsonObject { ["type"] = "array", ["items"] = Ref("value"), ["minItems"] = 2, ["maxItems"] = 2 }),
            ("at-least-by", Required(Closed(("property", Word(Properties)), ("steps", steps)), "property", "steps")),
            ("at-most-own", Word(Properties)));
        limit["minProperties"] = 1;
        limit["maxProperties"] = 1;
        return limit;
    }

    internal static IEnumerable<string> Kinds => PartKinds.All.Select(k => k.Id);

    private static IEnumerable<string> Properties => PartProperties.All.Select(p => p.Id);

    internal static JsonObject Closed(params (string Name, JsonNode Schema)[] fields) => new()
    {
        ["type"] = "object",
        ["properties"] = new JsonObject(fields.Select(f => KeyValuePair.Create(f.Name, (JsonNode?)f.Schema))),
        ["additionalProperties"] = false,
    };

    internal static JsonObject Required(JsonObject schema, params string[] names)
    {
        schema["required"] = Names(names);
        return schema;
    }

    internal static JsonObject AtLeastOne(JsonObject schema)
    {
        schema["minProperties"] = 1;
        return schema;
    }

    private static JsonObject ById(JsonNode schema) => new() { ["type"] = "object", ["propertyNames"] = Text(Id), ["additionalProperties"] = schema, ["minProperties"] = 1 };

    internal static JsonObject List(JsonNode items) => new() { ["type"] = "array", ["items"] = items, ["minItems"] = 1 };

    internal static JsonObject Text(string? pattern) => pattern is null ? new JsonObject { ["type"] = "string" } : new JsonObject { ["type"] = "string", ["pattern"] = pattern };

    internal static JsonObject Word(IEnumerable<string> words) => new() { ["enum"] = Names([.. words]) };

    internal static JsonObject Ref(string name) => new() { ["$ref"] = $"#/$defs/{name}" };

    private static JsonArray Names(params string[] names) => [.. names.Select(n => (JsonNode)n)];
}
