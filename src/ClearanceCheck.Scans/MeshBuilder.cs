using System.Numerics;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Scans;

/// <summary>Collects triangles in the file's own coordinates and makes equal corners one point.</summary>
/// <param name="file">Where faults are said.</param>
/// <param name="expectedTriangles">How many triangles there will be about, already checked; zero where nobody knows.</param>
/// <remarks>Points get their numbers in order of first appearance, so that the same triangles give the same numbers from every format.</remarks>
internal sealed class MeshBuilder(ScanFile file, int expectedTriangles)
{
    private const int LeastExpected = 64;
    private const int Empty = 0;

    // A closed mesh has half as many points as triangles (Euler's formula); an open one has a few more.
    private Vector3d[] points = new Vector3d[(Math.Max(expectedTriangles, LeastExpected) / 2) + 1];
    private int[] corners = new int[3 * Math.Max(expectedTriangles, LeastExpected)];

    // Number of a point plus one, at the place its coordinates hash to or the next free one; a power of two, half full at most.
    private int[] slots = new int[BitOperations.RoundUpToPowerOf2((uint)Math.Max(expectedTriangles, LeastExpected))];
    private int pointCount;
    private int cornerCount;

    public ReadOnlySpan<Vector3d> Points => points.AsSpan(0, pointCount);

    public ReadOnlySpan<int> Corners => corners.AsSpan(0, cornerCount);

    public int TriangleCount => cornerCount / 3;

    /// <summary>The number of a point; -1, said once, where there would be too many.</summary>
    public int Point(Vector3d point)
    {
        // Minus zero equals zero but has other bits.
        point += Vector3d.Zero;
        int slot = Find(point);
        if (slots[slot] != Empty) return slots[slot] - 1;
        if (pointCount == ScanLimits.MostPoints)
        {
            ScanMessages.TooManyPoints(file);
            return -1;
        }

        if (pointCount == points.Length) GrowPoints();
        points[pointCount] = point;
        slots[slot] = ++pointCount;
        if (2 * pointCount > slots.Length) GrowSlots();
        return pointCount - 1;
    }

    /// <summary>Adds a triangle; false, said once, where there would be too many triangles or points.</summary>
    public bool Triangle(Vector3d a, Vector3d b, Vector3d c)
    {
        int first = Point(a);
        int second = first < 0 ? -1 : Point(b);
        int third = second < 0 ? -1 : Point(c);
        return third >= 0 && Triangle(first, second, third);
    }

    /// <summary>Adds a triangle of known points; false, said once, where there would be too many.</summary>
    public bool Triangle(int a, int b, int c)
    {
        if (TriangleCount == ScanLimits.MostTriangles)
        {
            ScanMessages.TooManyTriangles(file, null);
            return false;
        }

        if (cornerCount == corners.Length) Array.Resize(ref corners, (int)Math.Min(2L * corners.Length, 3L * ScanLimits.MostTriangles));
        (corners[cornerCount], corners[cornerCount + 1], corners[cornerCount + 2]) = (a, b, c);
        cornerCount += 3;
        return true;
    }

    private static ulong Hash(Vector3d point)
    {
        const ulong Odd = 0x9E3779B97F4A7C15;
        ulong hash = Mixed(BitConverter.DoubleToUInt64Bits(point.X) + Odd);
        hash = Mixed(hash ^ (BitConverter.DoubleToUInt64Bits(point.Y) * Odd));
        return Mixed(hash ^ (BitConverter.DoubleToUInt64Bits(point.Z) * Odd));
    }

    // The finalizer of SplitMix64 (Steele, Lea, Flood 2014): short coordinates differ in few bits, all must count.
    private static ulong Mixed(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    private int Find(Vector3d point)
    {
        int mask = slots.Length - 1;
        int slot = (int)(Hash(point) & (ulong)mask);
        while (slots[slot] != Empty && points[slots[slot] - 1] != point) slot = (slot + 1) & mask;
        return slot;
    }

    private void GrowPoints() => Array.Resize(ref points, Math.Min(points.Length + (points.Length / 2), ScanLimits.MostPoints));

    private void GrowSlots()
    {
        slots = new int[2 * slots.Length];
        for (int i = 0; i < pointCount; i++) slots[Find(points[i])] = i + 1;
    }
}
