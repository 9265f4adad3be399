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

    /// <summary>Writes the report whole, or says why it could not be written.</summary>
    public bool Write(InspectionResult result, ImmutableArray<string> formats)
    {
        var files = new List<(string, byte[])>();
        if (formats.Contains(ReportFormats.Html)) files.Add(WholeFiles.Text(Page, HtmlReport.Write(result)));
        if (formats.Contains(ReportFormats.Json)) files.Add(WholeFiles.Text(Data, FindingsJson.Write(result)));
        return Write(files);
    }

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
        IEnumerable<string> written = new[] { (ReportFormats.Html, Page), (ReportFormats.Json, Data) }.Where(f => formats.Contains(f.Item1)).Select(f => Named(f.Item2));
        door.Output.WriteLine($"Written: {string.Join(" and ", written)}");
        foreach ((string format, string name) in new[] { (ReportFormats.Html, Page), (ReportFormats.Json, Data) })
            if (!formats.Contains(format) && File.Exists(Path.Combine(door.Resolve(folder), name))) door.Error.WriteLine($"note: {Named(name)} is of an earlier run.");
    }

    /// <summary>A file of the folder as it is called to the person who typed the folder.</summary>
    public string Named(string name) => Path.Combine(folder, name);
}
