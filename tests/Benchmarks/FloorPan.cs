using System.Buffers.Binary;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Benchmarks;

/// <summary>A wavy floor pan of 3 m by 1.5 m with bumps, as a scanner would see it: a million triangles of 3 mm. Millimetres.</summary>
internal sealed class FloorPan
{
    public const int Triangles = 2 * CellsAlong * CellsAcross;
    public const double LengthMm = CellsAlong * CellMm;

    private const int CellsAlong = 1000;
    private const int CellsAcross = 500;
    private const double CellMm = 3;
    private const double NoiseMm = 0.3;
    private const int TriangleLength = 50;
    private const int HeadLength = 84;

    private readonly Vector3d[] points = new Vector3d[(CellsAlong + 1) * (CellsAcross + 1)];
    private readonly SplitMix64 random;

    public FloorPan(ulong seed)
    {
        random = new SplitMix64(seed);
        for (int i = 0; i <= CellsAlong; i++)
            for (int j = 0; j <= CellsAcross; j++)
            {
                double x = i * CellMm, y = j * CellMm;
                double z = (18 * Math.Sin(x / 70)) + (12 * Math.Sin((y / 45) + (x / 210))) + (25 * Math.Sin(x / 400) * Math.Sin(y / 300));
                points[Number(i, j)] = new Vector3d(x - 1500, y - 750, z + random.In(-NoiseMm, NoiseMm));
            }
    }

    /// <summary>Writes the triangles as binary STL.</summary>
    public void WriteStl(string file)
    {
        byte[] bytes = new byte[HeadLength + (TriangleLength * Triangles)];
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(80), Triangles);
        int at = HeadLength;
        for (int i = 0; i < CellsAlong; i++)
            for (int j = 0; j < CellsAcross; j++)
            {
                int a = Number(i, j), b = Number(i + 1, j), c = Number(i + 1, j + 1), d = Number(i, j + 1);
                at = Write(bytes, at, a, b, c);
                at = Write(bytes, at, a, c, d);
            }

        File.WriteAllBytes(file, bytes);
    }

    /// <summary>Writes points beside the surface, 5 to 300 mm along its normal on either side, as doubles.</summary>
    public void WritePointsBeside(string file, int count)
    {
        byte[] bytes = new byte[24 * count];
        for (int i = 0; i < count; i++)
        {
            int along = (int)random.In(0, CellsAlong), across = (int)random.In(0, CellsAcross);
            Vector3d corner = points[Number(along, across)];
            Vector3d normal = Vector3d.Cross(points[Number(along + 1, across)] - corner, points[Number(along, across + 1)] - corner).NormalizedOr(Vector3d.UnitZ);
            double side = random.Unit() < 0.5 ? -1 : 1;
            Vector3d point = corner + (normal * (side * random.In(5, 300)));
            for (int axis = 0; axis < 3; axis++) BinaryPrimitives.WriteDoubleLittleEndian(bytes.AsSpan((24 * i) + (8 * axis)), point[axis]);
        }

        File.WriteAllBytes(file, bytes);
    }

    private static int Number(int along, int across) => (along * (CellsAcross + 1)) + across;

    private int Write(byte[] bytes, int at, int a, int b, int c)
    {
        int corner = at + 12;
        foreach (int number in (ReadOnlySpan<int>)[a, b, c])
            for (int axis = 0; axis < 3; axis++, corner += 4)
                BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(corner), (float)points[number][axis]);
        return at + TriangleLength;
    }
}
