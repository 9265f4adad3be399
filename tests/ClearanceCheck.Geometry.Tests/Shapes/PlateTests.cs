using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Geometry.Tests.Scenes;

namespace ClearanceCheck.Geometry.Tests.Shapes;

public sealed class PlateTests
{
    private static readonly Vector3d[] LShape = [new(0, 0, 0), new(60, 0, 0), new(60, 20, 0), new(20, 20, 0), new(20, 50, 0), new(0, 50, 0)];

    [Fact]
    public void The_triangles_of_an_L_cover_its_area_either_way_round_and_none_lies_in_its_notch()
    {
        foreach (Vector3d[] outline in (Vector3d[][])[LShape, [.. LShape.Reverse()], [.. LShape.Skip(3), .. LShape.Take(3)]])
        {
            SimplexTree plate = Simplices.Plate(outline, 3).ShouldNotBeNull();

            Area(plate).ShouldBe(1800, 1e-9);
            Distance(plate, new(40, 40, 0)).ShouldBe(20 - 1.5, 1e-12);
            Distance(plate, new(10, 10, 7)).ShouldBe(7 - 1.5, 1e-12);
            Distance(plate, new(-5, 25, 0)).ShouldBe(5 - 1.5, 1e-12);
        }
    }

    [Fact]
    public void The_triangles_of_random_stars_cover_the_area_of_the_outline_in_any_pose()
    {
        var g = new SplitMix64(1201);
        for (int i = 0; i < 300; i++)
        {
            // Corners at rising angles around a middle: never crossing, often concave.
            int count = 3 + (int)(g.Unit() * 20);
            double[] angles = [.. Enumerable.Range(0, count).Select(k => 2 * Math.PI * (k + g.In(0, 0.9)) / count)];
            if (count == 3 && Math.Max(angles[1] - angles[0], Math.Max(angles[2] - angles[1], angles[0] + (2 * Math.PI) - angles[2])) > 3) continue;
            Vector3d[] flat = [.. angles.Select(a => new Vector3d(Math.Cos(a), Math.Sin(a), 0) * g.In(10, 100))];
            RigidMotion motion = g.Motion(500);
            Vector3d[] outline = [.. (i % 2 == 0 ? flat : flat.Reverse()).Select(motion.Apply)];

            SimplexTree plate = Simplices.Plate(outline, 2).ShouldNotBeNull();

            Area(plate).ShouldBe(Shoelace(flat), 1e-8);
            Trees.Below(plate, 0).Count().ShouldBe(count - 2);
        }
    }

    [Fact]
    public void An_outline_that_is_not_quite_flat_keeps_its_corners()
    {
        Vector3d[] outline = [.. LShape.Select((p, i) => p with { Z = i % 2 == 0 ? 0.3 : -0.3 })];

        SimplexTree plate = Simplices.Plate(outline, 3).ShouldNotBeNull();

        Area(plate).ShouldBeInRange(1800, 1805);
        foreach (Vector3d corner in outline) Distance(plate, corner).ShouldBe(-1.5, 1e-12);
    }

    [Fact]
    public void A_corner_on_a_straight_edge_is_no_harm_to_the_area()
    {
        Vector3d[] straight = [new(0, 0, 0), new(10, 0, 0), new(20, 0, 0), new(20, 10, 0), new(0, 10, 0)];

        Area(Simplices.Plate(straight, 1).ShouldNotBeNull()).ShouldBe(200, 1e-9);
    }

    [Fact]
    public void An_outline_that_crosses_itself_or_has_no_area_is_no_plate()
    {
        Simplices.Plate([], 1).ShouldBeNull();
        Simplices.Plate([Vector3d.Zero, Vector3d.UnitX], 1).ShouldBeNull();
        Simplices.Plate([Vector3d.Zero, Vector3d.UnitX, new(2, 0, 0)], 1).ShouldBeNull();
        Simplices.Plate([Vector3d.Zero, new(10, 10, 0), new(10, 0, 0), new(0, 10, 0)], 1).ShouldBeNull();
        Simplices.Plate([Vector3d.Zero, new(20, 10, 0), new(20, 0, 0), new(0, 8, 0)], 1).ShouldBeNull();
        Simplices.Plate([new(0, 0, 0), new(60, 0, 0), new(60, 20, 0), new(-20, 20, 0), new(-20, 50, 0), new(0, 50, 0)], 1).ShouldBeNull();
    }

    private static double Distance(SimplexTree plate, Vector3d point) => Trees.AllPairs(plate, new CapsuleChain([point], 0), RigidMotion.Identity);

    private static double Area(SimplexTree plate)
    {
        var corners = new Vector3d[Piece.MaximumCorners];
        double sum = 0;
        foreach (int leaf in Trees.Below(plate, 0))
        {
            plate.Corners(leaf, corners).ShouldBe(3);
            sum += Vector3d.Cross(corners[1] - corners[0], corners[2] - corners[0]).Length / 2;
        }

        return sum;
    }

    private static double Shoelace(Vector3d[] flat)
    {
        double sum = 0;
        for (int i = 0; i < flat.Length; i++)
        {
            Vector3d a = flat[i], b = flat[(i + 1) % flat.Length];
            sum += ((a.X * b.Y) - (a.Y * b.X)) / 2;
        }

        return Math.Abs(sum);
    }
}
