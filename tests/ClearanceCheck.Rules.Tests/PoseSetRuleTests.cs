using ClearanceCheck.Documents;
using ClearanceCheck.Quantities.Sets;

namespace ClearanceCheck.Rules.Tests;

/// <summary>Rules that look over some poses only, and rules on angles.</summary>
public sealed class PoseSetRuleTests
{
    private const string Rules = """
        format: 1
        library: shop
        version: 1.0.0
        rules:
          joint-bent-far:
            quantity: joint-angle
            severity: warning
            part: { kind: [ driveshaft ] }
            source: { basis: shop, known: none, text: "Ours" }
            over: OVER
            limit: { at-most: 22.5 deg }
            examples:
              - { value: 22.6 deg, expect: fails }
              - { value: 22.5 deg, expect: conforms }
        """;

    [Theory]
    [InlineData("all-poses", PoseSet.AllPoses)]
    [InlineData("droop", PoseSet.Droop)]
    [InlineData("bump", PoseSet.Bump)]
    [InlineData("full-droop", PoseSet.FullDroop)]
    [InlineData("full-bump", PoseSet.FullBump)]
    [InlineData("articulated", PoseSet.Articulated)]
    [InlineData("ride-height", PoseSet.RideHeight)]
    public void Every_word_of_a_pose_set_is_read(string word, PoseSet set)
    {
        (RuleLibrary? library, _) = Libraries.Read(Rules.Replace("OVER", word, StringComparison.Ordinal));

        Rule rule = library.ShouldNotBeNull().Rules.ShouldHaveSingleItem();
        rule.Over.ShouldBe(set);
        rule.Limit.AtMost.ShouldBe(22.5);
    }

    [Fact]
    public void An_angle_in_millimetres_is_refused()
    {
        string text = Rules.Replace("OVER", "droop", StringComparison.Ordinal).Replace("at-most: 22.5 deg", "at-most: 22.5 mm", StringComparison.Ordinal);

        (_, DiagnosticBag said) = Libraries.Read(text);

        said.Ordered.ShouldContain(d => d.Id == "rule.value-of-other-unit" && d.Help == "Write for example `5 deg`.");
    }
}
