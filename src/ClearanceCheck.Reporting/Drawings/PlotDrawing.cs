using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Units;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>A quantity over one coordinate: curve, give-or-take band, limit, ride height, the worst place, and what a stop puts out of reach.</summary>
internal static class PlotDrawing
{
    private const double Width = 320;
    private const double Height = 286;
    private const double Left = 46;
    private const double Right = 312;
    private const double Top = 34;
    private const double Bottom = 220;
    private const double WordHeight = 20;

    public static string Caption(PlotCard plot, Finding finding) =>
        $"{VisibleText.Typed(finding.Quantity.Name)} over {VisibleText.Typed(plot.Label)}, everything else kept in the worst pose. Grey band: give or take. Striped: out of reach, a stop is in the way.{(plot.Points.Any(p => Figures.IsOverlap(p.Value, finding.Quantity)) ? " Below zero the two overlap." : "")}";

    public static RawHtml Draw(PlotCard plot, Finding finding, Evidence evidence)
    {
        string unit = finding.Quantity.Unit;
        double limit = Figures.Bound(finding.Limit);
        PlotScale scale = PlotScale.Of(plot, finding.Limit, evidence.Value, evidence.GiveOrTake, new PlotFrame(Left, Right, Top, Bottom));
        SvgWriter svg = SvgWriter.Begin(Width, Height, "plot", Description(plot, finding, evidence));
        DrawUnreachable(svg, plot, scale);
        svg.OpenWindow(Left, Top, Right - Left, Bottom - Top).Area(Band(plot, scale, evidence.GiveOrTake).Select(Inner), "band").CloseWindow();
        DrawGrid(svg, scale, unit);
        if (IsOverlapShown(scale, finding)) DrawTouch(svg, scale);
        DrawZero(svg, plot, scale);
        PagePoint limitAt = scale.At(scale.Lowest, limit);
        svg.Line(limitAt, scale.At(scale.Highest, limit), "limit");
        bool isLimitHigh = limitAt.Y < Top + 24;
        svg.Text(new PagePoint(Right - 4, limitAt.Y + (isLimitHigh ? 20 : -7)), "limit " + Figures.Brief(limit, finding.Quantity), "plot-text strong", "end");
        svg.OpenWindow(Left, Top, Right - Left, Bottom - Top);
        foreach (PagePoint[] run in Runs(plot, scale, isReachable: false)) svg.Chain(run.Select(Inner), "curve-out");
        foreach (PagePoint[] run in Runs(plot, scale, isReachable: true)) svg.Chain(run.Select(Inner), "curve");
        svg.CloseWindow();
        DrawWorst(svg, plot, scale, evidence.Value);
        return svg.End();
    }

    private static string Description(PlotCard plot, Finding finding, Evidence evidence) =>
        $"{VisibleText.Typed(finding.Quantity.Name)} over {VisibleText.Typed(plot.Label)}: worst {Figures.Value(evidence.Value, finding.Quantity, finding.Limit)} at {Figures.Brief(plot.At, plot.Unit)}; limit {Figures.Limit(finding.Limit, finding.Quantity, evidence.Value)}.";

    /// <summary>A point in the coordinates of the window over the plot's field.</summary>
    private static PagePoint Inner(PagePoint at) => at - new PagePoint(Left, Top);

    private static void DrawGrid(SvgWriter svg, PlotScale scale, string unit)
    {
        foreach (double tick in scale.ValueTicks())
        {
            PagePoint at = scale.At(scale.Lowest, tick);
            svg.Line(at, new PagePoint(Right, at.Y), "grid").Text(new PagePoint(Left - 6, at.Y + 5), NumberFormat.UpTo(tick, 2), "plot-text", "end");
        }

        svg.Line(new PagePoint(Left, Top), new PagePoint(Left, Bottom), "axis").Line(new PagePoint(Left, Bottom), new PagePoint(Right, Bottom), "axis");
        svg.Text(new PagePoint(Left - 6, Top - 16), unit, "plot-text", "end");
    }

    private static bool IsOverlapShown(PlotScale scale, Finding finding) => Figures.IsOverlap(scale.ValueLow, finding.Quantity);

    /// <summary>Where the two touch, and that they overlap under it.</summary>
    private static void DrawTouch(SvgWriter svg, PlotScale scale)
    {
        double y = Math.Clamp(scale.At(scale.Lowest, 0).Y, Top, Bottom);
        if (scale.ValueHigh > 0) svg.Line(new PagePoint(Left, y), new PagePoint(Right, y), "touch");
        if (Bottom - y >= WordHeight) svg.Text(new PagePoint(Left + 6, y + 17), "overlap", "plot-text");
    }

    private static void DrawZero(SvgWriter svg, PlotCard plot, PlotScale scale)
    {
        bool isTravel = plot.Unit == "mm";
        svg.Text(new PagePoint(Left, Bottom + 20), Figures.Brief(scale.Lowest, plot.Unit), "plot-text");
        svg.Text(new PagePoint(Right, Bottom + 20), Figures.Brief(scale.Highest, plot.Unit), "plot-text", "end");
        if (isTravel && scale.Lowest < 0) svg.Text(new PagePoint(Left, Bottom + 40), "droop", "plot-text");
        if (isTravel && scale.Highest > 0) svg.Text(new PagePoint(Right, Bottom + 40), "bump", "plot-text", "end");
        if (scale.Lowest > 0 || scale.Highest < 0) return;
        PagePoint zero = scale.At(0, scale.ValueLow);
        svg.Line(new PagePoint(zero.X, Top), new PagePoint(zero.X, Bottom + 6), "ride");
        svg.Text(new PagePoint(Math.Clamp(zero.X, Left + 44, Right - 44), Bottom + 60), isTravel ? "ride height" : "straight ahead", "plot-text strong", "middle");
        svg.Line(new PagePoint(zero.X, Bottom + 6), new PagePoint(zero.X, Bottom + 44), "ride");
    }

    private static void DrawWorst(SvgWriter svg, PlotCard plot, PlotScale scale, double value)
    {
        PagePoint worst = scale.At(Math.Clamp(plot.At, scale.Lowest, scale.Highest), Math.Clamp(value, scale.ValueLow, scale.ValueHigh));
        string words = "worst at " + Figures.Brief(plot.At, plot.Unit);
        double half = words.Length * 5.1;
        svg.Line(new PagePoint(worst.X, Top - 12), worst, "worst-line").Disc(worst, 6, "worst");
        svg.Text(new PagePoint(Math.Clamp(worst.X, Left + half + 6, Width - half - 2), Top - 17), words, "plot-text strong", "middle");
    }

    private static void DrawUnreachable(SvgWriter svg, PlotCard plot, PlotScale scale)
    {
        for (int i = 0; i < plot.Points.Length; i++)
        {
            if (plot.Points[i].Reachable) continue;
            int last = i;
            while (last + 1 < plot.Points.Length && !plot.Points[last + 1].Reachable) last++;
            // A stretch begins half-way to its reachable neighbour: between the two nobody looked.
            double from = i == 0 ? scale.Lowest : (plot.Points[i - 1].At + plot.Points[i].At) / 2;
            double to = last + 1 == plot.Points.Length ? scale.Highest : (plot.Points[last].At + plot.Points[last + 1].At) / 2;
            double left = scale.At(from, scale.ValueLow).X;
            svg.Box(left, Top, scale.At(to, scale.ValueLow).X - left, Bottom - Top, "unreachable");
            i = last;
        }
    }

    private static IEnumerable<PagePoint> Band(PlotCard plot, PlotScale scale, double giveOrTake) =>
        plot.Points.Select(p => scale.At(p.At, p.Value + giveOrTake)).Concat(plot.Points.Reverse().Select(p => scale.At(p.At, p.Value - giveOrTake)));

    private static IEnumerable<PagePoint[]> Runs(PlotCard plot, PlotScale scale, bool isReachable)
    {
        List<PagePoint> run = [];
        foreach (PlotPoint point in plot.Points)
        {
            if (point.Reachable == isReachable)
            {
                run.Add(scale.At(point.At, point.Value));
                continue;
            }

            if (run.Count > 1) yield return [.. run];
            run.Clear();
        }

        if (run.Count > 1) yield return [.. run];
    }
}
