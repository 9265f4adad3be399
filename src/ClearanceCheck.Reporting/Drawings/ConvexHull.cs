namespace ClearanceCheck.Reporting.Drawings;

/// <summary>The smallest convex polygon around points of the page.</summary>
internal static class ConvexHull
{
    /// <summary>Its corners, all hulls turning the same way; two where the points lie on one line, one where they fall together, none for no points.</summary>
    /// <remarks>Andrew's monotone chain: the lower side from left to right, then the upper side back.</remarks>
    public static PagePoint[] Of(IEnumerable<PagePoint> points)
    {
        PagePoint[] sorted = [.. points.Distinct().OrderBy(p => p.X).ThenBy(p => p.Y)];
        if (sorted.Length < 3) return sorted;
        List<PagePoint> hull = [];
        foreach (PagePoint point in sorted) Add(hull, point, 2);
        int lower = hull.Count + 1;
        foreach (PagePoint point in sorted.Reverse().Skip(1)) Add(hull, point, lower);
        hull.RemoveAt(hull.Count - 1);
        return [.. hull];
    }

    private static void Add(List<PagePoint> hull, PagePoint next, int least)
    {
        while (hull.Count >= least && Turn(hull[^2], hull[^1], next) <= 0) hull.RemoveAt(hull.Count - 1);
        hull.Add(next);
    }

    /// <summary>Twice the signed area of the triangle of three points.</summary>
    private static double Turn(PagePoint a, PagePoint b, PagePoint c) => ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
}
