using System.Collections.Immutable;
using System.Text;
using ClearanceCheck.Units;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>The path of many convex polygons that covers what they cover together, without the borders that two of them share.</summary>
/// <remarks>
/// All polygons turn the same way, so that two neighbours run along their common border in opposite directions: leaving out such a pair
/// changes at no place how often the path goes around it. What is left closes into loops, and filled by the non-zero rule they are
/// the union. Coordinates are counted in hundredths of a unit, so that corners that fall together are found.
/// </remarks>
internal static class OutlinePath
{
    private const int StepsPerUnit = 100;

    public static string Of(IEnumerable<ImmutableArray<PagePoint>> polygons)
    {
        Dictionary<(Corner From, Corner To), int> borders = [];
        SortedSet<(Corner, Corner)> thin = [];
        foreach (ImmutableArray<PagePoint> polygon in polygons)
        {
            Corner[] corners = Counted(polygon);
            if (corners.Length == 0) continue;
            if (corners.Length < 3) thin.Add((corners[0], corners[^1]));
            else
                for (int i = 0; i < corners.Length; i++) Add(borders, corners[i], corners[(i + 1) % corners.Length]);
        }

        StringBuilder path = new();
        foreach (List<Corner> loop in Loops(borders)) Append(path, loop, "z");
        // Without length they still show as a dot: strokes have round ends.
        foreach ((Corner from, Corner to) in thin) Append(path, [from, to], "");
        return path.ToString();
    }

    private static Corner[] Counted(ImmutableArray<PagePoint> polygon)
    {
        List<Corner> corners = [];
        foreach (PagePoint point in polygon)
        {
            var corner = new Corner((long)Math.Round(point.X * StepsPerUnit), (long)Math.Round(point.Y * StepsPerUnit));
            if (corners.Count == 0 || (corners[^1] != corner && corners[0] != corner)) corners.Add(corner);
        }

        return [.. corners];
    }

    private static void Add(Dictionary<(Corner, Corner), int> borders, Corner from, Corner to)
    {
        if (borders.GetValueOrDefault((to, from)) > 0) borders[(to, from)]--;
        else borders[(from, to)] = borders.GetValueOrDefault((from, to)) + 1;
    }

    private static IEnumerable<List<Corner>> Loops(Dictionary<(Corner From, Corner To), int> borders)
    {
        SortedDictionary<Corner, Stack<Corner>> next = [];
        foreach (((Corner from, Corner to), int count) in borders.OrderBy(b => b.Key))
            for (int i = 0; i < count; i++)
            {
                if (!next.TryGetValue(from, out Stack<Corner>? ends)) next[from] = ends = [];
                ends.Push(to);
            }

        foreach (Corner start in next.Keys)
            while (next[start].TryPop(out Corner at))
            {
                // Into each corner lead as many borders as out of it, so the walk ends where it began.
                List<Corner> loop = [start];
                for (; at != start; at = next[at].Pop()) loop.Add(at);
                yield return loop;
            }
    }

    private static void Append(StringBuilder path, List<Corner> corners, string end)
    {
        Corner last = default;
        for (int i = 0; i < corners.Count; i++)
        {
            path.Append(i == 0 ? "M" : i == 1 ? "l" : "");
            Append(path, corners[i].X - last.X, isFirst: i < 2);
            Append(path, corners[i].Y - last.Y, isFirst: false);
            last = corners[i];
        }

        path.Append(end);
    }

    private static void Append(StringBuilder path, long steps, bool isFirst)
    {
        if (!isFirst && steps >= 0) path.Append(' ');
        path.Append(NumberFormat.UpTo((double)steps / StepsPerUnit, 2));
    }

    /// <summary>A corner in hundredths of a unit.</summary>
    private readonly record struct Corner(long X, long Y) : IComparable<Corner>
    {
        public int CompareTo(Corner other) => X != other.X ? X.CompareTo(other.X) : Y.CompareTo(other.Y);
    }
}
