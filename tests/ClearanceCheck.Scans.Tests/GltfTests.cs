using ClearanceCheck.Geometry;

namespace ClearanceCheck.Scans.Tests;

public sealed class GltfTests
{
    [Fact]
    public void Nodes_move_their_meshes_one_after_the_other()
    {
        // A quarter turn about z, then (100, 0, 0); above it twice the size. (x, y, z) -> 2 (-y + 100, x, z).
        string nodes = """[ { "children": [ 1 ], "scale": [ 2, 2, 2 ] }, { "mesh": 0, "rotation": [ 0, 0, 0.70710678118654757, 0.70710678118654757 ], "translation": [ 100, 0, 0 ] } ]""";

        Scan scan = Read(nodes).Sound();

        scan.Low.X.ShouldBe(2 * (-28 + 100), 1e-12);
        scan.High.X.ShouldBe(2 * (-4 + 100), 1e-12);
        scan.Low.Y.ShouldBe(-16, 1e-12);
        scan.High.Y.ShouldBe(64, 1e-12);
        scan.High.Z.ShouldBe(22, 1e-12);
    }

    [Fact]
    public void A_matrix_stands_column_by_column()
    {
        string nodes = """[ { "mesh": 0, "matrix": [ 0, 2, 0, 0, -2, 0, 0, 0, 0, 0, 2, 0, 200, 0, 0, 1 ] } ]""";

        Scan scan = Read(nodes).Sound();

        // The map of the test above, written as one matrix.
        scan.Low.ShouldBe(new Vector3d(2 * (-28 + 100), -16, 2));
        scan.High.ShouldBe(new Vector3d(2 * (-4 + 100), 64, 22));
    }

    [Fact]
    public void Parts_of_a_transform_are_the_matrix_of_the_standard()
    {
        // The standard's matrix of a unit quaternion, written out; an axis that is no axis of the frame.
        double[] q = [0.1, -0.5, 0.7, Math.Sqrt(0.25)];
        double x = q[0], y = q[1], z = q[2], w = q[3];
        Vector3d[] rows =
        [
            new(1 - (2 * ((y * y) + (z * z))), 2 * ((x * y) - (z * w)), 2 * ((x * z) + (y * w))),
            new(2 * ((x * y) + (z * w)), 1 - (2 * ((x * x) + (z * z))), 2 * ((y * z) - (x * w))),
            new(2 * ((x * z) - (y * w)), 2 * ((y * z) + (x * w)), 1 - (2 * ((x * x) + (y * y)))),
        ];
        string nodes = """[ { "mesh": 0, "rotation": [ 0.1, -0.5, 0.7, 0.5 ], "scale": [ 1, 2, 3 ], "translation": [ 5, 6, 7 ] } ]""";

        Scan scan = Read(nodes, 68.8).Sound();

        foreach ((Vector3d given, Vector3d read) in TestMesh.Box.Soup.Zip(TestMesh.SoupOf(scan)))
        {
            var scaled = new Vector3d(given.X, 2 * given.Y, 3 * given.Z);
            var turned = new Vector3d(Vector3d.Dot(rows[0], scaled), Vector3d.Dot(rows[1], scaled), Vector3d.Dot(rows[2], scaled));
            (read - (turned + new Vector3d(5, 6, 7))).Length.ShouldBeLessThan(1e-12);
        }
    }

    [Fact]
    public void A_mesh_may_stand_in_the_scene_more_than_once()
    {
        string nodes = """[ { "children": [ 2, 1 ] }, { "mesh": 0 }, { "mesh": 0, "translation": [ 40, 0, 0 ] } ]""";

        Scan scan = Read(nodes).Sound();

        scan.TriangleCount.ShouldBe(24);
        scan.Extent.X.ShouldBe(80);
        // They share a face's four points.
        scan.Points.Length.ShouldBe(12);
        TestMesh.SoupOf(scan).Take(3).ShouldBe(TestMesh.Box.Soup.Take(3).Select(p => p + new Vector3d(40, 0, 0)));
    }

    [Fact]
    public void Strips_and_fans_are_triangles()
    {
        TestMesh five = new([new(0, 0, 0), new(0, 40, 0), new(40, 0, 0), new(40, 40, 0), new(80, 0, 0)], [0, 1, 2, 3, 4]);

        Corners(five, 5).ShouldBe([(0, 1, 2), (1, 2, 3), (2, 3, 4)]);
        Corners(five, 6).ShouldBe([(0, 1, 2), (0, 2, 3), (0, 3, 4)]);
    }

    [Fact]
    public void Points_without_indices_are_corners_in_order()
    {
        string head = GltfBytes.Head(TestMesh.Box).Replace(", \"indices\": 0", "", StringComparison.Ordinal).Replace("\"count\": 8", "\"count\": 6", StringComparison.Ordinal);

        Scan scan = Reading.Of("box.glb", GltfBytes.Glb(head, GltfBytes.Buffer(TestMesh.Box))).Sound();

        TestMesh.SoupOf(scan).ShouldBe(TestMesh.Box.Points.Take(6));
    }

    [Fact]
    public void Sparse_points_replace_those_of_the_buffer()
    {
        // Point 7 of the box is replaced by point 0: its number is read where the corners start (0), as the place of point 0 by point 1's.
        string sparse = """ "VEC3", "sparse": { "count": 1, "indices": { "bufferView": 0, "componentType": 5123 }, "values": { "bufferView": 1, "byteOffset": 12 } } }""";
        string head = GltfBytes.Head(TestMesh.Box).Replace(" \"VEC3\" }", sparse, StringComparison.Ordinal);

        Scan scan = Reading.Of("box.glb", GltfBytes.Glb(head, GltfBytes.Buffer(TestMesh.Box))).Sound();

        TestMesh.SoupOf(scan).ShouldBe(TestMesh.Box.Corners.Select(c => TestMesh.Box.Points[c == 0 ? 1 : c]));
    }

    [Fact]
    public void Quantized_points_are_read()
    {
        // The corners' bytes as points of 16-bit numbers: (0, 1, 3), (0, 3, 2), (4, 7, 5), ...
        string head = GltfBytes.Head(TestMesh.Box)
            .Replace("\"asset\"", "\"extensionsRequired\": [ \"KHR_mesh_quantization\" ], \"asset\"", StringComparison.Ordinal)
            .Replace("\"bufferView\": 1, \"componentType\": 5126, \"count\": 8", "\"bufferView\": 0, \"componentType\": 5123, \"count\": 8", StringComparison.Ordinal);
        ScanClaims claims = Reading.BoxClaims with { Sizes = [new ScanSize(ScanSide.Longest, 6, 0.1)] };

        Scan scan = Reading.Of("box.glb", GltfBytes.Glb(head, GltfBytes.Buffer(TestMesh.Box)), claims).Sound();

        Vector3d[] points = [.. TestMesh.Box.Corners.Chunk(3).Select(c => new Vector3d(c[0], c[1], c[2]))];
        TestMesh.SoupOf(scan).ShouldBe(TestMesh.Box.Corners.Select(c => points[c]));
    }

    [Fact]
    public void Metres_as_the_standard_says_need_no_note()
    {
        ScanClaims claims = Reading.BoxClaims with { Unit = Units.LengthUnit.Metre, Sizes = [new ScanSize(ScanSide.X, 40_000, 1)] };

        Formats.Read("glb", TestMesh.Box, claims).Diagnostics.Count.ShouldBe(0);
        Formats.Read("stl-binary", TestMesh.Box).Diagnostics.Count.ShouldBe(0);
        Formats.Read("glb", TestMesh.Box).Diagnostics.Count.ShouldBe(1);
    }

    private static ScanClaims Long(double mm) => Reading.BoxClaims with { Sizes = [new ScanSize(ScanSide.Longest, mm, 1)] };

    private static Reading Read(string nodes, double longest = 80)
    {
        string head = GltfBytes.Head(TestMesh.Box).Replace("[ { \"mesh\": 0 } ]", nodes, StringComparison.Ordinal);
        return Reading.Of("box.glb", GltfBytes.Glb(head, GltfBytes.Buffer(TestMesh.Box)), Long(longest));
    }

    // The triangles, each from its least corner on: which one stands first depends on the reader.
    private static IEnumerable<(int A, int B, int C)> Corners(TestMesh mesh, int mode)
    {
        string head = GltfBytes.Head(mesh).Replace("\"indices\": 0", $"\"indices\": 0, \"mode\": {mode}", StringComparison.Ordinal);
        Scan scan = Reading.Of("strip.glb", GltfBytes.Glb(head, GltfBytes.Buffer(mesh)), Long(80)).Sound();
        return TestMesh.SoupOf(scan).Select(p => Array.IndexOf(mesh.Points, p)).Chunk(3).Select(c => c.Order().ToArray()).Select(c => (c[0], c[1], c[2]));
    }
}
