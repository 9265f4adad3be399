using System.Collections.Immutable;
using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>Solids' trees walked in the plainest way.</summary>
internal static class Trees
{
    public static IEnumerable<int> Below(Solid solid, int node)
    {
        var open = new Stack<int>([node]);
        while (open.TryPop(out int next))
        {
            if (solid.IsLeaf(next)) yield return next;
            else
            {
                open.Push(solid.Right(next));
                open.Push(solid.Left(next));
            }
        }
    }

    public static double AllPairs(Solid a, Solid b, in RigidMotion bInA)
    {
        double least = double.PositiveInfinity;
        int[] ofB = [.. Below(b, 0)];
        foreach (int first in Below(a, 0))
            foreach (int second in ofB) least = Math.Min(least, SolidGap.Measure(a, first, b, second, bInA).Gap);
        return least;
    }

    /// <summary>Depth first; a pair of nodes is left out when it can't hold a smaller gap.</summary>
    public static double Descend(Solid a, Solid b, in RigidMotion bInA)
    {
        double best = double.PositiveInfinity;
        var open = new Stack<(int First, int Second, double Gap)>([(0, 0, double.NegativeInfinity)]);
        while (open.TryPop(out (int First, int Second, double Gap) pair))
        {
            if (pair.Gap > best + 1e-9) continue;
            if (a.IsLeaf(pair.First) && b.IsLeaf(pair.Second))
            {
                best = Math.Min(best, SolidGap.Measure(a, pair.First, b, pair.Second, bInA).Gap);
                continue;
            }

            bool splitFirst = b.IsLeaf(pair.Second) || (!a.IsLeaf(pair.First) && a.Thickness(pair.First) >= b.Thickness(pair.Second));
            (int, int) left = splitFirst ? (a.Left(pair.First), pair.Second) : (pair.First, b.Left(pair.Second));
            (int, int) right = splitFirst ? (a.Right(pair.First), pair.Second) : (pair.First, b.Right(pair.Second));
            double leftGap = SolidGap.Measure(a, left.Item1, b, left.Item2, bInA).Gap, rightGap = SolidGap.Measure(a, right.Item1, b, right.Item2, bInA).Gap;
            if (leftGap < rightGap) (left, right, leftGap, rightGap) = (right, left, rightGap, leftGap);
            open.Push((left.Item1, left.Item2, leftGap));
            open.Push((right.Item1, right.Item2, rightGap));
        }

        return best;
    }

    /// <summary>Points, segments and triangles about a place, some of them without length or area.</summary>
    public static SimplexTree Cloud(SplitMix64 g, int count, double spread)
    {
        var points = ImmutableArray.CreateBuilder<Vector3d>();
        var simplices = ImmutableArray.CreateBuilder<Simplex>();
        Vector3d middle = g.Cube(200);
        for (int i = 0; i < count; i++)
        {
            Vector3d at = middle + g.Cube(spread);
            int first = points.Count;
            for (int k = 0; k < 3; k++) points.Add(at + g.Cube(10));
            double radius = g.Unit() < 0.5 ? 0 : g.In(0, 6);
            simplices.Add((int)(g.Unit() * 5) switch
            {
                0 => new(first, first, first, radius),
                1 => new(first, first + 1, first + 1, radius),
                2 => new(first, first, first + 1, radius),
                _ => new(first, first + 1, first + 2, radius),
            });
        }

        return new SimplexTree(points.ToImmutable(), simplices.ToImmutable());
    }

    public static CapsuleChain Chain(SplitMix64 g, Vector3d from, int count, double step)
    {
        var points = new List<Vector3d> { from };
        Vector3d heading = g.UnitVector();
        for (int i = 0; i < count; i++)
        {
            heading = (heading + (g.UnitVector() * 0.4)).NormalizedOr(heading);
            points.Add(points[^1] + (heading * step));
        }

        return new CapsuleChain(points, g.In(1, 12));
    }
}
