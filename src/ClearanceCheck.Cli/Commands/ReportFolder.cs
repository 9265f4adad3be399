using System.Collections.Immutable;
using ClearanceCheck.Cli.Inputs;
using ClearanceCheck.Cli.Outputs;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting;

namespace ClearanceCheck.Cli.Commands;

/// <summary>Where a report is written to.</summary>
internal sealed class ReportFolder(Door door, string folder)
{
    public const string Page = "report.html";
    public const string Data = "findings.json";
    public const string Travel = "travel.csv";

    private static readonly ImmutableArray<(string Format, string Name, Func<InspectionResult, string> Content)> Files =
    [
        (ReportFormats.Html, Page, HtmlReport.Write),
        (ReportFormats.Json, Data, FindingsJson.Write),
        (ReportFormats.Csv, Travel, TravelCsv.Write),
    ];

    /// <summary>Writes the report whole, or says why it could not be written.</summary>
    public bool Write(InspectionResult result, ImmutableArray<string> formats) =>
        Write([.. Files.Where(f => formats.Contains(f.Format)).Select(f => WholeFiles.Text(f.Name, f.Content(result)))]);

    /// <summary>Writes files whole, or says why they could not be written.</summary>
    public bool Write(IReadOnlyList<(string Name, byte[] Content)> files)
    {
        try
        {
            WholeFiles.Write(door.Resolve(folder), files);
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            InputFault.Print(door, new InputFault($"Nothing was written into {folder}: {e.Message}", "Choose another folder with --out."));
            return false;
        }
    }

    /// <summary>Whether a file is there already with another content.</summary>
    public bool HoldsOther(string name, ReadOnlySpan<byte> content)
    {
        string path = Path.Combine(door.Resolve(folder), name);
        return File.Exists(path) && !content.SequenceEqual(File.ReadAllBytes(path));
    }

    /// <summary>Prints the summary and where the report stands.</summary>
    public void Print(InspectionResult result, ImmutableArray<string> formats)
    {
        door.Output.Write(SummaryText.Write(result, door.ColoursOutput));
        string[] written = [.. Files.Where(f => formats.Contains(f.Format)).Select(f => Named(f.Name))];
        door.Output.WriteLine($"Written: {string.Join(", ", written[..^1])}{(written.Length > 1 ? " and " : "")}{written[^1]}");
        foreach ((string format, string name, _) in Files)
            if (!formats.Contains(format) && File.Exists(Path.Combine(door.Resolve(folder), name))) door.Error.WriteLine($"note: {Named(name)} is of an earlier run.");
    }

    /// <summary>A file of the folder as it is called to the person who typed the folder.</summary>
    public string Named(string name) => Path.Combine(folder, name);
}
