using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Geometry.Tests.Scenes;

namespace ClearanceCheck.Geometry.Tests.Shapes;

public sealed class CapsuleChainTests
{
    [Fact]
    public void The_leaves_are_the_pieces_of_the_polyline_in_order_with_the_chains_radius()
    {
        var g = new SplitMix64(51);
        for (int i = 0; i < 300; i++)
        {
            CapsuleChain chain = Polylines.Draw(g);

            Capsule[] leaves = [.. Polylines.Below(chain, 0).Select(chain.Piece)];

            leaves.Length.ShouldBe(Math.Max(1, chain.Points.Length - 1));
            chain.NodeCount.ShouldBe((2 * leaves.Length) - 1);
            for (int k = 0; k < leaves.Length; k++)
                leaves[k].ShouldBe(new Capsule(chain.Points[k], chain.Points[Math.Min(k + 1, chain.Points.Length - 1)], chain.RadiusMm));
        }
    }

    [Fact]
    public void Every_node_contains_all_leaves_below_it()
    {
        var g = new SplitMix64(52);
        for (int i = 0; i < 300; i++)
        {
            CapsuleChain chain = Polylines.Draw(g);
            for (int node = 0; node < chain.NodeCount; node++)
            {
                if (chain.IsLeaf(node)) continue;
                foreach (int inner in Polylines.Below(chain, node))
                {
                    Vector3d n = g.UnitVector();
                    chain.Support(inner, n).ShouldBeLessThanOrEqualTo(chain.Support(node, n) + 1e-9);
                    SurfacePoint(chain.Piece(inner), g, out Vector3d point);
                    OutsideBy(chain.Piece(node), point).ShouldBeLessThan(1e-9);
                }
            }
        }
    }

    [Fact]
    public void No_node_reaches_beyond_its_leaves_by_more_than_its_thickness()
    {
        var g = new SplitMix64(53);
        for (int i = 0; i < 300; i++)
        {
            CapsuleChain chain = Polylines.Draw(g);
            for (int node = 0; node < chain.NodeCount; node++)
            {
                Vector3d n = g.UnitVector();
                double leaves = Polylines.Below(chain, node).Max(leaf => chain.Support(leaf, n));

                chain.Support(node, n).ShouldBeLessThanOrEqualTo(leaves + chain.Thickness(node) + 1e-9);
                if (chain.IsLeaf(node)) chain.Thickness(node).ShouldBe(0);
            }
        }
    }

    [Fact]
    public void The_tree_gives_the_same_least_gap_as_all_pairs()
    {
        var g = new SplitMix64(54);
        for (int i = 0; i < 400; i++)
        {
            CapsuleChain a = Polylines.Draw(g), b = Polylines.Draw(g);
            RigidMotion motion = g.Motion(300);
            double allPairs = double.PositiveInfinity;
            foreach (int first in Polylines.Below(a, 0))
                foreach (int second in Polylines.Below(b, 0))
                    allPairs = Math.Min(allPairs, SolidGap.Measure(a, first, b, second, motion).Gap);

            // Nodes reach beyond their leaves by rounding only where they cut, so the descent may not lose a pair.
            Descend(a, b, motion, 0, 0, double.PositiveInfinity).ShouldBe(allPairs);
        }
    }

    [Fact]
    public void A_chain_of_one_point_is_a_ball()
    {
        var ball = new CapsuleChain([new(1, 2, 3)], 4);

        ball.NodeCount.ShouldBe(1);
        ball.IsLeaf(0).ShouldBeTrue();
        ball.Support(0, Vector3d.UnitX).ShouldBe(5);
        ball.Support(0, -Vector3d.UnitY).ShouldBe(2);
        ball.Anchors.Length.ShouldBe(1);
    }

    [Fact]
    public void The_hull_of_the_anchors_holds_the_core_of_every_node()
    {
        var g = new SplitMix64(55);
        for (int i = 0; i < 300; i++)
        {
            CapsuleChain chain = Polylines.Draw(g);
            Vector3d n = g.UnitVector();

            for (int node = 0; node < chain.NodeCount; node++)
                (chain.Support(node, n) - chain.Piece(node).Radius).ShouldBeLessThanOrEqualTo(Largest(chain, n) + 1e-9);
        }
    }

    private static double Largest(Solid solid, Vector3d n)
    {
        double most = double.NegativeInfinity;
        foreach (Vector3d anchor in solid.Anchors) most = Math.Max(most, Vector3d.Dot(n, anchor));
        return most;
    }

    private static double Descend(CapsuleChain a, CapsuleChain b, in RigidMotion motion, int first, int second, double best)
    {
        double gap = SolidGap.Measure(a, first, b, second, motion).Gap;
        if (gap > best + 1e-9) return best;
        if (a.IsLeaf(first) && b.IsLeaf(second)) return Math.Min(best, gap);
        if (b.IsLeaf(second) || (!a.IsLeaf(first) && a.Thickness(first) >= b.Thickness(second)))
        {
            best = Descend(a, b, motion, a.Left(first), second, best);
            return Descend(a, b, motion, a.Right(first), second, best);
        }

        best = Descend(a, b, motion, first, b.Left(second), best);
        return Descend(a, b, motion, first, b.Right(second), best);
    }

    private static void SurfacePoint(in Capsule c, SplitMix64 g, out Vector3d point) =>
        point = Vector3d.Lerp(c.From, c.To, g.Unit() < 0.5 ? Math.Round(g.Unit()) : g.Unit()) + (g.UnitVector() * c.Radius);

    private static double OutsideBy(in Capsule c, Vector3d point) => SegmentDistance.FromPoint(point, c.From, c.To) - c.Radius;
}
