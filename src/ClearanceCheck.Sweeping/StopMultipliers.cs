namespace ClearanceCheck.Sweeping;

/// <summary>Multipliers, zero or more, that raise a cell's bound most: a small linear program.</summary>
/// <remarks>
/// Wanted: the largest over m >= 0 of min over corners c of (f_c - sum of m_j a_jc). Its dual is the least f over convex combinations of
/// the corners whose combined a_j is zero or more for every j, and the multipliers are what its constraints cost. Solved by the dual
/// simplex method (textbook, from memory) from the lowest corner. Whatever comes out, rounding included, is only used as multipliers
/// of a bound that holds for any; so a poor answer costs cells, never truth.
/// </remarks>
internal sealed class StopMultipliers
{
    private const int MaximumPivots = 24;
    private const double Negligible = 1e-12;

    private readonly int corners;
    private readonly int[] basis;
    private readonly double[] table;
    private readonly int[] active;
    private int rows;
    private int columns;

    public StopMultipliers(int corners, int constraints)
    {
        this.corners = corners;
        basis = new int[constraints + 1];
        active = new int[constraints];
        table = new double[(constraints + 2) * (corners + constraints + 1)];
    }

    /// <summary>Fills the multipliers; false when all are zero.</summary>
    /// <param name="values">f at the corners.</param>
    /// <param name="estimates">a_j at the corners, constraint by constraint.</param>
    /// <param name="multipliers">One a constraint.</param>
    public bool Find(ReadOnlySpan<double> values, ReadOnlySpan<double> estimates, Span<double> multipliers)
    {
        multipliers.Clear();
        int lowest = 0;
        for (int c = 1; c < corners; c++)
            if (values[c] < values[lowest]) lowest = c;
        rows = 1;
        bool any = false;
        for (int j = 0; j < multipliers.Length; j++)
        {
            ReadOnlySpan<double> own = estimates.Slice(j * corners, corners);
            if (!CanBind(own)) continue;
            any |= own[lowest] < 0;
            active[rows++ - 1] = j;
        }

        if (!any) return false;
        Fill(values, estimates, lowest);
        for (int pivot = 0; pivot < MaximumPivots; pivot++)
        {
            int row = LeavingRow();
            if (row < 0) break;
            int column = EnteringColumn(row);
            if (column < 0) return Ray(row, multipliers);
            Pivot(row, column);
        }

        return Read(multipliers);
    }

    private static bool CanBind(ReadOnlySpan<double> own)
    {
        foreach (double a in own)
            if (a < 0) return true;
        return false;
    }

    // Columns: corners, then the slack of each active constraint, then the right side. Row 0 says that the shares sum to one;
    // row j that slack j is the combined a_j. The last row holds reduced costs. The basis is the lowest corner and all slacks.
    private void Fill(ReadOnlySpan<double> values, ReadOnlySpan<double> estimates, int lowest)
    {
        columns = corners + rows;
        Array.Clear(table, 0, (rows + 1) * columns);
        for (int c = 0; c < corners; c++)
        {
            At(0, c) = 1;
            At(rows, c) = values[c] - values[lowest];
        }

        At(0, columns - 1) = 1;
        basis[0] = lowest;
        for (int r = 1; r < rows; r++)
        {
            ReadOnlySpan<double> own = estimates.Slice(active[r - 1] * corners, corners);
            for (int c = 0; c < corners; c++) At(r, c) = own[lowest] - own[c];
            At(r, corners + r - 1) = 1;
            At(r, columns - 1) = own[lowest];
            basis[r] = corners + r - 1;
        }
    }

    private int LeavingRow()
    {
        int row = -1;
        double least = -Negligible;
        for (int r = 0; r < rows; r++)
            if (At(r, columns - 1) < least) (row, least) = (r, At(r, columns - 1));
        return row;
    }

    private int EnteringColumn(int row)
    {
        int column = -1;
        double least = double.PositiveInfinity;
        for (int c = 0; c < columns - 1; c++)
        {
            double a = At(row, c);
            if (!(a < -Negligible) || !(At(rows, c) / -a < least)) continue;
            (column, least) = (c, At(rows, c) / -a);
        }

        return column;
    }

    private void Pivot(int row, int column)
    {
        double scale = 1 / At(row, column);
        for (int c = 0; c < columns; c++) At(row, c) *= scale;
        for (int r = 0; r <= rows; r++)
        {
            double factor = At(r, column);
            if (r == row || factor == 0) continue;
            for (int c = 0; c < columns; c++) At(r, c) -= factor * At(row, c);
        }

        basis[row] = column;
    }

    private bool Read(Span<double> multipliers)
    {
        bool any = false;
        for (int r = 1; r < rows; r++)
        {
            double m = Math.Max(0, At(rows, corners + r - 1));
            multipliers[active[r - 1]] = m;
            any |= m > 0;
        }

        return any;
    }

    // No combination of the corners meets all constraints: along this ray the bound rises without end, and the cell is out of reach.
    private bool Ray(int row, Span<double> multipliers)
    {
        const double Far = 1e6;
        Read(multipliers);
        double scale = Far / -At(row, columns - 1);
        for (int r = 1; r < rows; r++) multipliers[active[r - 1]] += Math.Max(0, At(row, corners + r - 1)) * scale;
        return true;
    }

    private ref double At(int row, int column) => ref table[(row * columns) + column];
}
