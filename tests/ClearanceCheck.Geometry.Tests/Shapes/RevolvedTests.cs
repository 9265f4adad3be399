using System.Collections.Immutable;
using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Geometry.Tests.Oracle;
using ClearanceCheck.Geometry.Tests.Scenes;

namespace ClearanceCheck.Geometry.Tests.Shapes;

public sealed class RevolvedTests
{
    [Fact]
    public void A_solid_cylinder_has_the_gap_of_the_exact_one_less_at_most_its_facets()
    {
        var g = new SplitMix64(1301);
        int outside = 0;
        double worst = 0;
        for (int i = 0; i < 300; i++)
        {
            double radius = g.In(30, 500), half = g.In(10, 180);
            Vector3d center = g.Cube(100), axis = g.UnitVector(), from = g.Cube(700);
            var capsule = new Capsule(from, from + g.Cube(200), g.In(2, 25));
            double exact = DiscCapsule.Measure(new Disc(center, axis, radius, half), capsule).Gap;
            Revolved solid = Cylinder(center, axis, radius, half);

            double gap = Trees.Descend(solid, new CapsuleChain([capsule.From, capsule.To], capsule.Radius), RigidMotion.Identity);

            // Once the axis of the bar is inside, each stave by itself has a shorter way out than the whole; it is an overlap all the same.
            if (exact < -capsule.Radius + 1e-6)
            {
                gap.ShouldBeLessThanOrEqualTo(-capsule.Radius + 1e-9);
                continue;
            }

            outside++;
            gap.ShouldBeLessThanOrEqualTo(exact + 1e-9);
            gap.ShouldBeGreaterThanOrEqualTo(exact - (2 * solid.FacetMm));
            worst = Math.Max(worst, exact - gap);
        }

        outside.ShouldBeGreaterThan(150);
        worst.ShouldBeGreaterThan(1e-5, "facets stick out, so some gap has to be smaller");
    }

    [Fact]
    public void Finer_facets_stick_out_less()
    {
        foreach (double facet in (double[])[1, 0.1, 0.01, 0.001])
        {
            Revolved solid = new(Vector3d.Zero, Vector3d.UnitZ, [Rectangle(0, 300, -50, 50)], facet);
            double most = Trees.Below(solid, 0).Max(leaf => Reach(solid, leaf));

            most.ShouldBeInRange(300, 300 + facet);
        }
    }

    [Fact]
    public void The_leaves_hold_every_point_of_the_true_solid()
    {
        var g = new SplitMix64(1302);
        for (int i = 0; i < 40; i++)
        {
            Revolved solid = HullScenes.Revolved(g);
            Vector3d e = solid.Axis.AnyPerpendicular(), f = Vector3d.Cross(solid.Axis, e);
            for (int k = 0; k < 10; k++)
            {
                Section section = solid.Sections[(int)(g.Unit() * solid.Sections.Length)];
                ProfilePoint a = section.Corners[(int)(g.Unit() * section.Corners.Length)], b = section.Corners[(int)(g.Unit() * section.Corners.Length)];
                double t = g.Unit(), angle = g.In(0, 2 * Math.PI), radius = a.Radius + ((b.Radius - a.Radius) * t), along = a.Along + ((b.Along - a.Along) * t);
                Vector3d point = solid.Origin + (solid.Axis * along) + (((e * Math.Cos(angle)) + (f * Math.Sin(angle))) * radius);

                Trees.Descend(solid, Point(point), RigidMotion.Identity).ShouldBeLessThanOrEqualTo(-section.Radius + 1e-9);
            }
        }
    }

    [Fact]
    public void The_hollow_is_concave_no_steeper_than_one_and_never_more_than_the_distance()
    {
        var g = new SplitMix64(1303);
        int positive = 0;
        for (int i = 0; i < 60; i++)
        {
            Revolved solid = HullScenes.Revolved(g);
            for (int k = 0; k < 60; k++)
            {
                int node = Node(solid, g);
                Vector3d a = solid.Origin + g.Cube(300), b = solid.Origin + (k % 2 == 0 ? g.Cube(300) : solid.Axis * g.In(-150, 150));
                double t = g.Unit(), ofA = solid.InsideHollow(node, a), ofB = solid.InsideHollow(node, b), between = solid.InsideHollow(node, Vector3d.Lerp(a, b, t));
                if (double.IsNegativeInfinity(ofA)) continue;

                between.ShouldBeGreaterThanOrEqualTo(((1 - t) * ofA) + (t * ofB) - 1e-9);
                Math.Abs(ofA - ofB).ShouldBeLessThanOrEqualTo((a - b).Length + 1e-9);
                if (!(ofB > 0)) continue;
                positive++;
                double distance = Trees.Below(solid, node).Min(leaf => SolidGap.Measure(solid, leaf, Point(b), 0, RigidMotion.Identity).Gap);
                ofB.ShouldBeLessThanOrEqualTo(distance + 1e-9);
            }
        }

        positive.ShouldBeGreaterThan(100);
    }

    [Fact]
    public void A_point_in_a_barrel_is_clear_of_its_wall_and_one_outside_is_told_nothing()
    {
        // A wheel's barrel: 200 mm inside, 4 mm thick, 240 mm wide; counted to the middle of its wall.
        var barrel = new Revolved(new(10, 20, 30), Vector3d.UnitY, [new Section([new(202, -120), new(202, 120)], 2)]);
        Vector3d axle = new(10, 20, 30);

        barrel.InsideHollow(0, axle).ShouldBeInRange(200 - 0.02, 200);
        barrel.InsideHollow(0, axle + new Vector3d(150, 70, 0)).ShouldBeInRange(50 - 0.02, 50);
        barrel.InsideHollow(0, axle + new Vector3d(0, 0, 260)).ShouldBeLessThan(0);
        Trees.Descend(barrel, Point(axle), RigidMotion.Identity).ShouldBeInRange(200 - 0.02, 200);
        Trees.Descend(barrel, Point(axle + new Vector3d(0, 0, 260)), RigidMotion.Identity).ShouldBeInRange(56 - 0.02, 56);
        Trees.Descend(barrel, Point(axle + new Vector3d(0, 123, 202)), RigidMotion.Identity).ShouldBeInRange(1 - 0.02, 1);
        Trees.Descend(barrel, Point(axle + new Vector3d(0, 50, 202)), RigidMotion.Identity).ShouldBeInRange(-2 - 0.02, -2 + 1e-9);
    }

    [Fact]
    public void What_is_no_solid_of_revolution_is_refused()
    {
        ImmutableArray<Section> one = [Rectangle(0, 10, 0, 10)];

        Should.Throw<ArgumentException>(() => new Revolved(Vector3d.Zero, Vector3d.Zero, one));
        Should.Throw<ArgumentException>(() => new Revolved(Vector3d.Zero, new(double.NaN, 0, 1), one));
        Should.Throw<ArgumentException>(() => new Revolved(new(0, double.PositiveInfinity, 0), Vector3d.UnitX, one));
        Should.Throw<ArgumentException>(() => new Revolved(Vector3d.Zero, Vector3d.UnitX, []));
        foreach (Section wrong in (Section[])[new([], 0), new([new(1, 0), new(2, 0), new(3, 1), new(2, 2), new(1, 1)], 0), new([new(-1, 0)], 0), new([new(1, 0)], -1), new([new(double.NaN, 0)], 0), new([new(1, double.PositiveInfinity)], 0), new([new(1, 0)], double.NaN)])
            Should.Throw<ArgumentException>(() => new Revolved(Vector3d.Zero, Vector3d.UnitX, [wrong]));
    }

    [Fact]
    public void An_excess_of_the_facets_that_is_negative_or_no_number_is_refused()
    {
        foreach (double facet in (double[])[-1, double.NaN])
            Should.Throw<ArgumentException>(() => new Revolved(Vector3d.Zero, Vector3d.UnitX, [Rectangle(0, 10, 0, 10)], facet));
    }

    private static int Node(Revolved solid, SplitMix64 g)
    {
        int node = 0;
        while (!solid.IsLeaf(node) && g.Unit() < 0.75) node = g.Unit() < 0.5 ? solid.Left(node) : solid.Right(node);
        return node;
    }

    private static double Reach(Revolved solid, int leaf)
    {
        Span<Vector3d> corners = stackalloc Vector3d[Piece.MaximumCorners];
        double most = 0;
        foreach (Vector3d corner in corners[..solid.Corners(leaf, corners)]) most = Math.Max(most, (corner with { Z = 0 }).Length);
        return most;
    }

    private static CapsuleChain Point(Vector3d point) => new([point], 0);

    private static Revolved Cylinder(Vector3d center, Vector3d axis, double radius, double half) => new(center, axis, [Rectangle(0, radius, -half, half)]);

    private static Section Rectangle(double low, double high, double from, double to) => new([new(low, from), new(high, from), new(high, to), new(low, to)], 0);
}
