using System.Collections.Immutable;

namespace ClearanceCheck.Geometry.Shapes;

/// <summary>Orders a range of simplices so that the lower half along its longest side comes first.</summary>
internal sealed class MedianSplit(ImmutableArray<Vector3d> points, ImmutableArray<Simplex> simplices, int[] order)
{
    private readonly double[] keys = new double[order.Length];

    /// <returns>The first place of the upper half.</returns>
    public int Split(int from, int to)
    {
        int axis = LongestAxis(from, to);
        for (int i = from; i < to; i++) keys[i] = Middle(order[i])[axis];
        int middle = (from + to) / 2;
        Select(from, to - 1, middle);
        return middle;
    }

    // Three times the middle of a simplex.
    private Vector3d Middle(int number)
    {
        Simplex s = simplices[number];
        return points[s.A] + points[s.B] + points[s.C];
    }

    private int LongestAxis(int from, int to)
    {
        Vector3d low = Middle(order[from]), high = low;
        for (int i = from + 1; i < to; i++)
        {
            Vector3d m = Middle(order[i]);
            low = new Vector3d(Math.Min(low.X, m.X), Math.Min(low.Y, m.Y), Math.Min(low.Z, m.Z));
            high = new Vector3d(Math.Max(high.X, m.X), Math.Max(high.Y, m.Y), Math.Max(high.Z, m.Z));
        }

        Vector3d size = high - low;
        return size.X >= size.Y && size.X >= size.Z ? 0 : size.Y >= size.Z ? 1 : 2;
    }

    // Hoare's selection with the median of three; ties by number, so that the order does not depend on what came before.
    private void Select(int low, int high, int wanted)
    {
        while (low < high)
        {
            (double pivot, int number) = MedianOfThree(low, (low + high) / 2, high);
            int i = low, j = high;
            while (i <= j)
            {
                while (IsBefore(keys[i], order[i], pivot, number)) i++;
                while (IsBefore(pivot, number, keys[j], order[j])) j--;
                if (i > j) break;
                (keys[i], keys[j], order[i], order[j]) = (keys[j], keys[i], order[j], order[i]);
                i++;
                j--;
            }

            if (wanted <= j) high = j;
            else if (wanted >= i) low = i;
            else return;
        }
    }

    private (double Key, int Number) MedianOfThree(int a, int b, int c)
    {
        if (IsBefore(keys[b], order[b], keys[a], order[a])) (a, b) = (b, a);
        if (IsBefore(keys[c], order[c], keys[b], order[b])) b = IsBefore(keys[c], order[c], keys[a], order[a]) ? a : c;
        return (keys[b], order[b]);
    }

    private static bool IsBefore(double key, int number, double otherKey, int other) => key < otherKey || (key == otherKey && number < other);
}
