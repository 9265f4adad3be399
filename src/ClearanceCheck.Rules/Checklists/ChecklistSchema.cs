using System.Text.Json.Nodes;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Rules.Checklists;

/// <summary>Items and expectations in the JSON Schema of rule files, with their closed words.</summary>
internal static class ChecklistSchema
{
    public static JsonObject Item => RuleSchema.Required(RuleSchema.Closed(ItemFields), "title", "ask", "severity", "consequence", "family", "gate", "source");

    public static JsonObject Expectation => RuleSchema.Required(RuleSchema.Closed(ExpectationFields), "title", "each", "kind", "severity", "consequence", "source");

    public static (string Name, JsonNode Schema)[] ItemFields =>
    [
        ("title", RuleSchema.Text(null)),
        ("ask", RuleSchema.Text(null)),
        ("severity", RuleSchema.Word(SeverityWords.All.Keys)),
        ("consequence", RuleSchema.Text(null)),
        ("family", RuleSchema.Word(ChecklistWords.Families)),
        ("gate", RuleSchema.Word(ItemReader.GateWords)),
        ("expects", RuleSchema.List(RuleSchema.Word(ItemReader.ExpectWords))),
        ("units", RuleSchema.List(RuleSchema.Word(AnswerUnits.All))),
        ("applies-to", RuleSchema.AtLeastOne(RuleSchema.Closed(
            ("kind", RuleSchema.List(RuleSchema.Word(RuleSchema.Kinds))),
            ("axle", RuleSchema.List(RuleSchema.Word(AxleFacts.All))),
            ("fitted", RuleSchema.List(RuleSchema.Word(FittedWords.All.Where(w => w != FittedWords.None))))))),
        ("source", RuleSchema.Ref("source")),
    ];

    public static (string Name, JsonNode Schema)[] ExpectationFields =>
    [
        ("title", RuleSchema.Text(null)),
        ("each", RuleSchema.Word(CoverageReader.EachWords)),
        ("kind", RuleSchema.List(RuleSchema.Word(RuleSchema.Kinds))),
        ("count", new JsonObject { ["type"] = "integer", ["minimum"] = 1 }),
        ("where", RuleSchema.List(RuleSchema.Word(AxleFacts.All))),
        ("severity", RuleSchema.Word(SeverityWords.All.Keys)),
        ("consequence", RuleSchema.Text(null)),
        ("source", RuleSchema.Ref("source")),
    ];
}
