using System.Buffers.Binary;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Scans.Stl;

/// <summary>Binary STL: 80 bytes of anything, a count, and 50 bytes a triangle: normal, three corners as little-endian floats, two bytes.</summary>
internal static class BinaryStl
{
    public const int HeadLength = 84;

    private const int CountAt = 80;
    private const int TriangleLength = 50;
    private const int NormalLength = 12;
    private const int CornerLength = 12;

    public static long LengthOf(uint triangles) => HeadLength + ((long)TriangleLength * triangles);

    public static bool HasItsLength(ReadOnlySpan<byte> bytes) => bytes.Length >= HeadLength && bytes.Length == LengthOf(Count(bytes));

    public static MeshBuilder? Read(ScanFile file)
    {
        ReadOnlySpan<byte> bytes = file.Bytes;
        uint count = Count(bytes);
        if (count > ScanLimits.MostTriangles)
        {
            ScanMessages.TooManyTriangles(file, count);
            return null;
        }

        var mesh = new MeshBuilder(file, (int)count);
        for (int i = 0; i < count; i++)
        {
            ReadOnlySpan<byte> corners = bytes.Slice(HeadLength + (i * TriangleLength) + NormalLength, 3 * CornerLength);
            Vector3d a = Corner(corners), b = Corner(corners[CornerLength..]), c = Corner(corners[(2 * CornerLength)..]);
            if (!a.IsFinite || !b.IsFinite || !c.IsFinite)
            {
                ScanMessages.NotFinite(file, $"triangle {i + 1}");
                return null;
            }

            if (!mesh.Triangle(a, b, c)) return null;
        }

        return mesh;
    }

    /// <summary>Says why a file that is not text is no binary STL either.</summary>
    public static MeshBuilder? Refuse(ScanFile file)
    {
        if (file.Length < HeadLength)
        {
            ScanMessages.StlTooShort(file);
            return null;
        }

        uint claimed = Count(file.Bytes);
        if (file.Length < LengthOf(claimed)) ScanMessages.StlEnds(file, claimed, (file.Length - HeadLength) / TriangleLength);
        else ScanMessages.StlGoesOn(file, claimed);
        return null;
    }

    private static uint Count(ReadOnlySpan<byte> bytes) => BinaryPrimitives.ReadUInt32LittleEndian(bytes[CountAt..]);

    private static Vector3d Corner(ReadOnlySpan<byte> bytes) => new(
        BinaryPrimitives.ReadSingleLittleEndian(bytes), BinaryPrimitives.ReadSingleLittleEndian(bytes[4..]), BinaryPrimitives.ReadSingleLittleEndian(bytes[8..]));
}
