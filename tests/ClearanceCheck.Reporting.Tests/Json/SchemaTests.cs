using System.Text.Json;
using System.Text.Json.Nodes;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Tests.Samples;
using Json.Schema;

namespace ClearanceCheck.Reporting.Tests.Json;

public sealed class SchemaTests
{
    private static readonly JsonSchema Findings = JsonSchema.FromText(Schemas.Of("findings")!);

    [Fact]
    public void Every_schema_is_valid_under_its_draft_and_carried_by_name()
    {
        Schemas.Names.ShouldContain("findings");
        Schemas.Of("absent").ShouldBeNull();
        foreach (string name in Schemas.Names)
        {
            JsonElement schema = JsonDocument.Parse(Schemas.Of(name)!).RootElement;
            schema.GetProperty("$schema").GetString().ShouldBe("https://json-schema.org/draft/2020-12/schema");
            MetaSchemas.Draft202012.Evaluate(schema).IsValid.ShouldBeTrue(name);
            MetaSchemas.Draft7.Evaluate(schema).IsValid.ShouldBeTrue(name);
            Schemas.Of(name)!.ShouldNotContain("oneOf");
        }
    }

    [Fact]
    public void What_the_program_writes_is_valid()
    {
        foreach (InspectionResult result in new[] { SampleResult.Whole(), SampleResult.Small(), SampleResult.Clear(), SampleResult.Shapes(), HostileResult.Of("<x>") })
            IsValid(JsonNode.Parse(FindingsJson.Write(result))!).ShouldBeTrue();
    }

    [Fact]
    public void Every_object_is_closed_and_every_field_but_the_two_limits_is_asked_for()
    {
        DrawnPart piece = new("part", [], 0, false) { Pieces = [new DrawnPiece([Geometry.Vector3d.UnitX], 3)] };
        InspectionResult whole = SampleResult.Whole();
        Finding first = whole.Findings[0];
        JsonNode valid = JsonNode.Parse(FindingsJson.Write(whole with
        {
            Findings = [first with { Evidence = first.Evidence! with { Drawing = new DrawingCard([piece]) } }, .. whole.Findings.Skip(1)],
        }))!;
        int tried = 0;
        foreach (string path in Objects(valid, "").ToArray())
        {
            JsonNode more = valid.DeepClone();
            // A pose is open by design: its names are the vehicle's coordinates, but its values are numbers.
            At(more, path)["unknownField"] = "x";
            IsValid(more).ShouldBeFalse(path);
            if (path.EndsWith("/pose", StringComparison.Ordinal) || path.EndsWith("/values", StringComparison.Ordinal)) continue;
            foreach (string name in At(valid, path).Select(p => p.Key))
            {
                JsonNode less = valid.DeepClone();
                At(less, path).Remove(name);
                IsValid(less).ShouldBeFalse($"{path}/{name}");
                tried++;
            }
        }

        tried.ShouldBeGreaterThan(200);
    }

    [Theory]
    [InlineData("value", "null")]
    [InlineData("severity", "\"grave\"")]
    [InlineData("verdict", "\"passed\"")]
    [InlineData("limit", "{\"because\": []}")]
    [InlineData("limit", "{\"atLeast\": 1, \"atMost\": 2, \"because\": []}")]
    [InlineData("witness", "[[0, 0, 0]]")]
    [InlineData("witness", "[[0, 0, 0], [0, 0]]")]
    [InlineData("standardUncertainty", "-1")]
    [InlineData("shields", "[3]")]
    [InlineData("drawing", "[{\"part\": \"x\", \"radius\": 0, \"dashed\": false, \"points\": [], \"pieces\": [{\"radius\": -1, \"corners\": []}]}]")]
    [InlineData("pose", "{\"rear.left\": \"up\"}")]
    public void A_finding_with_a_wrong_value_is_not_valid(string field, string value)
    {
        JsonNode root = JsonNode.Parse(FindingsJson.Write(SampleResult.Whole()))!;

        root["findings"]![0]![field] = JsonNode.Parse(value);

        IsValid(root).ShouldBeFalse();
    }

    private static bool IsValid(JsonNode node) => Findings.Evaluate(JsonSerializer.SerializeToElement(node)).IsValid;

    private static JsonObject At(JsonNode root, string path)
    {
        foreach (string step in path.Split('/', StringSplitOptions.RemoveEmptyEntries))
            root = root is JsonArray list ? list[int.Parse(step, System.Globalization.CultureInfo.InvariantCulture)]! : root[step]!;
        return root.AsObject();
    }

    private static IEnumerable<string> Objects(JsonNode node, string path)
    {
        if (node is JsonObject fields)
        {
            yield return path;
            foreach ((string name, JsonNode? value) in fields)
                if (value is not null)
                    foreach (string inner in Objects(value, path + "/" + name)) yield return inner;
        }
        else if (node is JsonArray list)
        {
            for (int i = 0; i < Math.Min(list.Count, 2); i++)
                if (list[i] is { } item)
                    foreach (string inner in Objects(item, $"{path}/{i}")) yield return inner;
        }
    }
}
