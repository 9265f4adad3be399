using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>The gap between the two nearest points with arrows and its millimetres.</summary>
internal static class DimensionDrawing
{
    /// <summary>Below this the arrows stand outside and point inward, as drafting does it.</summary>
    private const double LeastInside = 34;

    /// <summary>Half the width of a character of the label, about.</summary>
    private const double CharacterHalf = 6.6;

    private const double ArrowLength = 9;
    private const double ArrowHalf = 4;

    /// <summary>Draws it and returns the middle of its label.</summary>
    public static PagePoint Draw(SvgWriter svg, PageMap map, Evidence evidence, string text)
    {
        PagePoint first = map[evidence.WitnessFirst];
        PagePoint second = map[evidence.WitnessSecond];
        PagePoint along = (second - first).UnitOr(new PagePoint(1, 0));
        bool isInside = (second - first).Length >= LeastInside;
        foreach (string layer in new[] { "dimension-halo", "dimension" })
        {
            svg.Line(first, second, layer);
            Tick(svg, first, along, layer);
            Tick(svg, second, along, layer);
            Arrow(svg, first, isInside ? along : along * -1, isInside, layer);
            Arrow(svg, second, isInside ? along * -1 : along, isInside, layer);
        }

        return Label(svg, map, evidence, (first + second) * 0.5, along, text);
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

    private static PagePoint Label(SvgWriter svg, PageMap map, Evidence evidence, PagePoint middle, PagePoint along, string text)
    {
        PagePoint best = middle + (along.Turned * 60);
        double bestRoom = double.NegativeInfinity;
        PagePoint half = new(text.Length * CharacterHalf, 0);
        foreach (double reach in new[] { 62.0, -62, 88, -88, 114, -114 })
        {
            PagePoint place = middle + (along.Turned * reach);
            if (!map.Shows(place, 22) || !map.Shows(place - half, 4) || !map.Shows(place + half, 4)) continue;
            double clear = Math.Min(Room(map, evidence, place), Math.Min(Room(map, evidence, place - half), Room(map, evidence, place + half)));
            double room = Math.Min(clear, 20) - (Math.Abs(reach) / 20);
            if (room > bestRoom + 1e-6) (best, bestRoom) = (place, room);
        }

        // A long text that fits on neither side is pushed inside rather than cut off.
        if (double.IsNegativeInfinity(bestRoom)) best = new PagePoint(Math.Clamp(best.X, half.X + 4, Math.Max(half.X + 4, map.Width - half.X - 4)), best.Y);
        svg.Line(middle, best, "leader-halo").Line(middle, best, "leader");
        svg.Text(best + new PagePoint(0, 6), text, "dimension-text", "middle");
        return best;
    }

    /// <summary>Distance from a place to the nearest edge of a part, in units of the page.</summary>
    internal static double Room(PageMap map, Evidence evidence, PagePoint place) => evidence.Drawing.Parts.Min(part => RoomBeside(map, part, place));

    internal static double RoomBeside(PageMap map, DrawnPart part, PagePoint place)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i < part.Points.Length; i++)
        {
            Vector3d from = part.Points[Math.Max(i - 1, 0)];
            least = Math.Min(least, place.DistanceTo(map[from], map[part.Points[i]]));
        }

        return least - (part.RadiusMm * map.UnitsPerMm);
    }
}
