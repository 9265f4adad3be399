using System.Globalization;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Drawings;
using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Units;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>The values of one finding, for the long form and the short one.</summary>
internal static class FindingView
{
    /// <summary>"Brake line too close to the exhaust: rear brake line, tailpipe".</summary>
    public static string TitleWithParts(Finding finding) => VisibleText.Typed(finding.Title)
        + (finding.Parts.IsEmpty ? "" : ": " + string.Join(", ", finding.Parts.Select(p => VisibleText.Typed(p.Name))));

    public static ScriptObject Of(AnchoredFinding anchored)
    {
        Finding finding = anchored.Finding;
        ScriptObject view = new()
        {
            ["anchor"] = anchored.Anchor,
            ["id"] = VisibleText.Typed(finding.Id),
            ["rule"] = VisibleText.Typed(finding.Rule),
            ["title"] = VisibleText.Typed(finding.Title),
            ["severity"] = ReportWords.Severity(finding.Severity),
            ["severity_meaning"] = ReportWords.SeverityMeaning(finding.Severity),
            ["severity_name"] = MachineWords.Of(finding.Severity),
            ["sign"] = SeveritySign.Of(finding.Severity),
            ["verdict"] = ReportWords.Verdict(finding),
            ["verdict_name"] = MachineWords.Of(finding.Verdict),
            ["verdict_sentence"] = ReportWords.VerdictSentence(finding),
            ["consequence"] = finding.Consequence ?? "",
            ["advice"] = finding.Advice ?? "",
            ["hand_check"] = finding.HandCheck ?? "",
            ["checked"] = VisibleText.Sentence(finding.Checked),
            ["accepted"] = VisibleText.Sentence(ReportWords.Accepted(finding.Accepted)),
            ["recheck"] = string.Join(", ", finding.Recheck.Select(ReportWords.Plain)),
            ["parts"] = new ScriptArray(finding.Parts.Select((part, index) => Part(part, index, finding))),
            ["quantity"] = finding.Quantity.Name,
            ["meaning"] = finding.Quantity.Meaning,
            ["limit"] = Together(Figures.Limit(finding.Limit, finding.Quantity, finding.Evidence?.Value)),
            ["limit_pieces"] = Pieces(Figures.Limit(finding.Limit, finding.Quantity, finding.Evidence?.Value)),
            ["because"] = string.Join(", ", finding.Limit.Because.Select(ReportWords.Plain)),
            ["source"] = ReportWords.Source(finding.Source),
            ["shields"] = new ScriptArray(finding.Shields),
            ["basis"] = ReportWords.Basis(finding.Basis),
            ["direct"] = new ScriptArray(finding.Direct.Select(d => VisibleText.Typed(d.Words))),
            ["is_seen"] = finding.Basis != FindingBasis.ReadingAndTravel && finding.Evidence is not { Drawing.Parts.IsEmpty: true },
            ["assumes"] = new ScriptArray(finding.Assumes),
            ["cautions"] = new ScriptArray(CautionCatalogue.For(finding).Select(c => c.Text)),
            ["has_evidence"] = finding.Evidence is not null,
            ["is_overlap"] = finding.Evidence is { } found && Figures.IsOverlap(found.Value, finding.Quantity),
        };
        if (finding.Evidence is { } evidence) AddEvidence(view, finding, evidence);
        return view;
    }

    private static ScriptObject Part(PartCard part, int index, Finding finding) => new()
    {
        ["letter"] = finding.Parts.Length > 1 ? ((char)('A' + index)).ToString() : "",
        ["name"] = VisibleText.Typed(part.Name),
        ["kind"] = VisibleText.Typed(ReportWords.Plain(part.Kind)),
        ["body"] = VisibleText.Typed(part.Body),
    };

    private static void AddEvidence(ScriptObject view, Finding finding, Evidence evidence)
    {
        bool isOverlap = Figures.IsOverlap(evidence.Value, finding.Quantity);
        LimitCard limit = finding.Limit;
        view["found_label"] = isOverlap ? "Worst found" : limit.AtLeast is not null ? "Least found" : "Most found";
        // Of a bound by reading and travel nobody has found that it comes so near.
        string least = finding is { Basis: FindingBasis.ReadingAndTravel, Verdict: Verdict.Conforms } ? "at least " : "";
        view["found"] = least + Together(Figures.Value(evidence.Value, finding.Quantity, limit));
        view["found_pieces"] = Pieces(Figures.Value(evidence.Value, finding.Quantity, limit));
        view["give_or_take"] = Together(Figures.GiveOrTake(evidence.GiveOrTake, finding.Quantity.Unit));
        view["bound_label"] = Figures.BoundLabel(evidence.Bound, finding.Quantity, finding.Limit);
        view["bound"] = Together(Figures.BoundValue(evidence.Bound, finding.Quantity, finding.Limit));
        view["grade"] = ReportWords.Grade(evidence.BoundKind);
        view["grade_name"] = MachineWords.Of(evidence.BoundKind);
        view["pose"] = PoseLines(evidence.Pose);
        view["stops"] = Stops(evidence.Pose);
        view["basins"] = new ScriptArray(evidence.Basins.Skip(1).Select(basin => new ScriptObject
        {
            ["value"] = Figures.Value(basin.Value, finding.Quantity, limit),
            ["give_or_take"] = Figures.GiveOrTake(evidence.CoverageFactor * basin.StandardUncertainty, finding.Quantity.Unit),
            ["pose"] = PoseLines(basin.Pose),
        }));
        view["readings"] = new ScriptArray(evidence.Readings.Select(Reading));
        view["first_at"] = Place(evidence.WitnessFirst);
        view["second_at"] = Place(evidence.WitnessSecond);
        view["cells"] = evidence.Cells;
        view["drawing"] = PartDrawing.Draw(finding, evidence);
        view["drawing_caption"] = PartDrawing.Caption(finding, evidence);
        view["plots"] = new ScriptArray(evidence.Plots.Where(p => p.Points.Length > 1).Select(plot => new ScriptObject
        {
            ["caption"] = PlotDrawing.Caption(plot, finding),
            ["svg"] = PlotDrawing.Draw(plot, finding, evidence),
        }));
    }

    /// <summary>A figure whose unit does not stand alone on the next line.</summary>
    private static string Together(string figure) =>
        figure.Replace(" in)", "\u00a0in)", StringComparison.Ordinal).Replace(" mm", "\u00a0mm", StringComparison.Ordinal).Replace(" %", "\u00a0%", StringComparison.Ordinal);

    /// <summary>The millimetres and the inches, each to be kept on one line.</summary>
    private static ScriptArray Pieces(string figure)
    {
        int inches = figure.IndexOf(" (", StringComparison.Ordinal);
        return inches < 0 ? [Together(figure)] : [Together(figure[..inches]), Together(figure[(inches + 1)..])];
    }

    private static ScriptArray PoseLines(PoseCard pose) => pose.Coordinates.IsEmpty
        ? ["the same in every pose: these never move against each other"]
        : new ScriptArray(pose.Coordinates.Select(c => string.IsNullOrWhiteSpace(c.Words) ? $"{c.Name} {Figures.Brief(c.Value, c.Unit)}" : c.Words));

    private static string Stops(PoseCard pose) => string.Join(", ", pose.ActiveStops.Select(VisibleText.Typed));

    private static ScriptObject Reading(ReadingShare reading) => new()
    {
        ["words"] = VisibleText.Typed(reading.Words),
        ["share"] = NumberFormat.UpTo(100 * reading.Share, 0) + " %",
        ["within"] = Figures.GiveOrTake(reading.WithinMm, "mm"),
    };

    /// <summary>A place in the vehicle frame in words, from the zero of the measurements.</summary>
    private static string Place(Vector3d at) => string.Join(", ",
        Along(at.X, "forward", "rearward"), Along(at.Y, "left", "right"), Along(at.Z, "up", "down")) + " of zero";

    private static string Along(double mm, string positive, string negative) =>
        string.Create(CultureInfo.InvariantCulture, $"{NumberFormat.Fixed(Math.Abs(mm), 0)} mm {(mm < 0 ? negative : positive)}");
}
