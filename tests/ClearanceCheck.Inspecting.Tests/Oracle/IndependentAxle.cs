namespace ClearanceCheck.Inspecting.Tests.Oracle;

/// <summary>
/// The fixture's rear axle solved by another road than the engine's: turn angles about fixed axes, a Jacobian by differences, Gauss
/// elimination. Shares no code with it. Millimetres; hanging state as measured.
/// </summary>
internal sealed class IndependentAxle
{
    private static readonly double[][][] Rods =
    [
        [[288, 432, -232], [-590, 505, -452]],
        [[288, -430, -233], [-590, -506, -454]],
        [[70, 246, -60], [-575, 255, -262]],
        [[-700, 470, -132], [-668, -445, -320]],
    ];

    private static readonly double[] HubLeft = [-612, 738, -402];
    private static readonly double[] HubRight = [-612, -738, -404];

    /// <summary>Travel of the measured state: hub to fender at ride height less that while hanging.</summary>
    private static readonly double[] Hanging = [640 - 742, 641 - 744];

    /// <summary>Translation and three turns about x, y, z in that order.</summary>
    public double[] Unknowns { get; private set; } = new double[6];

    /// <summary>Moves to a pose; false when the equations can't be met.</summary>
    public bool Solve(double left, double right)
    {
        for (int iteration = 0; iteration < 40; iteration++)
        {
            double[] residual = Residual(left, right, Unknowns);
            if (residual.Max(Math.Abs) < 1e-9) return true;
            var matrix = new double[6, 7];
            for (int j = 0; j < 6; j++)
            {
                double step = j < 3 ? 1e-4 : 1e-7;
                double[] up = [.. Unknowns], down = [.. Unknowns];
                up[j] += step;
                down[j] -= step;
                double[] above = Residual(left, right, up), below = Residual(left, right, down);
                for (int i = 0; i < 6; i++) matrix[i, j] = (above[i] - below[i]) / (2 * step);
            }

            for (int i = 0; i < 6; i++) matrix[i, 6] = -residual[i];
            double[] change = Eliminate(matrix);
            double[] next = [.. Unknowns];
            for (int j = 0; j < 6; j++) next[j] += change[j];
            Unknowns = next;
        }

        return false;
    }

    /// <summary>Where a point of the axle, measured while hanging, is now.</summary>
    public double[] Place(double[] point) => Place(point, Unknowns);

    private static double[] Residual(double left, double right, double[] u)
    {
        var residual = new double[6];
        for (int i = 0; i < 4; i++) residual[i] = Distance(Rods[i][0], Place(Rods[i][1], u)) - Distance(Rods[i][0], Rods[i][1]);
        residual[4] = Place(HubLeft, u)[2] - (HubLeft[2] - Hanging[0]) - left;
        residual[5] = Place(HubRight, u)[2] - (HubRight[2] - Hanging[1]) - right;
        return residual;
    }

    private static double[] Place(double[] p, double[] u)
    {
        (double sx, double cx) = Math.SinCos(u[3]);
        (double sy, double cy) = Math.SinCos(u[4]);
        (double sz, double cz) = Math.SinCos(u[5]);
        (double x, double y, double z) = (p[0], (cx * p[1]) - (sx * p[2]), (sx * p[1]) + (cx * p[2]));
        (x, z) = ((cy * x) + (sy * z), (cy * z) - (sy * x));
        (x, y) = ((cz * x) - (sz * y), (sz * x) + (cz * y));
        return [x + u[0], y + u[1], z + u[2]];
    }

    public static double Distance(double[] a, double[] b) =>
        Math.Sqrt(((a[0] - b[0]) * (a[0] - b[0])) + ((a[1] - b[1]) * (a[1] - b[1])) + ((a[2] - b[2]) * (a[2] - b[2])));

    private static double[] Eliminate(double[,] a)
    {
        for (int k = 0; k < 6; k++)
        {
            int pivot = k;
            for (int i = k + 1; i < 6; i++)
                if (Math.Abs(a[i, k]) > Math.Abs(a[pivot, k])) pivot = i;
            for (int j = 0; j < 7; j++) (a[k, j], a[pivot, j]) = (a[pivot, j], a[k, j]);
            for (int i = 0; i < 6; i++)
            {
                if (i == k) continue;
                double factor = a[i, k] / a[k, k];
                for (int j = k; j < 7; j++) a[i, j] -= factor * a[k, j];
            }
        }

        return [.. Enumerable.Range(0, 6).Select(k => a[k, 6] / a[k, k])];
    }
}
