using ClearanceCheck.Reporting.Tests.Samples;

namespace ClearanceCheck.Reporting.Tests;

public sealed class SummaryTextTests
{
    [Fact]
    public void The_summary_says_the_decision_then_each_finding_on_one_line_then_the_counts()
    {
        string[] lines = SummaryText.Write(SampleResult.Whole(), colour: false).Split('\n');

        lines[0].ShouldBe("HELD  Harrow Ridgeback 4x4, 1997");
        lines[1].ShouldStartWith("Do not drive this vehicle.");
        lines.ShouldContain("  DANGER   Brake line too close to the exhaust (rear brake line / tailpipe): 18 mm (11/16 in) give or take 4 mm (3/16 in), limit at least 50 mm (1-15/16 in); fails");
        lines.ShouldContain("  DANGER   Brake hose pulled straight (front left brake hose): limit at least 4 %; could not be checked: the free length of the front left brake hose is missing");
        lines.Count(l => l.Contains("meets the limit", StringComparison.Ordinal)).ShouldBe(0);
        lines.ShouldContain("8 findings: 4 fail, 1 too close to call, 1 could not be checked, 2 meet the limit; 1 rule found nothing to judge");
        lines[^1].ShouldBe("");
    }

    [Fact]
    public void An_overlap_and_a_limit_below_zero_are_told_in_words()
    {
        string summary = SummaryText.Write(SampleResult.Shapes(), colour: false);

        summary.ShouldContain("(rear left tire / rear left inner fender): overlap by at least 12 mm (7/16 in) give or take 4 mm (3/16 in), limit at least 0 mm (0 in); fails");
        summary.ShouldContain("overlap by at least 2.3 mm (0.09 in) give or take 0.1 mm (under 1/16 in), limit overlap of at most 2 mm (0.079 in); fails");
        summary.ShouldNotContain("-12");
    }

    [Fact]
    public void Without_colour_there_is_no_escape_and_with_it_the_words_are_the_same()
    {
        string plain = SummaryText.Write(SampleResult.Whole(), colour: false);
        string coloured = SummaryText.Write(SampleResult.Whole(), colour: true);

        plain.ShouldNotContain('\e');
        coloured.ShouldContain("\e[1;97;41mHELD\e[0m");
        System.Text.RegularExpressions.Regex.Replace(coloured, "\e\\[[0-9;]*m", "").ShouldBe(plain);
    }

    [Fact]
    public void A_clear_vehicle_has_no_list_of_failures() =>
        SummaryText.Write(SampleResult.Clear(), colour: false).ShouldNotContain("What stands against it");
}
