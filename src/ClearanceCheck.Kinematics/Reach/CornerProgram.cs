namespace ClearanceCheck.Kinematics.Reach;

/// <summary>The largest c.p under a few linear limits in one to five unknowns, by trying every corner: exact, small and the same every time.</summary>
/// <remarks>Where several corners are equally good their middle is taken, so that a direction that does not matter stays where it is.</remarks>
internal static class CornerProgram
{
    // How far, relative to the limit's own terms, a corner may break a limit and still count.
    private const double Slack = 1e-10;

    /// <summary>The best point, or null when no corner meets all limits.</summary>
    /// <param name="slope">c.</param>
    /// <param name="limits">normal.p + offset must be zero or more; together they bound p.</param>
    /// <param name="tie">Corners whose values differ by less than this are equally good.</param>
    public static double[]? Maximize(double[] slope, IReadOnlyList<(double[] Normal, double Offset)> limits, double tie)
    {
        int n = slope.Length;
        if (limits.Count < n) return null;
        var corners = new List<(double[] At, double Value)>();
        int[] chosen = [.. Enumerable.Range(0, n)];
        do
        {
            if (Corner(limits, chosen) is { } at && Meets(at, limits) && !corners.Exists(c => IsSame(c.At, at))) corners.Add((at, Dot(slope, at)));
        }
        while (Next(chosen, limits.Count));

        if (corners.Count == 0) return null;
        double best = corners.Max(c => c.Value);
        return Middle([.. corners.Where(c => c.Value >= best - tie).Select(c => c.At)]);
    }

    private static double[] Middle(List<double[]> points)
    {
        var sum = new double[points[0].Length];
        foreach (double[] point in points)
            for (int k = 0; k < sum.Length; k++) sum[k] += point[k];
        for (int k = 0; k < sum.Length; k++) sum[k] /= points.Count;
        return sum;
    }

    private static bool IsSame(double[] a, double[] b)
    {
        for (int k = 0; k < a.Length; k++)
            if (Math.Abs(a[k] - b[k]) > 1e-9 * (1 + Math.Abs(a[k]))) return false;
        return true;
    }

    // The next choice of limits in the order of a counter; false after the last.
    private static bool Next(int[] chosen, int count)
    {
        int n = chosen.Length, last = n - 1;
        while (last >= 0 && chosen[last] == count - n + last) last--;
        if (last < 0) return false;
        chosen[last]++;
        for (int i = last + 1; i < n; i++) chosen[i] = chosen[i - 1] + 1;
        return true;
    }

    private static bool Meets(double[] p, IReadOnlyList<(double[] Normal, double Offset)> limits)
    {
        foreach ((double[] normal, double offset) in limits)
        {
            double scale = 1 + Math.Abs(offset);
            for (int k = 0; k < p.Length; k++) scale += Math.Abs(normal[k] * p[k]);
            if (Dot(normal, p) + offset < -Slack * scale) return false;
        }

        return true;
    }

    private static double Dot(double[] a, double[] b)
    {
        double sum = 0;
        for (int k = 0; k < a.Length; k++) sum += a[k] * b[k];
        return sum;
    }

    // Where the chosen limits are all exactly met, by elimination with pivoting; null when they don't meet in one point.
    private static double[]? Corner(IReadOnlyList<(double[] Normal, double Offset)> limits, int[] chosen)
    {
        int n = chosen.Length;
        var rows = new double[n][];
        for (int i = 0; i < n; i++) rows[i] = [.. limits[chosen[i]].Normal, -limits[chosen[i]].Offset];
        for (int k = 0; k < n; k++)
        {
            int pivot = k;
            for (int i = k + 1; i < n; i++)
                if (Math.Abs(rows[i][k]) > Math.Abs(rows[pivot][k])) pivot = i;
            if (!(Math.Abs(rows[pivot][k]) > 1e-12)) return null;
            (rows[k], rows[pivot]) = (rows[pivot], rows[k]);
            for (int i = 0; i < n; i++)
            {
                if (i == k) continue;
                double factor = rows[i][k] / rows[k][k];
                for (int j = k; j <= n; j++) rows[i][j] -= factor * rows[k][j];
            }
        }

        return [.. rows.Select((row, k) => row[n] / row[k])];
    }
}
