using System.Reflection;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Drawings;
using ClearanceCheck.Reporting.Tests.Samples;

namespace ClearanceCheck.Reporting.Tests;

/// <summary>The small sample's outputs, whole, beside the tests. CLEARANCECHECK_RENEW=1 writes them anew; then read the difference.</summary>
public sealed class GoldenReportTests
{
    public static TheoryData<string> Names => ["small.html", "small.findings.json", "whole.summary.txt", "whole.travel.csv", "tire-overlaps-fender.svg"];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_output_is_the_one_that_was_looked_at(string name)
    {
        string written = Write(name);
        if (Environment.GetEnvironmentVariable("CLEARANCECHECK_RENEW") == "1")
        {
            File.WriteAllText(Path.Combine(Folder(), name), written);
            return;
        }

        string[] wanted = File.ReadAllText(Path.Combine(Folder(), name)).ReplaceLineEndings("\n").Split('\n');
        string[] got = written.Split('\n');

        for (int i = 0; i < Math.Max(wanted.Length, got.Length); i++)
            got.ElementAtOrDefault(i).ShouldBe(wanted.ElementAtOrDefault(i), $"{name}, line {i + 1}. Set CLEARANCECHECK_RENEW=1 to write it anew, then look at it.");
    }

    [Fact]
    public void Every_golden_file_is_read_by_a_test() =>
        Directory.GetFiles(Folder()).Select(Path.GetFileName).Order(StringComparer.Ordinal).ShouldBe(Names.Select(n => (string)n).Order(StringComparer.Ordinal));

    private static string Write(string name) => name switch
    {
        "small.html" => HtmlReport.Write(SampleResult.Small()),
        "whole.travel.csv" => TravelCsv.Write(SampleResult.Whole()),
        "small.findings.json" => FindingsJson.Write(SampleResult.Small()),
        "tire-overlaps-fender.svg" => Drawn(SampleFindings.TireNearFender(-12)),
        _ => SummaryText.Write(SampleResult.Whole(), colour: false),
    };

    private static string Drawn(Finding finding) => PartDrawing.Draw(finding, finding.Evidence!)!.Markup.Replace("><", ">\n<", StringComparison.Ordinal) + "\n";

    /// <summary>The folder of the golden files in the sources; the build notes where the project stands.</summary>
    private static string Folder() => Path.Combine(
        typeof(GoldenReportTests).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key == "ProjectFolder").Value!, "Golden");
}
