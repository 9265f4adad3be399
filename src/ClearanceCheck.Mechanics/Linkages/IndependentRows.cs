namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Which rows of a matrix are independent: a triangular factorisation with row choice (modified Gram–Schmidt, twice).</summary>
internal static class IndependentRows
{
    /// <summary>What remains of a row of length one, below which it counts as a combination of the others.</summary>
    public const double Threshold = 1e-8;

    /// <summary>Marks independent rows, taken greedily in order so that what is named as redundant is the later joint.</summary>
    /// <param name="matrix">Rows one after another.</param>
    /// <param name="rows">Number of rows.</param>
    /// <param name="columns">Number of columns.</param>
    /// <returns>For each row whether it is independent of those before it, and an orthonormal basis of the row space.</returns>
    public static (bool[] Independent, List<double[]> Basis) Find(ReadOnlySpan<double> matrix, int rows, int columns)
    {
        var independent = new bool[rows];
        var basis = new List<double[]>();
        for (int r = 0; r < rows; r++)
        {
            double[] row = matrix.Slice(r * columns, columns).ToArray();
            if (!Scale(row)) continue;
            for (int pass = 0; pass < 2; pass++)
                foreach (double[] b in basis) Remove(row, b);
            if (Norm(row) < Threshold) continue;
            Scale(row);
            basis.Add(row);
            independent[r] = true;
        }

        return (independent, basis);
    }

    private static void Remove(double[] row, double[] direction)
    {
        double share = 0;
        for (int i = 0; i < row.Length; i++) share += row[i] * direction[i];
        for (int i = 0; i < row.Length; i++) row[i] -= share * direction[i];
    }

    private static double Norm(double[] row)
    {
        double sum = 0;
        foreach (double x in row) sum += x * x;
        return Math.Sqrt(sum);
    }

    private static bool Scale(double[] row)
    {
        double norm = Norm(row);
        if (!(norm > 0)) return false;
        for (int i = 0; i < row.Length; i++) row[i] /= norm;
        return true;
    }
}
