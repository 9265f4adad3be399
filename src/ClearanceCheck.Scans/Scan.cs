using System.Collections.Immutable;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Scans;

/// <summary>A scanned surface as plain triangles. Vehicle frame: x forward, y left, z up; millimetres.</summary>
/// <remarks>
/// Equal corners are one point; points stand in the order in which triangles first name them, and every point is named.
/// Triangles stand in file order and keep their area, also where it is zero.
/// </remarks>
public sealed class Scan
{
    internal Scan(string file, ImmutableArray<Vector3d> points, ImmutableArray<int> corners)
    {
        (File, Points, Corners) = (file, points, corners);
        Vector3d low = points[0], high = points[0];
        foreach (Vector3d p in points)
        {
            low = new Vector3d(Math.Min(low.X, p.X), Math.Min(low.Y, p.Y), Math.Min(low.Z, p.Z));
            high = new Vector3d(Math.Max(high.X, p.X), Math.Max(high.Y, p.Y), Math.Max(high.Z, p.Z));
        }

        (Low, High) = (low, high);
    }

    /// <summary>The file's name as it was typed.</summary>
    public string File { get; }

    public ImmutableArray<Vector3d> Points { get; }

    /// <summary>Three numbers of points for each triangle, from 0.</summary>
    public ImmutableArray<int> Corners { get; }

    public int TriangleCount => Corners.Length / 3;

    /// <summary>The least x, y and z of all points.</summary>
    public Vector3d Low { get; }

    /// <summary>The greatest x, y and z of all points.</summary>
    public Vector3d High { get; }

    /// <summary>How long the scan is along x, y and z.</summary>
    public Vector3d Extent => High - Low;

    /// <summary>The three points of a triangle, counted from 0.</summary>
    public (int A, int B, int C) Triangle(int triangle) => (Corners[3 * triangle], Corners[(3 * triangle) + 1], Corners[(3 * triangle) + 2]);
}
