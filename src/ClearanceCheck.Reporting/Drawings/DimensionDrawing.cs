using System.Collections.Immutable;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>The gap between the two nearest points, or how deep the parts overlap, with arrows and its millimetres.</summary>
/// <param name="across">The direction from one part to the other on the page, for points that fall together.</param>
internal sealed class DimensionDrawing(PageMap map, ImmutableArray<Silhouette> parts, PagePoint first, PagePoint second, PagePoint across, bool isOverlap)
{
    /// <summary>Below this the arrows stand outside and point inward, as drafting does it.</summary>
    private const double LeastInside = 34;

    /// <summary>Half the width of a character of the label, about.</summary>
    private const double CharacterHalf = 6.6;

    private const double LineHeight = 22;
    private const double ArrowLength = 9;
    private const double ArrowHalf = 4;

    public PagePoint First => first;

    public PagePoint Second => second;

    /// <summary>Draws it and returns the middle of its label.</summary>
    public PagePoint Draw(SvgWriter svg, ImmutableArray<string> lines)
    {
        PagePoint along = (second - first).UnitOr(across.UnitOr(new PagePoint(1, 0)));
        // Between the points of an overlap lie both parts: the arrows come from outside, where each part's own surface is.
        bool isInside = !isOverlap && (second - first).Length >= LeastInside;
        foreach (string layer in new[] { "dimension-halo", "dimension" })
        {
            svg.Line(first, second, layer);
            Tick(svg, first, along, layer);
            Tick(svg, second, along, layer);
            Arrow(svg, first, isInside ? along : along * -1, isInside, layer);
            Arrow(svg, second, isInside ? along * -1 : along, isInside, layer);
        }

        return Label(svg, (first + second) * 0.5, along, lines);
    }

    private static void Tick(SvgWriter svg, PagePoint at, PagePoint along, string layer) =>
        svg.Line(at + (along.Turned * 8), at - (along.Turned * 8), layer);

    /// <summary>An arrow with its point at a place; from inside its tail runs along, from outside it has a tail of its own.</summary>
    private static void Arrow(SvgWriter svg, PagePoint at, PagePoint tail, bool isInside, string layer)
    {
        PagePoint foot = at + (tail * ArrowLength);
        svg.Area([at, foot + (tail.Turned * ArrowHalf), foot - (tail.Turned * ArrowHalf)], layer == "dimension" ? "arrow" : layer);
        if (!isInside) svg.Line(foot, at + (tail * (ArrowLength + 16)), layer);
    }

    private PagePoint Label(SvgWriter svg, PagePoint middle, PagePoint along, ImmutableArray<string> lines)
    {
        PagePoint best = middle + (along.Turned * 60);
        double bestRoom = double.NegativeInfinity;
        PagePoint half = new(lines.Max(l => l.Length) * CharacterHalf, 0);
        double height = (lines.Length - 1) * LineHeight / 2;
        foreach ((double aside, double on) in Offsets())
        {
            PagePoint place = middle + (along.Turned * aside) + (along * on);
            if (!map.Shows(place, 22 + height) || !map.Shows(place - half, 4) || !map.Shows(place + half, 4)) continue;
            double room = Math.Min(Clear(place, half, height), 20) - (Math.Abs(aside) / 20) - (Math.Abs(on) / 20);
            if (room > bestRoom + 1e-6) (best, bestRoom) = (place, room);
        }

        // A long text that fits on neither side is pushed inside rather than cut off.
        if (double.IsNegativeInfinity(bestRoom)) best = new PagePoint(Math.Clamp(best.X, half.X + 4, Math.Max(half.X + 4, map.Width - half.X - 4)), best.Y);
        svg.Line(middle, best, "leader-halo").Line(middle, best, "leader");
        for (int i = 0; i < lines.Length; i++)
            svg.Text(best + new PagePoint(0, 6 + (i * LineHeight) - height), lines[i], "dimension-text", "middle");
        return best;
    }

    /// <summary>Where the label may stand: beside the gap, and off broad parts that leave no room there.</summary>
    private IEnumerable<(double Aside, double On)> Offsets()
    {
        bool isBroad = isOverlap || parts.Any(p => !p.Pieces.IsEmpty);
        foreach (double on in isBroad ? new[] { 0.0, 48, -48, 66, -66, 84, -84 } : [0])
            foreach (double aside in new[] { 62.0, -62, 88, -88, 114, -114 })
                yield return (aside, on);
    }

    /// <summary>The least distance from a label there to a part.</summary>
    private double Clear(PagePoint place, PagePoint half, double height)
    {
        double clear = double.PositiveInfinity;
        foreach (PagePoint row in height > 0 ? new[] { place - new PagePoint(0, height), place + new PagePoint(0, height) } : [place])
            foreach (PagePoint probe in new[] { row, row - half, row + half })
                clear = Math.Min(clear, parts.Min(p => p.RoomBeside(probe)));
        return clear;
    }
}
