namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Which rows of a matrix are independent: a triangular factorisation with row choice (modified Gram-Schmidt, twice).</summary>
internal static class IndependentRows
{
    /// <summary>What remains of a row of length one, below which it counts as a combination of the others.</summary>
    public const double Threshold = 1e-8;

    /// <summary>Marks independent rows, taken group by group in order so that what is named as redundant is the later joint.</summary>
    /// <remarks>
    /// Within a group the row with most left of it comes first: which of a joint's equations is left out is free, and leaving out
    /// the one that says most would make the rest nearly singular.
    /// </remarks>
    /// <param name="matrix">Rows one after another.</param>
    /// <param name="groups">How many rows belong to each joint, in order.</param>
    /// <param name="columns">Number of columns.</param>
    /// <returns>For each row whether it is independent of those before it, and an orthonormal basis of the row space.</returns>
    public static (bool[] Independent, List<double[]> Basis) Find(ReadOnlySpan<double> matrix, IReadOnlyList<int> groups, int columns)
    {
        var independent = new bool[groups.Sum()];
        var basis = new List<double[]>();
        int first = 0;
        foreach (int size in groups)
        {
            var group = new double[size][];
            for (int r = 0; r < size; r++)
            {
                group[r] = matrix.Slice((first + r) * columns, columns).ToArray();
                Scale(group[r]);
                RemoveAll(group[r], basis);
            }

            Choose(group, basis, independent.AsSpan(first, size));
            first += size;
        }

        return (independent, basis);
    }

    private static void Choose(double[][] group, List<double[]> basis, Span<bool> independent)
    {
        while (true)
        {
            int best = -1;
            for (int r = 0; r < group.Length; r++)
                if (!independent[r] && (best < 0 || Norm(group[r]) > Norm(group[best]))) best = r;
            if (best < 0 || !(Norm(group[best]) >= Threshold)) return;
            independent[best] = true;
            Scale(group[best]);
            // Once more, now that it has length one: the first removal left rounding of the whole row.
            RemoveAll(group[best], basis);
            Scale(group[best]);
            basis.Add(group[best]);
            for (int r = 0; r < group.Length; r++)
                if (!independent[r]) Remove(group[r], group[best]);
        }
    }

    private static void RemoveAll(double[] row, List<double[]> basis)
    {
        for (int pass = 0; pass < 2; pass++)
            foreach (double[] b in basis) Remove(row, b);
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

    private static void Scale(double[] row)
    {
        double norm = Norm(row);
        // Rows are mm over mm: one this short is the rounding of a row that says nothing.
        if (!(norm > Threshold)) return;
        for (int i = 0; i < row.Length; i++) row[i] /= norm;
    }
}
