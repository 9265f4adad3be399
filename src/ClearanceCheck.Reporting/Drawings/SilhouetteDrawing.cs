namespace ClearanceCheck.Reporting.Drawings;

/// <summary>A part as one hatched shape with an edge around it: first everything as edge, then everything as hatching over it, so that inner borders vanish.</summary>
internal static class SilhouetteDrawing
{
    /// <summary>A line thinner than this is drawn as thick, so that it is seen.</summary>
    private const double LeastWidth = 5;

    /// <summary>Width of the edge around the hatching, on both sides together.</summary>
    private const double EdgeWidth = 3;

    public static void Draw(SvgWriter svg, Silhouette part, int index, bool isOverlap)
    {
        // Where two parts overlap, both hatchings are seen: the one on top is laid over like tracing paper.
        if (isOverlap) svg.OpenGroup("part-over");
        string hatching = index == 0 ? "part-first" : "part-second";
        DrawLayer(svg, part, "part-edge", EdgeWidth);
        if (!part.Dashed || !part.Pieces.IsEmpty) DrawLayer(svg, part, hatching, 0);
        if (isOverlap) svg.CloseGroup();
    }

    private static void DrawLayer(SvgWriter svg, Silhouette part, string className, double edge)
    {
        foreach (IGrouping<double, SilhouettePiece> same in part.Pieces.GroupBy(p => Math.Max(2 * p.Radius, EdgeWidth)).OrderBy(g => g.Key))
            svg.Path(OutlinePath.Of(same.Select(p => p.Hull)), className + " piece", same.Key - EdgeWidth + edge);
        if (part.Chain.IsEmpty) return;
        PagePoint[] chain = part.Chain.Length == 1 ? [part.Chain[0], part.Chain[0]] : [.. part.Chain];
        if (part.Dashed)
        {
            if (edge > 0) svg.Chain(chain, "straight");
            return;
        }

        double width = Math.Max(2 * part.Radius, LeastWidth);
        svg.Chain(chain, className, edge > 0 ? width : Math.Max(width - EdgeWidth, 2));
    }
}
