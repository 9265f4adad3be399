using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Benchmarks;

/// <summary>The distance of a point from a solid by the product's own tree and gaps: down the nearer child first, nothing that can't be nearer.</summary>
internal sealed class ClosestPoint(Solid solid)
{
    private const int MostWaiting = 256;

    /// <summary>The distance, mm.</summary>
    public double Distance(Vector3d point)
    {
        var other = new CapsuleChain([point], 0);
        Span<(int Node, double Bound)> waiting = stackalloc (int Node, double Bound)[MostWaiting];
        int count = 0;
        double best = double.PositiveInfinity;
        waiting[count++] = (0, double.NegativeInfinity);
        while (count > 0)
        {
            (int node, double bound) = waiting[--count];
            if (bound >= best) continue;
            if (solid.IsLeaf(node))
            {
                best = bound;
                continue;
            }

            int left = solid.Left(node), right = solid.Right(node);
            double leftBound = Gap(left, other), rightBound = Gap(right, other);
            // The nearer one is looked at first: it lies on top.
            (int Node, double Bound) near = leftBound <= rightBound ? (left, leftBound) : (right, rightBound);
            (int Node, double Bound) far = leftBound <= rightBound ? (right, rightBound) : (left, leftBound);
            if (far.Bound < best) waiting[count++] = far;
            if (near.Bound < best) waiting[count++] = near;
        }

        return best;
    }

    private double Gap(int node, CapsuleChain point) => SolidGap.Measure(solid, node, point, 0, RigidMotion.Identity).Gap;
}
