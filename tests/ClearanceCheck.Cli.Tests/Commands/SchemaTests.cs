using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace ClearanceCheck.Cli.Tests.Commands;

public sealed class SchemaTests
{
    private const string InPose = "rear.left=20mm";

    /// <summary>A schema's name and a command whose output it describes.</summary>
    public static TheoryData<string, string[]> Outputs => new()
    {
        { "pose", ["pose"] },
        { "pose", ["pose", "--at", "rear.left=150mm"] },
        { "pose", ["pose", "--at", "rear.left=5000mm"] },
        { "measure", ["measure"] },
        { "measure", ["measure", "--at", InPose] },
        { "measure", ["measure", "--first", "tailpipe", "--second", "rear-axle-tube"] },
        { "measure", ["measure", "--first", "tailpipe", "--second", "rear-axle-tube", "--at", InPose] },
        { "measure", ["measure", "--first", "tailpipe", "--second", "rear-axle-tube", "--at", "rear.left=5000mm"] },
        { "measure", ["measure", "--quantity", "hose-slack"] },
    };

    [Theory]
    [MemberData(nameof(Outputs))]
    public void What_commands_print_is_valid_and_every_field_is_asked_for(string schema, string[] command)
    {
        using Workshop shop = Workshop.WithFixture();
        JsonNode printed = JsonNode.Parse(shop.Run([command[0], "inspection.yaml", "--format", "json", .. command[1..]]).Output)!;
        JsonSchema of = JsonSchema.FromText(Schema(schema));

        IsValid(of, printed).ShouldBeTrue();

        foreach (string name in printed.AsObject().Select(p => p.Key).ToArray())
        {
            JsonNode less = printed.DeepClone();
            less.AsObject().Remove(name);
            IsValid(of, less).ShouldBeFalse(name);
        }

        printed["unknownField"] = 1;
        IsValid(of, printed).ShouldBeFalse("an unknown field");
    }

    [Fact]
    public void What_an_inspection_writes_is_valid()
    {
        using Workshop shop = Workshop.WithFixture();
        shop.Run("inspect", "inspection.yaml");

        IsValid(JsonSchema.FromText(Schema("findings")), JsonNode.Parse(shop.Read("clearance-report/findings.json"))!).ShouldBeTrue();
    }

    [Theory]
    [InlineData("closest/0/value", "\"near\"")]
    [InlineData("closest/0/boundKind", "\"sure\"")]
    [InlineData("closest/0/witness", "[[0, 0, 0]]")]
    [InlineData("closest/0/standardUncertainty", "-1")]
    [InlineData("unit", "\"inch\"")]
    public void A_measurement_with_a_wrong_value_is_not_valid(string path, string value)
    {
        using Workshop shop = Workshop.WithFixture();
        JsonNode printed = JsonNode.Parse(shop.Run("measure", "inspection.yaml", "--format", "json").Output)!;
        string[] steps = path.Split('/');
        JsonNode at = steps.Length == 1 ? printed : printed["closest"]![0]!;

        at[steps[^1]] = JsonNode.Parse(value);

        IsValid(JsonSchema.FromText(Schema("measure")), printed).ShouldBeFalse();
    }

    [Theory]
    [InlineData("findings")]
    [InlineData("measure")]
    [InlineData("pose")]
    public void Every_schema_is_valid_under_its_draft(string name)
    {
        string text = Schema(name);

        MetaSchemas.Draft202012.Evaluate(JsonDocument.Parse(text).RootElement).IsValid.ShouldBeTrue();
        text.ShouldContain("https://json-schema.org/draft/2020-12/schema");
        text.ShouldNotContain("oneOf");
    }

    [Fact]
    public void An_unknown_schema_is_refused_with_those_that_are_known()
    {
        using var shop = new Workshop();

        Answer answer = shop.Run("schema", "--of", "weather");

        answer.Status.ShouldBe(2);
        answer.Error.ShouldContain("findings");
    }

    private static string Schema(string name)
    {
        using var shop = new Workshop();
        Answer answer = shop.Run("schema", "--of", name);
        answer.Status.ShouldBe(0);
        return answer.Output;
    }

    private static bool IsValid(JsonSchema schema, JsonNode node) => schema.Evaluate(JsonSerializer.SerializeToElement(node)).IsValid;
}
