using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Scans.Tests;

/// <summary>Writes meshes into STL and PLY byte by byte.</summary>
internal static class MeshBytes
{
    public static byte[] StlBinary(TestMesh mesh, string head = "made by a test")
    {
        byte[] bytes = new byte[84 + (50 * mesh.TriangleCount)];
        Encoding.ASCII.GetBytes(head).CopyTo(bytes, 0);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(80), mesh.TriangleCount);
        Vector3d[] soup = [.. mesh.Soup];
        for (int i = 0; i < soup.Length; i++)
            for (int axis = 0; axis < 3; axis++)
                BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(84 + (50 * (i / 3)) + 12 + (12 * (i % 3)) + (4 * axis)), (float)soup[i][axis]);
        return bytes;
    }

    public static byte[] StlText(TestMesh mesh, string newLine = "\n")
    {
        var lines = new List<string> { "solid a box of a test" };
        foreach (Vector3d[] triangle in mesh.Soup.Chunk(3))
            lines.AddRange(["  facet normal 0 0 0", "    outer loop", .. triangle.Select(p => "      vertex " + Numbers(p)), "    endloop", "  endfacet"]);
        lines.Add("endsolid a box of a test");
        return Text(lines, newLine);
    }

    public static byte[] PlyText(TestMesh mesh, string newLine = "\n") => Text(
        [
            "ply", "format ascii 1.0", "comment made by a test",
            $"element vertex {mesh.Points.Length}", "property double x", "property double y", "property double z",
            $"element face {mesh.TriangleCount}", "property list uchar int vertex_indices", "end_header",
            .. mesh.Points.Select(Numbers), .. mesh.Corners.Chunk(3).Select(c => $"3 {c[0]} {c[1]} {c[2]}"),
        ],
        newLine);

    /// <summary>With columns and a table that nobody asked for, so that they are walked through.</summary>
    public static byte[] PlyBinary(TestMesh mesh, bool bigEndian)
    {
        byte[] header = Text(
            [
                "ply", $"format binary_{(bigEndian ? "big" : "little")}_endian 1.0",
                "element camera 2", "property list ushort double focus", "property char kind",
                $"element vertex {mesh.Points.Length}", "property uchar red", "property float x", "property float y", "property short quality", "property float z",
                $"element face {mesh.TriangleCount}", "property list uchar float texcoord", "property list uint ushort vertex_index", "end_header",
            ],
            "\n");
        using var stream = new MemoryStream();
        stream.Write(header);
        for (int i = 0; i < 2; i++)
        {
            Write(stream, bigEndian, (ushort)i);
            for (int k = 0; k < i; k++) Write(stream, bigEndian, 1.5);
            stream.WriteByte(7);
        }

        foreach (Vector3d p in mesh.Points)
        {
            stream.WriteByte(200);
            Write(stream, bigEndian, (float)p.X);
            Write(stream, bigEndian, (float)p.Y);
            Write(stream, bigEndian, (ushort)3);
            Write(stream, bigEndian, (float)p.Z);
        }

        foreach (int[] triangle in mesh.Corners.Chunk(3))
        {
            stream.WriteByte(1);
            Write(stream, bigEndian, 0.5f);
            Write(stream, bigEndian, 3u);
            foreach (int corner in triangle) Write(stream, bigEndian, (ushort)corner);
        }

        return stream.ToArray();
    }

    public static byte[] Text(IEnumerable<string> lines, string newLine = "\n") => Encoding.UTF8.GetBytes(string.Concat(lines.Select(l => l + newLine)));

    private static string Numbers(Vector3d p) => string.Create(CultureInfo.InvariantCulture, $"{p.X:R} {p.Y:R} {p.Z:R}");

    private static void Write(MemoryStream stream, bool bigEndian, ushort value) => Write(stream, bigEndian, BitConverter.GetBytes(value));

    private static void Write(MemoryStream stream, bool bigEndian, uint value) => Write(stream, bigEndian, BitConverter.GetBytes(value));

    private static void Write(MemoryStream stream, bool bigEndian, float value) => Write(stream, bigEndian, BitConverter.GetBytes(value));

    private static void Write(MemoryStream stream, bool bigEndian, double value) => Write(stream, bigEndian, BitConverter.GetBytes(value));

    private static void Write(MemoryStream stream, bool bigEndian, byte[] bytes)
    {
        if (bigEndian == BitConverter.IsLittleEndian) Array.Reverse(bytes);
        stream.Write(bytes);
    }
}
