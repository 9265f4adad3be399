using ClearanceCheck.Geometry;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>The scale bar and which way is up, forward and left, under a drawing.</summary>
internal static class FootDrawing
{
    private const double LongestBar = 120;

    public static void Draw(SvgWriter svg, PageMap map, double width, double top)
    {
        DrawBar(svg, map, width, top);
        DrawDirections(svg, map, top);
    }

    private static void DrawBar(SvgWriter svg, PageMap map, double width, double top)
    {
        double mm = NiceStep.AtMost(LongestBar / map.UnitsPerMm);
        double length = mm * map.UnitsPerMm;
        PagePoint right = new(width - 8, top + 24);
        PagePoint left = right - new PagePoint(length, 0);
        svg.Line(left, right, "bar").Line(left - new PagePoint(0, 6), left + new PagePoint(0, 6), "bar").Line(right - new PagePoint(0, 6), right + new PagePoint(0, 6), "bar");
        svg.Text(right + new PagePoint(0, 26), Wording.Figures.Plain(mm, "mm"), "drawing-text", "end");
    }

    private static void DrawDirections(SvgWriter svg, PageMap map, double top)
    {
        PagePoint start = new(30, top + 36);
        IEnumerable<(string Word, PagePoint Page)> seen = new[] { ("up", Vector3d.UnitZ), ("forward", Vector3d.UnitX), ("left", Vector3d.UnitY) }
            .Select(d => (d.Item1, map.Direction(d.Item2))).Where(d => d.Item2.Length > 0.5).Take(2);
        double textLeft = start.X + 36;
        int row = 0;
        foreach ((string word, PagePoint page) in seen)
        {
            PagePoint at = new(textLeft - 36, top + 19 + (row * 28));
            PagePoint unit = page.UnitOr(new PagePoint(0, -1));
            PagePoint tip = at + (unit * 12);
            PagePoint foot = tip - (unit * 9);
            svg.Line(at - (unit * 12), foot, "dimension").Area([tip, foot + (unit.Turned * 4.5), foot - (unit.Turned * 4.5)], "arrow");
            svg.Text(new PagePoint(textLeft - 14, at.Y + 6), word, "drawing-text");
            row++;
        }
    }
}
