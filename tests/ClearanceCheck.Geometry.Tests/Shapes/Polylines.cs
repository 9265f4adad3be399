using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Geometry.Tests.Scenes;

namespace ClearanceCheck.Geometry.Tests.Shapes;

/// <summary>Chains as they come: smooth, jagged, with repeated points, closed, a single point, without radius.</summary>
internal static class Polylines
{
    public static CapsuleChain Draw(SplitMix64 g)
    {
        int count = 1 + (int)(g.Unit() * 40);
        int kind = (int)(g.Unit() * 6);
        double radius = g.Unit() < 0.2 ? 0 : g.In(1, 15);
        double step = Math.Pow(10, g.In(-1, 2));
        var points = new List<Vector3d>();
        Vector3d at = g.Cube(300), heading = g.UnitVector();
        for (int i = 0; i < count; i++)
        {
            points.Add(at);
            if (kind == 1 && g.Unit() < 0.4) continue;
            heading = kind == 2 ? g.UnitVector() : (heading + (g.UnitVector() * 0.3)).NormalizedOr(heading);
            at += heading * (kind == 3 ? 10 : step);
        }

        if (kind == 4) points.Add(points[0]);
        if (kind == 5) points = [.. points.Select(p => p * 10)];
        return new CapsuleChain(points, radius);
    }

    public static IEnumerable<int> Below(CapsuleChain chain, int node)
    {
        if (chain.IsLeaf(node)) return [node];
        return Below(chain, chain.Left(node)).Concat(Below(chain, chain.Right(node)));
    }
}
