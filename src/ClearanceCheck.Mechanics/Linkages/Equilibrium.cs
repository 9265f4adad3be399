using System.Collections.Immutable;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Where soft joints leave freedom: which loads count, and that their energy has a minimum.</summary>
/// <remarks>
/// A linkage with soft joints stands where their energy E is least while the exact equations r = 0 hold: dE/du + m dr/du = 0 (Lagrange).
/// A soft direction's own load takes the place of dE/du; see <see cref="SoftRows"/>. Bodies without soft joints of their own that as many
/// equations decide as they have unknowns, such as knuckles with their rods, carry no load: their balance says so, and needs not be solved.
/// </remarks>
internal sealed class Equilibrium
{
    private Equilibrium(ImmutableArray<bool> isBalanced, ImmutableArray<int> loadOfRow, int soft)
    {
        IsBalanced = isBalanced;
        LoadOfRow = loadOfRow;
        Soft = soft;
        ExactLoads = loadOfRow.Count(l => l >= 0);
        Balances = isBalanced.Count(b => b);
    }

    /// <summary>For each unknown of the bodies whether its balance is solved for.</summary>
    public ImmutableArray<bool> IsBalanced { get; }

    /// <summary>For each equation that is solved for the number of its load; -1 where it carries none.</summary>
    public ImmutableArray<int> LoadOfRow { get; }

    /// <summary>How many soft directions there are; their loads come after those of the equations.</summary>
    public int Soft { get; }

    public int ExactLoads { get; }

    /// <summary>How many loads there are.</summary>
    public int Loads => ExactLoads + Soft;

    public int Balances { get; }

    /// <summary>Finds what hangs on soft joints.</summary>
    /// <param name="linkage">The linkage, its equations chosen.</param>
    /// <param name="rows">Derivatives of the equations that are solved for, in the measured state, row by row.</param>
    /// <param name="owners">The joint that each of these rows belongs to.</param>
    public static Equilibrium Of(Linkage linkage, double[] rows, ImmutableArray<Joint> owners)
    {
        int columns = linkage.BodyUnknowns;
        var balanced = new bool[columns];
        var load = new int[owners.Length];
        Array.Fill(balanced, true);
        foreach (HashSet<int> group in LoadFreeGroups.Of(linkage))
        {
            int[] touching = [.. Enumerable.Range(0, owners.Length).Where(r => LoadFreeGroups.Touches(owners[r], group))];
            int[] unknowns = [.. group.SelectMany(b => Enumerable.Range(linkage.Carriages[b].FirstUnknown, linkage.Carriages[b].Unknowns)).Order()];
            if (touching.Length != unknowns.Length || !IsRegular(rows, columns, touching, unknowns)) continue;
            foreach (int row in touching) load[row] = -1;
            foreach (int unknown in unknowns) balanced[unknown] = false;
        }

        int next = 0;
        for (int r = 0; r < load.Length; r++)
            if (load[r] >= 0) load[r] = next++;
        return new Equilibrium([.. balanced], [.. load], linkage.SoftStiffness.Sum(joint => joint.Count(s => s > 0)));
    }

    /// <summary>The loads of a pose: those of the soft directions by what they give, those of the equations as near to balance as they come.</summary>
    /// <remarks>Least squares by normal equations: the solver improves them with the pose.</remarks>
    public double[] LoadsAt(Linkage linkage, ReadOnlySpan<RigidMotion> bodies, ReadOnlySpan<double> settings)
    {
        var loads = new double[Loads];
        var values = new double[linkage.Unknowns];
        linkage.Residual(bodies, loads, settings, values);
        double[] matrix = linkage.Derivatives(bodies, loads, settings);
        // Soft equations are linear in their loads.
        SoftBlock(matrix, linkage.Unknowns).Solve(values.AsSpan(LoadOfRow.Length, Soft), loads.AsSpan(ExactLoads));
        linkage.Residual(bodies, loads, settings, values);
        double[] unbalanced = Spread(values);
        double[][] rows = ExactRows(matrix, linkage.Unknowns);
        var normal = new double[ExactLoads * ExactLoads];
        double[] right = new double[ExactLoads], exact = new double[ExactLoads];
        for (int i = 0; i < ExactLoads; i++)
        {
            for (int j = 0; j < ExactLoads; j++) normal[(i * ExactLoads) + j] = Dot(rows[i], rows[j]);
            right[i] = -Dot(rows[i], unbalanced);
        }

        SquareMatrix.Factor(normal, ExactLoads).Solve(right, exact);
        exact.CopyTo(loads, 0);
        return loads;
    }

    /// <summary>True when the energy grows in every direction that the loaded equations leave: the pose is a minimum, not a saddle.</summary>
    /// <param name="matrix">Derivatives of all equations in a solved pose.</param>
    /// <param name="size">Number of unknowns.</param>
    public bool IsMinimum(double[] matrix, int size)
    {
        int n = IsBalanced.Length, m;
        List<double[]> free = Complement(ExactRows(matrix, size), n);
        SquareMatrix soft = SoftBlock(matrix, size);
        var energy = new double[(m = free.Count) * m];
        double[] moved = new double[size], gives = new double[Soft];
        for (int j = 0; j < m; j++)
        {
            // Along a free direction the soft loads change as their equations say, and with them the balances.
            free[j].CopyTo(moved, 0);
            Array.Clear(moved, n, size - n);
            Product(matrix, size, moved).AsSpan(LoadOfRow.Length, Soft).CopyTo(gives);
            soft.Solve(gives, moved.AsSpan(n + ExactLoads));
            double[] pushed = Spread(Product(matrix, size, moved));
            for (int i = 0; i < m; i++) energy[(i * m) + j] = Dot(free[i], pushed);
        }

        return HasCholesky(energy, m);
    }

    private static bool IsRegular(double[] rows, int columns, int[] touching, int[] unknowns)
    {
        int n = unknowns.Length;
        var block = new double[n * n];
        for (int i = 0; i < n; i++)
            for (int j = 0; j < n; j++) block[(i * n) + j] = rows[(touching[i] * columns) + unknowns[j]];
        return n > 0 && SquareMatrix.Factor(block, n).SmallestPivot > IndependentRows.Threshold;
    }

    // The rows of the loaded equations by the balanced unknowns only.
    private double[][] ExactRows(double[] matrix, int size) =>
    [
        .. Enumerable.Range(0, LoadOfRow.Length).Where(r => LoadOfRow[r] >= 0).Select(r =>
        {
            double[] row = matrix.AsSpan(r * size, IsBalanced.Length).ToArray();
            for (int i = 0; i < row.Length; i++)
                if (!IsBalanced[i]) row[i] = 0;
            return row;
        }),
    ];

    // What the soft equations take off for their loads.
    private SquareMatrix SoftBlock(double[] matrix, int size)
    {
        var block = new double[Soft * Soft];
        for (int i = 0; i < Soft; i++)
            for (int j = 0; j < Soft; j++) block[(i * Soft) + j] = -matrix[((LoadOfRow.Length + i) * size) + IsBalanced.Length + ExactLoads + j];
        return SquareMatrix.Factor(block, Soft);
    }

    // The balances of a whole right side, each at its unknown.
    private double[] Spread(ReadOnlySpan<double> values)
    {
        var spread = new double[IsBalanced.Length];
        int next = LoadOfRow.Length + Soft;
        for (int i = 0; i < spread.Length; i++)
            if (IsBalanced[i]) spread[i] = values[next++];
        return spread;
    }

    private static double[] Product(double[] matrix, int size, double[] direction)
    {
        var product = new double[size];
        for (int i = 0; i < size; i++)
            for (int j = 0; j < size; j++) product[i] += matrix[(i * size) + j] * direction[j];
        return product;
    }

    // Directions of length one, square to each other, to the rows and to what is not balanced.
    private List<double[]> Complement(double[][] rows, int n)
    {
        double[] matrix = [.. rows.SelectMany(r => r)];
        int known = IndependentRows.Find(matrix, [.. rows.Select(_ => 1)], n).Basis.Count;
        var units = new double[n * n];
        for (int i = 0; i < n; i++)
            if (IsBalanced[i]) units[(i * n) + i] = 1;
        (_, List<double[]> all) = IndependentRows.Find([.. matrix, .. units], [.. rows.Select(_ => 1), n], n);
        return all.GetRange(known, all.Count - known);
    }

    private static bool HasCholesky(double[] a, int n)
    {
        for (int k = 0; k < n; k++)
        {
            double pivot = a[(k * n) + k];
            for (int j = 0; j < k; j++) pivot -= a[(k * n) + j] * a[(k * n) + j];
            if (!(pivot > 0)) return false;
            double root = a[(k * n) + k] = Math.Sqrt(pivot);
            for (int i = k + 1; i < n; i++)
            {
                double sum = 0.5 * (a[(i * n) + k] + a[(k * n) + i]);
                for (int j = 0; j < k; j++) sum -= a[(i * n) + j] * a[(k * n) + j];
                a[(i * n) + k] = sum / root;
            }
        }

        return true;
    }

    private static double Dot(double[] a, double[] b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length; i++) sum += a[i] * b[i];
        return sum;
    }
}
