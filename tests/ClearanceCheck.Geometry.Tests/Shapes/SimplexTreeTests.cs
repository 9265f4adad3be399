using System.Collections.Immutable;
using System.Diagnostics;
using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Geometry.Tests.Scenes;

namespace ClearanceCheck.Geometry.Tests.Shapes;

public sealed class SimplexTreeTests
{
    private const int Wide = 150, Deep = 100;

    [Fact]
    public void Thirty_thousand_triangles_against_a_chain_are_searched_quickly_and_exactly()
    {
        var g = new SplitMix64(1101);
        (ImmutableArray<Vector3d> points, ImmutableArray<Simplex> triangles) = Bumps(g);
        triangles.Length.ShouldBe(30_000);
        long start = Stopwatch.GetTimestamp();
        var tree = new SimplexTree(points, triangles);
        CapsuleChain[] chains = [.. Enumerable.Range(0, 8).Select(i => Trees.Chain(g, new(g.In(200, 1200), g.In(200, 800), 40 + (i * 8)), 40, 10))];
        double[] found = [.. chains.Select(c => Trees.Descend(tree, c, RigidMotion.Identity))];
        Stopwatch.GetElapsedTime(start).TotalSeconds.ShouldBeLessThan(3);

        for (int i = 0; i < chains.Length; i++) found[i].ShouldBe(Filtered(points, triangles, chains[i], found[i] + 1), 1e-9);
        found.Min().ShouldBeLessThan(0);
        found.Max().ShouldBeGreaterThan(10);
    }

    [Fact]
    public void The_leaves_are_the_simplices()
    {
        var g = new SplitMix64(1102);
        (ImmutableArray<Vector3d> points, ImmutableArray<Simplex> triangles) = Bumps(g);
        triangles = [.. triangles.Take(777)];
        var tree = new SimplexTree(points, triangles);
        var corners = new Vector3d[Piece.MaximumCorners];

        string[] leaves = [.. Trees.Below(tree, 0).Select(leaf => string.Join(" ", corners.Take(tree.Corners(leaf, corners))))];

        leaves.Order().ShouldBe(triangles.Select(t => $"{points[t.A]} {points[t.B]} {points[t.C]}").Order());
    }

    [Fact]
    public void A_thousand_times_the_same_triangle_still_makes_a_tree()
    {
        var tree = new SimplexTree([Vector3d.Zero, Vector3d.UnitX, Vector3d.UnitY], [.. Enumerable.Repeat(new Simplex(0, 1, 2, 1), 1000)]);

        tree.NodeCount.ShouldBe(1999);
        Trees.Below(tree, 0).Count().ShouldBe(1000);
    }

    [Fact]
    public void What_is_no_solid_is_refused()
    {
        ImmutableArray<Vector3d> three = [Vector3d.Zero, Vector3d.UnitX, Vector3d.UnitY];

        Should.Throw<ArgumentException>(() => new SimplexTree(three, []));
        Should.Throw<ArgumentException>(() => new SimplexTree(three, [new(0, 1, 3, 0)]));
        Should.Throw<ArgumentException>(() => new SimplexTree(three, [new(0, -1, 2, 0)]));
        Should.Throw<ArgumentException>(() => new SimplexTree(three, [new(0, 1, 2, -1)]));
        Should.Throw<ArgumentException>(() => new SimplexTree(three, [new(0, 1, 2, double.NaN)]));
        Should.Throw<ArgumentException>(() => new SimplexTree(three, [new(0, 1, 2, double.PositiveInfinity)]));
        Should.Throw<ArgumentException>(() => new SimplexTree([Vector3d.Zero, new(0, double.NaN, 0)], [new(0, 1, 1, 0)]));
        Should.Throw<ArgumentException>(() => new SolidBox(Vector3d.Zero, new(double.NaN, 0, 0)));
        Should.Throw<ArgumentException>(() => new SolidBox(new(0, double.PositiveInfinity, 0), Vector3d.Zero));
    }

    // All triangles whose box comes near enough to the box of a piece.
    private static double Filtered(ImmutableArray<Vector3d> points, ImmutableArray<Simplex> triangles, CapsuleChain chain, double near)
    {
        double least = double.PositiveInfinity;
        foreach (int leaf in Trees.Below(chain, 0))
        {
            Capsule c = chain.Piece(leaf);
            double reach = Math.Max(near, 0) + c.Radius;
            foreach (Simplex t in triangles)
            {
                Vector3d[] corners = [points[t.A], points[t.B], points[t.C]];
                bool isNear = true;
                for (int axis = 0; axis < 3 && isNear; axis++)
                {
                    double low = Math.Min(corners[0][axis], Math.Min(corners[1][axis], corners[2][axis])), high = Math.Max(corners[0][axis], Math.Max(corners[1][axis], corners[2][axis]));
                    isNear = low - reach <= Math.Max(c.From[axis], c.To[axis]) && high + reach >= Math.Min(c.From[axis], c.To[axis]);
                }

                if (isNear) least = Math.Min(least, SignedGap.Measure(new Piece(corners, PieceKind.Simplex, t.Radius), new Piece([c.From, c.To], PieceKind.Simplex, c.Radius)).Gap);
            }
        }

        return least;
    }

    private static (ImmutableArray<Vector3d> Points, ImmutableArray<Simplex> Triangles) Bumps(SplitMix64 g)
    {
        var points = ImmutableArray.CreateBuilder<Vector3d>();
        var triangles = ImmutableArray.CreateBuilder<Simplex>();
        for (int y = 0; y <= Deep; y++)
            for (int x = 0; x <= Wide; x++) points.Add(new(x * 10, y * 10, (30 * Math.Sin(x * 0.3) * Math.Cos(y * 0.2)) + g.In(-1, 1)));
        for (int y = 0; y < Deep; y++)
            for (int x = 0; x < Wide; x++)
            {
                int at = (y * (Wide + 1)) + x, above = at + Wide + 1;
                triangles.Add(new(at, at + 1, above, 0));
                triangles.Add(new(at + 1, above + 1, above, 0));
            }

        return (points.ToImmutable(), triangles.ToImmutable());
    }
}
