using System.Collections.Immutable;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>The letters A and B on the two parts.</summary>
internal static class LetterDrawing
{
    private const double GridStep = 12;
    private const double DiscRadius = 14;

    /// <param name="witnesses">The two nearest points, in the parts' order.</param>
    public static void Draw(SvgWriter svg, PageMap map, ImmutableArray<Silhouette> parts, ImmutableArray<PagePoint> witnesses, PagePoint label)
    {
        for (int i = 0; i < Math.Min(2, parts.Length); i++)
        {
            PagePoint at = Place(map, parts, i, witnesses, label);
            svg.Disc(at, DiscRadius, "letter-disc").Text(at + new PagePoint(0, 6), ((char)('A' + i)).ToString(), "letter", "middle");
        }
    }

    /// <summary>On the part, away from the label, the gap and the other part; inside the frame.</summary>
    private static PagePoint Place(PageMap map, ImmutableArray<Silhouette> parts, int index, ImmutableArray<PagePoint> witnesses, PagePoint label)
    {
        PagePoint witness = witnesses[index];
        PagePoint best = witness + ((witness - witnesses[1 - index]).UnitOr(new PagePoint(0, 1)) * 34);
        double bestRoom = double.NegativeInfinity;
        foreach (PagePoint place in Places(map, parts[index]).Where(p => map.Shows(p, 18)))
        {
            double room = Math.Min(Math.Min((place - label).Length - 56, (place - witness).Length - 30), 40);
            for (int other = 0; other < parts.Length; other++)
                if (other != index) room += Math.Clamp(parts[other].RoomBeside(place), -20, 20) / 2;
            // Well on the part rather than on its edge, which the middle of a chain is by itself.
            if (!parts[index].Pieces.IsEmpty) room += Math.Clamp(-parts[index].RoomBeside(place), -DiscRadius, DiscRadius + 8);
            // The two letters of parts side by side stand at different heights along them.
            room -= index == 0 ? place.X / 40 : (map.Width - place.X) / 40;
            if (room > bestRoom + 1e-6) (best, bestRoom) = (place, room);
        }

        return best;
    }

    private static IEnumerable<PagePoint> Places(PageMap map, Silhouette part)
    {
        if (part.Pieces.IsEmpty) return part.AlongChain();
        List<PagePoint> places = [.. part.AlongChain(), .. part.Pieces.Select(p => p.Middle), .. part.Pieces.SelectMany(p => p.AlongHull())];
        for (double x = GridStep; x < map.Width; x += GridStep)
            for (double y = GridStep; y < map.Width; y += GridStep)
                if (part.RoomBeside(new PagePoint(x, y)) <= 0) places.Add(new PagePoint(x, y));
        return places;
    }
}
