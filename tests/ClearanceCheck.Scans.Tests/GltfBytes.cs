using System.Buffers.Binary;
using System.Text;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Scans.Tests;

/// <summary>Writes meshes into glTF: indices as 16-bit numbers first, then points as floats.</summary>
internal static class GltfBytes
{
    /// <summary>The head of a file with one mesh in one node; its buffer comes from <paramref name="uri"/>, or from the .glb where that is empty.</summary>
    public static string Head(TestMesh mesh, string uri = "")
    {
        int indices = 2 * mesh.Corners.Length;
        string buffer = uri.Length == 0 ? "" : $"\"uri\": \"{uri}\", ";
        return $$"""
            {
              "asset": { "version": "2.0" },
              "scene": 0,
              "scenes": [ { "nodes": [ 0 ] } ],
              "nodes": [ { "mesh": 0 } ],
              "meshes": [ { "primitives": [ { "attributes": { "POSITION": 1 }, "indices": 0 } ] } ],
              "accessors": [
                { "bufferView": 0, "componentType": 5123, "count": {{mesh.Corners.Length}}, "type": "SCALAR" },
                { "bufferView": 1, "componentType": 5126, "count": {{mesh.Points.Length}}, "type": "VEC3" }
              ],
              "bufferViews": [
                { "buffer": 0, "byteOffset": 0, "byteLength": {{indices}} },
                { "buffer": 0, "byteOffset": {{indices}}, "byteLength": {{12 * mesh.Points.Length}} }
              ],
              "buffers": [ { {{buffer}}"byteLength": {{indices + (12 * mesh.Points.Length)}} } ]
            }
            """;
    }

    public static byte[] Buffer(TestMesh mesh)
    {
        using var stream = new MemoryStream();
        Span<byte> number = stackalloc byte[4];
        foreach (int corner in mesh.Corners)
        {
            BinaryPrimitives.WriteUInt16LittleEndian(number, (ushort)corner);
            stream.Write(number[..2]);
        }

        foreach (Vector3d point in mesh.Points)
            for (int axis = 0; axis < 3; axis++)
            {
                BinaryPrimitives.WriteSingleLittleEndian(number, (float)point[axis]);
                stream.Write(number);
            }

        return stream.ToArray();
    }

    public static byte[] Embedded(TestMesh mesh) => Encoding.UTF8.GetBytes(Head(mesh, Data(Buffer(mesh))));

    public static byte[] Glb(TestMesh mesh) => Glb(Head(mesh), Buffer(mesh));

    public static string Data(byte[] bytes) => "data:application/octet-stream;base64," + Convert.ToBase64String(bytes);

    public static byte[] Glb(string head, byte[] buffer)
    {
        byte[] json = Encoding.UTF8.GetBytes(head);
        byte[] paddedJson = [.. json, .. Enumerable.Repeat((byte)' ', (4 - (json.Length % 4)) % 4)];
        byte[] paddedBuffer = [.. buffer, .. new byte[(4 - (buffer.Length % 4)) % 4]];
        int length = 12 + 8 + paddedJson.Length + 8 + paddedBuffer.Length;
        return [.. "glTF"u8, .. Number(2), .. Number(length), .. Number(paddedJson.Length), .. "JSON"u8, .. paddedJson, .. Number(paddedBuffer.Length), .. "BIN\0"u8, .. paddedBuffer];
    }

    private static byte[] Number(int value)
    {
        byte[] bytes = new byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(bytes, value);
        return bytes;
    }
}
