using System.Text;
using ClearanceCheck.Files;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Rules;
using ClearanceCheck.Tests.Shared;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Tests;

/// <summary>A shield lowers a limit only where it stands between the two.</summary>
/// <remarks>The axle's line comes within 29 mm below the tailpipe, at about x -620, y -540, z -143 to -115; the pipe is as wide as y -570 to -500 there.</remarks>
public sealed class ShieldTests
{
    private const string Wide = "[[-900, -700, -129], [-250, -700, -129], [-250, -250, -129], [-900, -250, -129]]";
    private const string Beside = "[[-900, 200, -129], [-250, 200, -129], [-250, 300, -129], [-900, 300, -129]]";
    private const string Above = "[[-900, -700, -20], [-250, -700, -20], [-250, -250, -20], [-900, -250, -20]]";

    [Fact]
    public void A_shield_between_the_two_where_they_come_nearest_sets_the_limit_behind_a_shield()
    {
        Finding finding = Find(Wide);

        finding.Limit.AtLeast.ShouldBe(25);
        finding.Limit.Because.ShouldBe([RuleFacts.Shielded]);
        finding.Shields.ShouldBe(["Shield under the tailpipe stands between the two where they come nearest, so the limit behind a shield holds."]);
    }

    [Theory]
    [InlineData(Beside)]
    [InlineData(Above)]
    public void A_shield_that_stands_elsewhere_changes_no_limit_and_the_finding_says_so(string outline)
    {
        Finding finding = Find(outline);

        finding.Limit.AtLeast.ShouldBe(50);
        finding.Limit.Because.ShouldBeEmpty();
        finding.Verdict.ShouldBe(Verdict.Fails);
        finding.Shields.ShouldBe(["Shield under the tailpipe does not stand between the two where the two come nearest, so the limit without a shield holds."]);
    }

    [Fact]
    public void Without_a_shield_nothing_is_said_of_one()
    {
        Finding finding = Inspect(OneLine.Vehicle());

        finding.Limit.AtLeast.ShouldBe(50);
        finding.Shields.ShouldBeEmpty();
    }

    private static Finding Find(string outline) => Inspect(With($"""
          shield:
            kind: heat-shield
            name: Shield under the tailpipe
            body: exhaust
            outline: {outline}
            thickness: 1 mm

        """));

    private static Finding Inspect(Vehicle vehicle)
    {
        Rule rule = OneLine.Rule(OneLine.Exhaust, "gap", "brake-line", "hot-exhaust", 50, Severity.Warning) with
        {
            Cases = [new RuleCase([RuleFacts.Shielded], new RuleLimit(25, null))],
        };
        return OneLine.Inspect(vehicle, library: new RuleLibrary("tests", "1.0.0", "00", [rule], [])).Find(OneLine.Exhaust, "axle-brake-line");
    }

    private static Vehicle With(string part)
    {
        string text = Encoding.UTF8.GetString(FixtureFiles.Bytes("one-line", "inspection.yaml").Span).Replace("parts:\n", "parts:\n" + part, StringComparison.Ordinal);
        return InspectionFileReader.Read(new InspectionFile("inspection.yaml", Encoding.UTF8.GetBytes(text), file => FixtureFiles.Beside("one-line", file))).Vehicle.ShouldNotBeNull();
    }
}
