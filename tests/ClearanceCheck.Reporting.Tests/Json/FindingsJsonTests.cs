using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Tests.Samples;

namespace ClearanceCheck.Reporting.Tests.Json;

public sealed class FindingsJsonTests
{
    [Fact]
    public void What_was_written_reads_back_and_writes_the_same_bytes()
    {
        foreach (InspectionResult result in new[] { SampleResult.Whole(), SampleResult.Small(), SampleResult.Clear(), SampleResult.Shapes() })
        {
            string json = FindingsJson.Write(result);

            FindingsJson.Write(FindingsJson.Read(json)).ShouldBe(json);
        }
    }

    [Fact]
    public void Pieces_and_shields_come_back_as_they_were()
    {
        Finding finding = SampleFindings.LumpNearPipe();
        InspectionResult result = SampleResult.Small() with { Findings = [finding, SampleFindings.TireNearFender(-12)] };

        InspectionResult back = FindingsJson.Read(FindingsJson.Write(result));

        back.Findings[0].Shields.ShouldBe(finding.Shields);
        back.Findings[1].Shields.ShouldBeEmpty();
        for (int i = 0; i < 2; i++)
            foreach ((DrawnPart was, DrawnPart part) in result.Findings[i].Evidence!.Drawing.Parts.Zip(back.Findings[i].Evidence!.Drawing.Parts))
            {
                part.Pieces.Length.ShouldBe(was.Pieces.Length);
                part.Points.Length.ShouldBe(was.Points.Length);
                foreach ((DrawnPiece before, DrawnPiece after) in was.Pieces.Zip(part.Pieces))
                {
                    after.RadiusMm.ShouldBe(before.RadiusMm);
                    after.Corners.Length.ShouldBe(before.Corners.Length);
                    before.Corners.Zip(after.Corners).ShouldAllBe(c => (c.First - c.Second).Length < 1e-6);
                }
            }
    }

    [Fact]
    public void A_number_of_a_piece_that_is_not_finite_is_refused()
    {
        Finding finding = SampleFindings.LumpNearPipe();
        foreach (DrawnPiece broken in new[] { new DrawnPiece([Geometry.Vector3d.Zero], double.NaN), new DrawnPiece([new Geometry.Vector3d(0, double.NaN, 0)], 1) })
        {
            DrawnPart part = finding.Evidence!.Drawing.Parts[0] with { Pieces = [broken] };
            InspectionResult result = SampleResult.Small() with { Findings = [finding with { Evidence = finding.Evidence with { Drawing = new DrawingCard([part]) } }] };

            Should.Throw<ArgumentException>(() => FindingsJson.Write(result));
        }
    }

    [Fact]
    public void A_result_read_back_makes_the_same_report()
    {
        InspectionResult back = FindingsJson.Read(FindingsJson.Write(SampleResult.Whole()));

        HtmlReport.Write(FindingsJson.Read(FindingsJson.Write(back))).ShouldBe(HtmlReport.Write(back));
        HtmlReportTests.Plain(HtmlReportTests.Page(back).Body!).ShouldBe(HtmlReportTests.Plain(HtmlReportTests.Page(SampleResult.Whole()).Body!));
    }

    [Fact]
    public void The_culture_of_the_machine_does_not_reach_the_file()
    {
        string json = FindingsJson.Write(SampleResult.Whole());
        string page = HtmlReport.Write(SampleResult.Whole());
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("ar-SA") { NumberFormat = { NumberDecimalSeparator = ";", NegativeSign = "~" } };
            FindingsJson.Write(SampleResult.Whole()).ShouldBe(json);
            HtmlReport.Write(SampleResult.Whole()).ShouldBe(page);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void A_finding_holds_the_fields_that_others_read()
    {
        JsonElement root = JsonDocument.Parse(FindingsJson.Write(SampleResult.Whole())).RootElement;
        JsonElement finding = root.GetProperty("findings")[0];

        root.GetProperty("decision").GetString().ShouldBe("held");
        root.GetProperty("notEvaluated")[0].GetString().ShouldBe("brake-hose-too-short--front-left-hose");
        finding.GetProperty("verdict").GetString().ShouldBe("fails");
        finding.GetProperty("value").GetDouble().ShouldBe(18.2);
        finding.GetProperty("boundKind").GetString().ShouldBe("checked");
        finding.GetProperty("giveOrTake").GetDouble().ShouldBe(3.1);
        finding.GetProperty("limit").GetProperty("atLeast").GetDouble().ShouldBe(50);
        finding.GetProperty("pose").GetProperty("rear.left").GetDouble().ShouldBe(88);
        finding.GetProperty("witness").GetArrayLength().ShouldBe(2);
        finding.GetProperty("witness")[0].GetArrayLength().ShouldBe(3);
        root.GetProperty("findings")[2].GetProperty("value").ValueKind.ShouldBe(JsonValueKind.Null);
    }

    [Fact]
    public void Numbers_are_rounded_to_a_millionth_and_never_minus_zero()
    {
        Finding finding = SampleFindings.LineNearTailpipe();
        Evidence evidence = finding.Evidence! with { Value = 0.1 + 0.2, Bound = -1e-12, StandardUncertainty = 1.2345674, CoverageFactor = 2 };

        string json = FindingsJson.Write(SampleResult.Small() with { Findings = [finding with { Evidence = evidence }] });

        json.ShouldContain("\"value\": 0.3,");
        json.ShouldContain("\"bound\": 0,");
        json.ShouldContain("\"giveOrTake\": 2.469134,");
        FindingsJson.Write(FindingsJson.Read(json)).ShouldBe(json);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_number_that_is_not_finite_is_refused_wherever_it_stands(double number)
    {
        InspectionResult result = SampleResult.Whole();
        Should.Throw<ArgumentException>(() => FindingsJson.Write(result with { Reach = [result.Reach[0] with { Highest = number }] }));
        Should.Throw<ArgumentException>(() => FindingsJson.Write(result with { Travel = [SampleTravel.Rear(number)] }));
        Should.Throw<ArgumentException>(() => TravelCsv.Write(result with { Travel = [SampleTravel.Rear(number)] }));
        Should.Throw<ArgumentException>(() => FindingsJson.Write(result with { Measurements = [result.Measurements[0] with { PointMm = new Geometry.Vector3d(0, number, 0) }] }));
        Should.Throw<ArgumentException>(() => FindingsJson.Write(result with { Exempt = [result.Exempt[0] with { RadiusMm = number }] }));
    }

    [Fact]
    public void A_pose_that_names_one_coordinate_twice_is_refused()
    {
        Finding finding = SampleFindings.LineNearTailpipe();
        PoseCoordinate one = finding.Evidence!.Pose.Coordinates[0];

        InspectionResult result = SampleResult.Small() with { Findings = [finding with { Evidence = finding.Evidence with { Pose = new PoseCard([one, one], []) } }] };

        Should.Throw<ArgumentException>(() => FindingsJson.Write(result)).Message.ShouldContain("'rear.left' twice");
    }

    [Theory]
    [InlineData("{", "Line 1")]
    [InlineData("[]", "$: 'format' is missing.")]
    [InlineData("{\"format\": 2}", "$.format: expected format 1, found 2.")]
    [InlineData("{\"format\": 1, \"decision\": \"fine\"}", "$.decision: expected one of held, conditions, clear, none, found \"fine\".")]
    public void A_text_that_is_no_findings_file_is_refused_with_its_place(string text, string message) =>
        Should.Throw<FormatException>(() => FindingsJson.Read(text)).Message.ShouldStartWith(message);

    [Fact]
    public void A_file_that_lacks_any_of_its_fields_is_refused()
    {
        JsonObject root = JsonNode.Parse(FindingsJson.Write(SampleResult.Whole()))!.AsObject();
        foreach (string name in root.Select(p => p.Key).Where(n => n != "notEvaluated").ToArray())
        {
            JsonObject less = root.DeepClone().AsObject();
            less.Remove(name);

            Should.Throw<FormatException>(() => FindingsJson.Read(less.ToJsonString()), name);
        }
    }
}
