using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>The two parts of a finding at their worst, seen square to the closest approach, true to scale, with the gap dimensioned.</summary>
/// <remarks>A finding on one part with something dashed in it (a hose and its straight line) is shown whole; any other close to its narrowest place.</remarks>
internal static class PartDrawing
{
    private const double Width = 320;
    private const double Height = 240;
    private const double FootHeight = 62;

    /// <summary>What is shown around the gap of parts that are not thin: so many gaps, within these two, in mm.</summary>
    private const double AroundShare = 10;
    private const double LeastAroundMm = 60;
    private const double MostAroundMm = 120;

    /// <summary>The drawing; null when the evidence holds nothing to draw.</summary>
    public static RawHtml? Draw(Finding finding, Evidence evidence)
    {
        if (!HasAnything(evidence)) return null;
        ViewPlane plane = ViewPlane.Choose(evidence);
        PageMap map = Map(plane, finding, evidence);
        ImmutableArray<Silhouette> parts = [.. evidence.Drawing.Parts.Select(p => Silhouette.Of(p, at => map[at], map.UnitsPerMm).Within(Width, Height, 4))];
        SvgWriter svg = SvgWriter.Begin(Width, Height + FootHeight, "drawing", Caption(finding, evidence));
        svg.Box(0.5, 0.5, Width - 1, Height - 1, "frame").OpenWindow(1, 1, Width - 2, Height - 2);
        bool isOverlap = Figures.IsOverlap(evidence.Value, finding.Quantity);
        for (int i = parts.Length - 1; i >= 0; i--) SilhouetteDrawing.Draw(svg, parts[i], i, isOverlap);
        var dimension = new DimensionDrawing(map, parts, map[evidence.WitnessFirst], map[evidence.WitnessSecond], map.Direction(plane.Across), isOverlap);
        PagePoint label = dimension.Draw(svg, DimensionLines(finding, evidence));
        if (finding.Parts.Length > 1) LetterDrawing.Draw(svg, map, parts, [dimension.First, dimension.Second], label);
        svg.CloseWindow();
        FootDrawing.Draw(svg, map, Width, Height);
        return svg.End();
    }

    public static string Caption(Finding finding, Evidence evidence)
    {
        string names = finding.Parts.Length > 1
            ? string.Join(" and ", finding.Parts.Select((p, i) => $"{(char)('A' + i)} {VisibleText.Typed(p.Name)}"))
            : string.Concat(finding.Parts.Select(p => VisibleText.Typed(p.Name)));
        return $"{ViewPlane.Choose(evidence).Words}: {names}, {DimensionText(finding, evidence)}.";
    }

    private static bool IsWhole(Finding finding, Evidence evidence) => finding.Parts.Length == 1 && evidence.Drawing.Parts.Any(p => p.Dashed);

    private static string DimensionText(Finding finding, Evidence evidence)
    {
        double distance = (evidence.WitnessSecond - evidence.WitnessFirst).Length;
        if (IsWhole(finding, evidence)) return "ends " + Figures.Brief(distance, "mm") + " apart";
        if (finding.Quantity.Unit != "mm") return Figures.Brief(distance, "mm");
        return Figures.Value(evidence.Value, finding.Quantity, finding.Limit).Split(" (")[0];
    }

    private static bool HasAnything(Evidence evidence) => evidence.Drawing.Parts.Any(p => !p.Points.IsEmpty || p.Pieces.Any(piece => !piece.Corners.IsEmpty));

    /// <summary>The lines of the label; an overlap's second line says that it is known on one side only.</summary>
    private static ImmutableArray<string> DimensionLines(Finding finding, Evidence evidence) =>
        Figures.IsOverlap(evidence.Value, finding.Quantity) && !IsWhole(finding, evidence)
            ? ["overlap " + Figures.Depth(evidence.Value, finding.Limit), Figures.DepthSide(finding.Limit)]
            : [DimensionText(finding, evidence)];

    private static PageMap Map(ViewPlane plane, Finding finding, Evidence evidence)
    {
        Vector3d centre = Vector3d.Lerp(evidence.WitnessFirst, evidence.WitnessSecond, 0.5);
        double gap = (evidence.WitnessSecond - evidence.WitnessFirst).Length;
        if (!IsWhole(finding, evidence)) return new PageMap(plane, centre, HalfMm(evidence, centre, gap), Width - 2, Height - 2);

        (double Right, double Up)[] all = [.. evidence.Drawing.Parts.SelectMany(p => p.Points.Concat(p.Pieces.SelectMany(piece => piece.Corners))).Select(plane.Project)];
        double spanRight = all.Max(p => p.Right) - all.Min(p => p.Right);
        double spanUp = all.Max(p => p.Up) - all.Min(p => p.Up);
        Vector3d middle = (plane.Right * (all.Min(p => p.Right) + (spanRight / 2))) + (plane.Up * (all.Min(p => p.Up) + (spanUp / 2)));
        double half = Math.Max(spanRight * Height / Width, spanUp) / 2;
        return new PageMap(plane, middle, Math.Max(half * 1.35, 20), Width - 2, Height - 2);
    }

    /// <summary>What the window shows at least, from its middle to its nearer edge, in mm.</summary>
    private static double HalfMm(Evidence evidence, Vector3d centre, double gap)
    {
        double thickest = evidence.Drawing.Parts.Max(p => p.RadiusMm);
        double half = Math.Clamp(((gap / 2) + (2.2 * thickest)) * 1.15, Math.Max(1.2 * gap, 25), Math.Max(5 * gap, 90));
        DrawnPiece[] pieces = [.. evidence.Drawing.Parts.SelectMany(p => p.Pieces).Where(p => !p.Corners.IsEmpty)];
        if (pieces.Length == 0) return half;
        // Of a plate or a tire enough is shown to tell what it is; the wider the gap, the more.
        double reach = pieces.Max(p => p.RadiusMm + p.Corners.Max(c => (c - centre).Length));
        return Math.Max(half, (gap / 2) + Math.Clamp(Math.Min(reach, AroundShare * gap), LeastAroundMm, MostAroundMm));
    }
}
