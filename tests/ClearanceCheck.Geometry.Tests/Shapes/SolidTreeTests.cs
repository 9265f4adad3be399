using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Geometry.Tests.Scenes;

namespace ClearanceCheck.Geometry.Tests.Shapes;

/// <summary>What every solid's tree has to keep, whatever the shape.</summary>
public sealed class SolidTreeTests
{
    [Fact]
    public void Every_node_contains_all_leaves_below_it()
    {
        foreach (Solid solid in Solids(1001))
        {
            Vector3d[] directions = Directions(solid);
            double[][] leaves = [.. Enumerable.Range(0, solid.NodeCount).Select(node => solid.IsLeaf(node) ? directions.Select(n => solid.Support(node, n)).ToArray() : [])];
            for (int node = 0; node < solid.NodeCount; node++)
            {
                if (solid.IsLeaf(node)) continue;
                double[] outer = [.. directions.Select(n => solid.Support(node, n))];
                foreach (int leaf in Trees.Below(solid, node))
                    for (int i = 0; i < directions.Length; i++)
                        if (leaves[leaf][i] > outer[i] + 1e-9) leaves[leaf][i].ShouldBeLessThanOrEqualTo(outer[i] + 1e-9, $"{solid.GetType().Name}, leaf {leaf} of node {node}");
            }
        }
    }

    [Fact]
    public void Every_node_is_reached_once()
    {
        foreach (Solid solid in Solids(1002))
        {
            var seen = new bool[solid.NodeCount];
            var open = new Stack<int>([0]);
            while (open.TryPop(out int node))
            {
                seen[node].ShouldBeFalse();
                seen[node] = true;
                (solid.Left(node) < 0).ShouldBe(solid.Right(node) < 0);
                if (solid.IsLeaf(node)) continue;
                open.Push(solid.Left(node));
                open.Push(solid.Right(node));
            }

            seen.ShouldAllBe(s => s);
        }
    }

    [Fact]
    public void The_corners_widened_by_the_radius_are_what_the_support_says_and_lie_in_the_hull_of_the_anchors()
    {
        var corners = new Vector3d[Piece.MaximumCorners];
        foreach (Solid solid in Solids(1003))
        {
            Vector3d[] directions = [.. Directions(solid).Take(40)];
            Vector3d[] anchors = solid.Anchors.ToArray();
            double[] reach = [.. directions.Select(n => anchors.Max(a => Vector3d.Dot(a, n)))];
            for (int node = 0; node < solid.NodeCount; node++)
            {
                int count = solid.Corners(node, corners);
                count.ShouldBeInRange(1, Piece.MaximumCorners);
                for (int i = 0; i < directions.Length; i++)
                {
                    double most = corners.Take(count).Max(c => Vector3d.Dot(c, directions[i]));
                    solid.Support(node, directions[i]).ShouldBe(most + solid.Radius(node), 1e-9);
                    // A box around simplices may reach beyond them; what moves and is measured are the simplices.
                    if (solid is SimplexTree && !solid.IsLeaf(node)) continue;
                    most.ShouldBeLessThanOrEqualTo(reach[i] + 1e-9, $"{solid.GetType().Name}, node {node}");
                }
            }
        }
    }

    [Fact]
    public void A_leaf_has_no_thickness_and_a_node_has_some_number()
    {
        foreach (Solid solid in Solids(1004))
            for (int node = 0; node < solid.NodeCount; node++)
            {
                solid.Thickness(node).ShouldBeInRange(0, 1e4);
                if (solid.IsLeaf(node)) solid.Thickness(node).ShouldBe(0);
            }
    }

    [Fact]
    public void The_descent_finds_the_same_least_gap_as_all_pairs()
    {
        var g = new SplitMix64(1005);
        Solid[] solids = [.. Solids(1006)];
        int compared = 0;
        for (int i = 0; i < 400; i++)
        {
            Solid a = solids[(int)(g.Unit() * solids.Length)], b = solids[(int)(g.Unit() * solids.Length)];
            RigidMotion motion = g.Motion(300);
            if ((double)a.NodeCount * b.NodeCount > 60_000) continue;
            compared++;

            Trees.Descend(a, b, motion).ShouldBe(Trees.AllPairs(a, b, motion), 1e-9);
        }

        compared.ShouldBeGreaterThan(100);
    }

    [Fact]
    public void A_shifted_solid_is_the_solid_seen_from_elsewhere()
    {
        var g = new SplitMix64(1007);
        foreach (Solid solid in Solids(1008))
        {
            Vector3d by = g.Cube(50);
            Solid shifted = Shifted.Of(solid, by);
            shifted.NodeCount.ShouldBe(solid.NodeCount);
            Shifted.Of(solid, Vector3d.Zero).ShouldBeSameAs(solid);
            CapsuleChain chain = Trees.Chain(g, g.Cube(300), 1, 100);
            for (int k = 0; k < 10; k++)
            {
                int node = (int)(g.Unit() * solid.NodeCount);
                Vector3d n = g.UnitVector(), p = g.Cube(300);
                shifted.Support(node, n).ShouldBe(solid.Support(node, n) + Vector3d.Dot(n, by), 1e-9);
                double hollow = solid.InsideHollow(node, p);
                if (double.IsNegativeInfinity(hollow)) shifted.InsideHollow(node, p + by).ShouldBe(hollow);
                else shifted.InsideHollow(node, p + by).ShouldBe(hollow, 1e-9);
                Gaps(shifted, node, chain, RigidMotion.Identity).ShouldBe(Gaps(solid, node, chain, new RigidMotion(Rotation.Identity, -by)), 1e-9);
            }
        }
    }

    private static double Gaps(Solid solid, int node, Solid other, in RigidMotion motion) =>
        Geometry.Gaps.SolidGap.Measure(solid, node, other, 0, motion).Gap;

    private static Vector3d[] Directions(Solid solid)
    {
        var g = new SplitMix64((ulong)solid.NodeCount);
        return [.. Enumerable.Range(0, 200).Select(_ => g.UnitVector()), Vector3d.UnitX, Vector3d.UnitY, Vector3d.UnitZ, -Vector3d.UnitX];
    }

    private static IEnumerable<Solid> Solids(ulong seed)
    {
        var g = new SplitMix64(seed);
        for (int i = 0; i < 12; i++)
        {
            yield return Trees.Cloud(g, 1 + (int)(g.Unit() * 60), g.In(0, 200));
            yield return HullScenes.Revolved(g);
            yield return Trees.Chain(g, g.Cube(300), 1 + (int)(g.Unit() * 40), g.In(0, 50));
            yield return new SolidBox(g.Cube(200), g.Cube(200));
        }
    }
}
