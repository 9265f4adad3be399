using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Rules;
using ClearanceCheck.Sweeping;

namespace ClearanceCheck.Reporting.Json;

/// <summary>Reads one finding back.</summary>
internal static class FindingReader
{
    public static Finding Read(JsonNodeReader finding) => new()
    {
        Id = finding["id"].Text,
        Rule = finding["rule"].Text,
        Title = finding["title"].Text,
        Severity = finding["severity"].Word<Severity>(MachineWords.Of),
        Verdict = finding["verdict"].Word<Verdict>(MachineWords.Of),
        Missing = finding["missing"].TextOrNull,
        Parts = [.. finding["parts"].Items.Select(p => new PartCard(p["id"].Text, p["name"].Text, p["kind"].Text, p["body"].Text))],
        Quantity = new QuantityCard(finding["quantity"].Text, finding["quantityName"].Text, finding["quantityMeaning"].Text, finding["unit"].Text),
        Evidence = finding["value"].IsNull ? null : ReadEvidence(finding),
        Limit = ReadLimit(finding["limit"]),
        Consequence = finding["consequence"].TextOrNull,
        Advice = finding["advice"].TextOrNull,
        HandCheck = finding["handCheck"].TextOrNull,
        Checked = finding["checked"].TextOrNull,
        Accepted = AcceptedJson.Read(finding["accepted"]),
        Recheck = finding["recheck"].Texts,
        Assumes = finding["assumes"].Texts,
        Shields = finding["shields"].Texts,
        Basis = finding["basis"].Word<FindingBasis>(MachineWords.Of),
        Direct = [.. finding["direct"].Items.Select(ReadDirect)],
        Source = new SourceCard(finding["source"]["basis"].Text, finding["source"]["known"].Text, finding["source"]["text"].Text),
    };

    private static DirectCard ReadDirect(JsonNodeReader direct) => new(
        direct["reading"].Text, direct["state"].Text, direct["measured"].Number, direct["giveOrTake"].Number, NumberOrNull(direct["computed"]), NumberOrNull(direct["travel"]),
        direct["counts"].YesNo, direct["disagrees"].YesNo, direct["words"].Text);

    private static double? NumberOrNull(JsonNodeReader node) => node.IsNull ? null : node.Number;

    private static LimitCard ReadLimit(JsonNodeReader limit)
    {
        (double? atLeast, double? atMost, string? by) = (limit.OptionalNumber("atLeast"), limit.OptionalNumber("atMost"), limit.OptionalText("by"));
        if (atLeast is null && atMost is null && by is null) throw limit.Wrong("'atLeast', 'atMost' or 'by'");
        (double? first, double? other) = (atLeast, (double?)null);
        if (atLeast is not null && atMost is not null) (first, atMost, other) = limit["judged"].Text == "atLeast" ? (atLeast, (double?)null, atMost) : (null, atMost, atLeast);
        return new LimitCard(first, atMost, limit["because"].Texts) { Other = other, Floor = limit.OptionalNumber("floor"), By = by };
    }

    private static Evidence ReadEvidence(JsonNodeReader finding)
    {
        ImmutableArray<JsonNodeReader> witness = finding["witness"].Items;
        if (witness.Length != 2) throw finding["witness"].Wrong("two points");
        return new Evidence
        {
            Value = finding["value"].Number,
            Bound = finding["bound"].Number,
            BoundKind = finding["boundKind"].Word<Grade>(MachineWords.Of),
            StandardUncertainty = finding["standardUncertainty"].Number,
            CoverageFactor = finding["coverageFactor"].Number,
            Pose = ReadPose(finding),
            WitnessFirst = witness[0].Point,
            WitnessSecond = witness[1].Point,
            Basins = [.. finding["basins"].Items.Select(b => new BasinCard(b["value"].Number, b["standardUncertainty"].Number, ReadPose(b)))],
            Readings = [.. finding["readings"].Items.Select(r => new ReadingShare(r["path"].Text, r["words"].Text, r["share"].Number, r["within"].Number))],
            Drawing = new DrawingCard([.. finding["drawing"].Items.Select(ReadDrawn)]),
            Plots = [.. finding["plots"].Items.Select(ReadPlot)],
            Cells = finding["cells"].Whole,
        };
    }

    private static PoseCard ReadPose(JsonNodeReader holder)
    {
        JsonNodeReader pose = holder["pose"];
        ImmutableArray<JsonNodeReader> words = holder["poseInWords"].Items;
        if (pose.PropertyCount != words.Length) throw pose.Wrong("as many coordinates as 'poseInWords' has");
        return new PoseCard(
            [.. words.Select(w => new PoseCoordinate(w["coordinate"].Text, pose[w["coordinate"].Text].Number, w["unit"].Text, w["words"].Text))],
            holder["activeStops"].Texts);
    }

    private static DrawnPart ReadDrawn(JsonNodeReader part) =>
        new(part["part"].Text, [.. part["points"].Items.Select(p => p.Point)], part["radius"].Number, part["dashed"].YesNo)
        {
            Pieces = [.. part["pieces"].Items.Select(p => new DrawnPiece([.. p["corners"].Items.Select(c => c.Point)], p["radius"].Number))],
        };

    private static PlotCard ReadPlot(JsonNodeReader plot) => new(
        plot["coordinate"].Text, plot["label"].Text, plot["unit"].Text, plot["at"].Number,
        [.. plot["points"].Items.Select(p => new PlotPoint(p["at"].Number, p["value"].Number, p["reachable"].YesNo))]);
}
