using ClearanceCheck.Geometry;

namespace ClearanceCheck.Scans.Tests;

public sealed class ScanTests
{
    [Fact]
    public void Corners_become_one_point_only_when_they_are_equal()
    {
        double next = Math.BitIncrement(40.0);
        TestMesh two = new([new(0, 0, 0), new(40, 0, 0), new(0, 40, 0), new(next, 0, 0), new(-0.0, 0, 0)], [0, 1, 2, 4, 3, 2]);

        Scan scan = Reading.Of("two.stl", MeshBytes.StlText(two)).Sound();

        scan.Points.ShouldBe([new(0, 0, 0), new(40, 0, 0), new(0, 40, 0), new(next, 0, 0)]);
        scan.Corners.ShouldBe([0, 1, 2, 0, 3, 2]);
        scan.Triangle(1).ShouldBe((0, 3, 2));
    }

    [Fact]
    public void Triangles_without_area_are_kept()
    {
        Scan scan = FaultCases.All["flat-triangles"]().Sound();

        scan.TriangleCount.ShouldBe(3);
        scan.Triangle(1).ShouldBe((0, 1, 1));
    }

    [Fact]
    public void Triangles_that_name_a_point_twice_are_kept_in_every_format()
    {
        TestMesh mesh = new([new(0, 0, 0), new(40, 0, 0), new(0, 40, 0)], [0, 1, 2, 0, 1, 1, 2, 2, 2]);

        foreach (string format in Formats.All.Keys) Formats.Read(format, mesh).Sound().TriangleCount.ShouldBe(3, format);
    }

    [Fact]
    public void A_fan_covers_a_flat_face_that_is_not_convex()
    {
        // An arrow head with its notch at (10, 20): the fan around the first corner reaches over the notch, but leaves nothing open.
        Vector3d[] outline = [new(0, 0, 0), new(40, 20, 0), new(0, 40, 0), new(10, 20, 0)];
        for (int first = 0; first < 4; first++)
        {
            string ply = "ply\nformat ascii 1.0\nelement vertex 4\nproperty float x\nproperty float y\nproperty float z\nelement face 1\nproperty list uchar int vertex_index\nend_header\n"
                + string.Concat(outline.Select(p => $"{(int)p.X} {(int)p.Y} {(int)p.Z}\n"))
                + $"4 {first} {(first + 1) % 4} {(first + 2) % 4} {(first + 3) % 4}\n";

            Scan scan = Reading.Of("arrow.ply", ply).Sound();

            scan.TriangleCount.ShouldBe(2);
            for (int x = 1; x < 40; x += 3)
                for (int y = 1; y < 40; y += 3)
                    if (IsInArrow(x + 0.13, y + 0.29)) scan.Corners.Chunk(3).ShouldContain(c => IsIn(scan, c, x + 0.13, y + 0.29), $"({x}, {y}) from corner {first}");
        }
    }

    [Fact]
    public void Tables_of_a_PLY_file_may_stand_in_any_order()
    {
        string ply = "ply\nformat ascii 1.0\nelement face 1\nproperty list uchar int vertex_index\nelement vertex 3\nproperty float z\nproperty float x\nproperty float y\nend_header\n3 2 1 0\n1 2 3\n4 5 6\n7 8 49\n";

        Scan scan = Reading.Of("order.ply", ply, Reading.BoxClaims with { Sizes = [new ScanSize(ScanSide.Y, 46, 0.001)] }).Sound();

        TestMesh.SoupOf(scan).ShouldBe([new(8, 49, 7), new(5, 6, 4), new(2, 3, 1)]);
    }

    [Theory]
    [InlineData("40", 40)]
    [InlineData("+40", 40)]
    [InlineData("4e1", 40)]
    [InlineData("4.E+01", 40)]
    [InlineData("400.0000000000000000000000000000000000000000e-1", 40)]
    [InlineData("40.1", 40.1)]
    [InlineData("0040.", 40)]
    public void Numbers_are_read_as_programs_write_them(string written, double value)
    {
        Scan scan = Reading.Of("box.stl", $"solid\nfacet normal 0 0 1 outer loop vertex 0 0 -.5 vertex {written} 0 -0 VERTEX 0 1 .5\tendloop\r\nendfacet\rendsolid").Sound();

        scan.Points.ShouldBe([new(0, 0, -0.5), new(value, 0, 0), new(0, 1, 0.5)]);
    }

    [Theory]
    [InlineData("4O")]
    [InlineData("0x28")]
    [InlineData("40f")]
    [InlineData("1.#INF")]
    [InlineData("-nan(ind)")]
    [InlineData("++4")]
    [InlineData("+-4")]
    [InlineData("--")]
    public void What_is_no_number_is_refused(string written) =>
        Reading.Of("box.stl", $"solid\nfacet normal 0 0 1 outer loop vertex 0 0 0 vertex {written} 0 0 vertex 0 1 0 endloop endfacet endsolid").Diagnostics.Ordered.ShouldHaveSingleItem().Id.ShouldBe("scan.text-number");

    [Theory]
    [InlineData(39.1, true)]
    [InlineData(40.9, true)]
    [InlineData(38.9, false)]
    [InlineData(41.1, false)]
    public void A_size_fits_within_its_tolerance_on_both_sides(double typed, bool fits) =>
        (Formats.Read("stl-text", TestMesh.Box, Reading.BoxClaims with { Sizes = [new ScanSize(ScanSide.Longest, typed, 1)] }).Scan is not null).ShouldBe(fits);

    // Between the two outer edges, and right of the two that make the notch.
    private static bool IsInArrow(double x, double y) => y > x / 2 && 40 - y > x / 2 && x > 10 - (Math.Abs(20 - y) / 2);

    private static bool IsIn(Scan scan, int[] corners, double x, double y)
    {
        double[] sides = new double[3];
        for (int k = 0; k < 3; k++)
        {
            Vector3d a = scan.Points[corners[k]], b = scan.Points[corners[(k + 1) % 3]];
            sides[k] = ((b.X - a.X) * (y - a.Y)) - ((b.Y - a.Y) * (x - a.X));
        }

        return sides.All(s => s >= 0) || sides.All(s => s <= 0);
    }
}
