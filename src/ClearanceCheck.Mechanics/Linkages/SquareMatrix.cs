namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>A small square matrix factored by elimination with row exchange; the same bits every time.</summary>
internal sealed class SquareMatrix
{
    private readonly int n;
    private readonly double[] lu;
    private readonly int[] rows;

    private SquareMatrix(int n, double[] lu, int[] rows, bool odd, double smallestPivot)
    {
        (this.n, this.lu, this.rows, SmallestPivot) = (n, lu, rows, smallestPivot);
        bool negative = odd;
        for (int i = 0; i < n; i++) negative ^= lu[(i * n) + i] < 0;
        DeterminantIsNegative = negative;
    }

    /// <summary>The smallest pivot relative to the largest, or to one where all are smaller: near zero for a linkage near a fold.</summary>
    public double SmallestPivot { get; }

    public bool DeterminantIsNegative { get; }

    /// <summary>Factors a matrix given row by row, which is overwritten.</summary>
    public static SquareMatrix Factor(double[] matrix, int n)
    {
        var rows = new int[n];
        for (int i = 0; i < n; i++) rows[i] = i;
        bool odd = false;
        double least = n > 0 ? double.PositiveInfinity : 1, most = 0;
        for (int k = 0; k < n; k++)
        {
            int pivot = k;
            for (int i = k + 1; i < n; i++)
                if (Math.Abs(matrix[(i * n) + k]) > Math.Abs(matrix[(pivot * n) + k])) pivot = i;
            if (pivot != k)
            {
                for (int j = 0; j < n; j++) (matrix[(k * n) + j], matrix[(pivot * n) + j]) = (matrix[(pivot * n) + j], matrix[(k * n) + j]);
                (rows[k], rows[pivot]) = (rows[pivot], rows[k]);
                odd = !odd;
            }

            double p = matrix[(k * n) + k];
            least = Math.Min(least, Math.Abs(p));
            most = Math.Max(most, Math.Abs(p));
            if (p == 0) continue;
            for (int i = k + 1; i < n; i++)
            {
                double factor = matrix[(i * n) + k] /= p;
                for (int j = k + 1; j < n; j++) matrix[(i * n) + j] -= factor * matrix[(k * n) + j];
            }
        }

        return new SquareMatrix(n, matrix, rows, odd, least / Math.Max(1, most));
    }

    public void Solve(ReadOnlySpan<double> right, Span<double> solution)
    {
        for (int i = 0; i < n; i++)
        {
            double sum = right[rows[i]];
            for (int j = 0; j < i; j++) sum -= lu[(i * n) + j] * solution[j];
            solution[i] = sum;
        }

        for (int i = n - 1; i >= 0; i--)
        {
            double sum = solution[i];
            for (int j = i + 1; j < n; j++) sum -= lu[(i * n) + j] * solution[j];
            solution[i] = sum / lu[(i * n) + i];
        }
    }

    /// <summary>The inverse, row by row.</summary>
    public double[] Inverse()
    {
        var inverse = new double[n * n];
        double[] unit = new double[n], column = new double[n];
        for (int j = 0; j < n; j++)
        {
            Array.Clear(unit);
            unit[j] = 1;
            Solve(unit, column);
            for (int i = 0; i < n; i++) inverse[(i * n) + j] = column[i];
        }

        return inverse;
    }
}
