using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Pages;

/// <summary>What every section gets: the result and the page's anchors.</summary>
public sealed class ReportContext
{
    internal ReportContext(InspectionResult result, IEnumerable<string> sectionNames)
    {
        Result = result;
        Anchors = new Anchors(result.Findings, sectionNames.Select(SectionAnchor).Concat(["hatch-first", "hatch-second", "hatch-unreachable"]));
        Open = [.. Indexed().Where(f => f.Finding.Verdict != Verdict.Conforms)];
        Conforming = [.. Indexed().Where(f => f.Finding.Verdict == Verdict.Conforms)];
    }

    public InspectionResult Result { get; }

    public Anchors Anchors { get; }

    /// <summary>Findings that do not conform with their anchors, in the result's order.</summary>
    public ImmutableArray<AnchoredFinding> Open { get; }

    /// <summary>Conforming findings with their anchors, in the result's order.</summary>
    public ImmutableArray<AnchoredFinding> Conforming { get; }

    internal static string SectionAnchor(string name) => "section-" + name;

    private IEnumerable<AnchoredFinding> Indexed() => Result.Findings.Select((finding, index) => new AnchoredFinding(finding, Anchors[index]));
}
