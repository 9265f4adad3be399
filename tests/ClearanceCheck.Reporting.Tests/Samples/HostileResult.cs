using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Tests.Samples;

/// <summary>The sample with one text in place of every text that it holds.</summary>
internal static class HostileResult
{
    public static InspectionResult Of(string text)
    {
        InspectionResult whole = SampleResult.Whole();
        return whole with
        {
            Vehicle = new VehicleCard
            {
                Name = text,
                Job = text,
                Lift = text,
                Date = text,
                Inspector = text,
                Odometer = text,
                Drive = text,
                Load = text,
                Fuel = text,
                Datum = text,
            },
            Scope = [text],
            Library = new LibraryCard(text, text, text, 3, [text])
            {
                Layers = [new LayerCard(text, text, false, text), new LayerCard(text, text, true, text)],
                Changes = [new RuleChangeCard(text, text, "loosened", [text], text, text, text, text, text)],
            },
            Decision = new DecisionCard(DecisionKind.Held, [text], [new ActionLine(text, text), new ActionLine(text, null)]),
            Findings = [.. whole.Findings.Select(f => Of(f, text))],
            NotInspected = [new NotInspectedItem(text, text)],
            MatchedNothing = [new UnmatchedRule(text, text, text)],
            Exempt = [new ExemptZone([text, text], text, 3, text)],
            Assumptions = [new Assumption(text, text)],
            Reach = [new ReachCard(text, text, "mm", -1, 1, text, text)],
            Travel = [.. whole.Travel.Take(1).Select(t => Of(t, text))],
            Measurements = [new MeasurementRow(text, text, null, 3, 1, true)],
            Provenance = whole.Provenance with { ProgramVersion = text, ReportId = text, Inputs = [new InputFile(text, 3, text)], Settings = [new Setting(text, text)] },
        };
    }

    private static Finding Of(Finding finding, string text) => finding with
    {
        Id = text,
        Rule = text,
        Title = text,
        Consequence = text,
        Advice = text,
        HandCheck = text,
        Checked = text,
        Accepted = new AcceptedCard(text, true, text, text, text, text, null),
        Missing = finding.Missing is null ? null : text,
        Recheck = [text],
        Parts = [.. finding.Parts.Select(_ => new PartCard(text, text, text, text))],
        Quantity = finding.Quantity with { Name = text, Meaning = text },
        Limit = finding.Limit with { Because = [text] },
        Source = new SourceCard(text, text, text),
        Assumes = [text],
        Shields = [text],
        Evidence = finding.Evidence is { } evidence ? Of(evidence, text) : null,
    };

    private static TravelTable Of(TravelTable table, string text) => table with
    {
        Axle = text,
        Columns = [.. table.Columns[..^1], new TravelColumn("x" + text, text, "mm")],
        Rows = [.. table.Rows.Select(r => r with
        {
            Label = text,
            EndedBy = [.. r.EndedBy.Take(1).Select(_ => new TravelEnd(text, text, true))],
            Passed = [.. r.Passed.Select(p => new TravelPassed(text, text, p.BeyondMm))],
        })],
        Paths = [.. table.Paths.Select(p => p with { Label = text, Met = [.. p.Met.Select(m => m with { Id = text, Words = text })] })],
    };

    private static Evidence Of(Evidence evidence, string text) => evidence with
    {
        Pose = Of(evidence.Pose, text),
        Basins = [.. evidence.Basins.Select(b => b with { Pose = Of(b.Pose, text) })],
        Readings = [.. evidence.Readings.Select(r => r with { Path = text })],
        Plots = [.. evidence.Plots.Select(p => p with { Coordinate = text, Label = text })],
        Drawing = new DrawingCard([.. evidence.Drawing.Parts.Select(p => p with { PartId = text })]),
    };

    private static PoseCard Of(PoseCard pose, string text) => new(
        [.. pose.Coordinates.Take(1).Select(c => c with { Name = text, Words = text })],
        [.. Enumerable.Repeat(text, pose.ActiveStops.Length)]);
}
