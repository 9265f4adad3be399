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

    /// <summary>The drawing; null when the evidence holds nothing to draw.</summary>
    public static RawHtml? Draw(Finding finding, Evidence evidence)
    {
        if (!evidence.Drawing.Parts.Any(p => p.Points.Length > 0)) return null;
        ViewPlane plane = ViewPlane.Choose(evidence);
        PageMap map = Map(plane, finding, evidence);
        SvgWriter svg = SvgWriter.Begin(Width, Height + FootHeight, "drawing", Caption(finding, evidence));
        svg.Box(0.5, 0.5, Width - 1, Height - 1, "frame").OpenWindow(1, 1, Width - 2, Height - 2);
        for (int i = evidence.Drawing.Parts.Length - 1; i >= 0; i--) DrawPart(svg, map, evidence.Drawing.Parts[i], i);
        PagePoint label = DimensionDrawing.Draw(svg, map, evidence, DimensionText(finding, evidence));
        if (finding.Parts.Length > 1) LetterDrawing.Draw(svg, map, evidence, label);
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
        return Figures.Value(evidence.Value, finding.Quantity, Figures.Bound(finding.Limit)).Split(" (")[0];
    }

    private static PageMap Map(ViewPlane plane, Finding finding, Evidence evidence)
    {
        Vector3d centre = Vector3d.Lerp(evidence.WitnessFirst, evidence.WitnessSecond, 0.5);
        double gap = (evidence.WitnessSecond - evidence.WitnessFirst).Length;
        if (!IsWhole(finding, evidence))
        {
            double thickest = evidence.Drawing.Parts.Max(p => p.RadiusMm);
            double wanted = ((gap / 2) + (2.2 * thickest)) * 1.15;
            return new PageMap(plane, centre, Math.Clamp(wanted, Math.Max(1.2 * gap, 25), Math.Max(5 * gap, 90)), Width - 2, Height - 2);
        }

        (double Right, double Up)[] all = [.. evidence.Drawing.Parts.SelectMany(p => p.Points).Select(plane.Project)];
        double spanRight = all.Max(p => p.Right) - all.Min(p => p.Right);
        double spanUp = all.Max(p => p.Up) - all.Min(p => p.Up);
        Vector3d middle = (plane.Right * (all.Min(p => p.Right) + (spanRight / 2))) + (plane.Up * (all.Min(p => p.Up) + (spanUp / 2)));
        double half = Math.Max(spanRight * Height / Width, spanUp) / 2;
        return new PageMap(plane, middle, Math.Max(half * 1.35, 20), Width - 2, Height - 2);
    }

    private static void DrawPart(SvgWriter svg, PageMap map, DrawnPart part, int index)
    {
        PagePoint[] chain = [.. part.Points.Select(p => map[p])];
        if (chain.Length == 1) chain = [chain[0], chain[0]];
        if (part.Dashed)
        {
            svg.Chain(chain, "straight");
            return;
        }

        double width = Math.Max(2 * part.RadiusMm * map.UnitsPerMm, 5);
        svg.Chain(chain, "part-edge", width);
        svg.Chain(chain, index == 0 ? "part-first" : "part-second", Math.Max(width - 3, 2));
    }
}
