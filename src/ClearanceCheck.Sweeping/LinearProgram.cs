namespace ClearanceCheck.Sweeping;

/// <summary>Least g.p under a few linear limits in one to four unknowns, by trying every corner: small, exact and the same every time.</summary>
internal static class LinearProgram
{
    /// <summary>How far, relative to the limits' scale, a corner may break a limit and still count.</summary>
    private const double Tolerance = 1e-9;

    /// <summary>The best corner, or null when no corner meets all limits.</summary>
    /// <param name="slope">g.</param>
    /// <param name="normals">One row a limit: normal.p + offset must be zero or more. Together they must bound p.</param>
    /// <param name="offsets">One offset a limit.</param>
    public static double[]? Minimize(double[] slope, List<double[]> normals, List<double> offsets)
    {
        int n = slope.Length;
        var chosen = new int[n];
        double[]? best = null;
        double least = double.PositiveInfinity;
        for (int i = 0; i < n; i++) chosen[i] = i;
        while (true)
        {
            if (Corner(normals, offsets, chosen) is { } p && Meets(p, normals, offsets))
            {
                double value = 0;
                for (int k = 0; k < n; k++) value += slope[k] * p[k];
                if (value < least) (best, least) = (p, value);
            }

            int last = n - 1;
            while (last >= 0 && chosen[last] == normals.Count - n + last) last--;
            if (last < 0) return best;
            chosen[last]++;
            for (int i = last + 1; i < n; i++) chosen[i] = chosen[i - 1] + 1;
        }
    }

    private static bool Meets(double[] p, List<double[]> normals, List<double> offsets)
    {
        for (int i = 0; i < normals.Count; i++)
        {
            double sum = offsets[i], scale = Math.Abs(offsets[i]);
            for (int k = 0; k < p.Length; k++) (sum, scale) = (sum + (normals[i][k] * p[k]), scale + Math.Abs(normals[i][k] * p[k]));
            if (sum < -Tolerance * (1 + scale)) return false;
        }

        return true;
    }

    // Where the chosen limits are all exactly met, by elimination with pivoting; null when they don't meet in one point.
    private static double[]? Corner(List<double[]> normals, List<double> offsets, int[] chosen)
    {
        int n = chosen.Length;
        var a = new double[n, n + 1];
        for (int i = 0; i < n; i++)
        {
            for (int k = 0; k < n; k++) a[i, k] = normals[chosen[i]][k];
            a[i, n] = -offsets[chosen[i]];
        }

        for (int k = 0; k < n; k++)
        {
            int pivot = k;
            for (int i = k + 1; i < n; i++)
                if (Math.Abs(a[i, k]) > Math.Abs(a[pivot, k])) pivot = i;
            if (!(Math.Abs(a[pivot, k]) > 1e-12)) return null;
            for (int j = k; j <= n; j++) (a[k, j], a[pivot, j]) = (a[pivot, j], a[k, j]);
            for (int i = 0; i < n; i++)
            {
                if (i == k) continue;
                double factor = a[i, k] / a[k, k];
                for (int j = k; j <= n; j++) a[i, j] -= factor * a[k, j];
            }
        }

        var p = new double[n];
        for (int k = 0; k < n; k++) p[k] = a[k, n] / a[k, k];
        return p;
    }
}
