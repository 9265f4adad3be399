using ClearanceCheck.Geometry;

namespace ClearanceCheck.Scans.Tests;

/// <summary>Points and triangles before they are written into a file.</summary>
internal sealed record TestMesh(Vector3d[] Points, int[] Corners)
{
    /// <summary>A box of 40 x 24 x 10 that is not centred, so that no turn or mirror image looks like it.</summary>
    public static TestMesh Box { get; } = new(
        [.. Enumerable.Range(0, 8).Select(i => new Vector3d((i & 1) == 0 ? -8 : 32, (i & 2) == 0 ? 4 : 28, (i & 4) == 0 ? 1 : 11))],
        [0, 1, 3, 0, 3, 2, 4, 7, 5, 4, 6, 7, 0, 5, 1, 0, 4, 5, 2, 3, 7, 2, 7, 6, 0, 2, 6, 0, 6, 4, 1, 5, 7, 1, 7, 3]);

    public int TriangleCount => Corners.Length / 3;

    /// <summary>The corners of all triangles, one after the other.</summary>
    public IEnumerable<Vector3d> Soup => Corners.Select(c => Points[c]);

    public TestMesh Mapped(Func<Vector3d, Vector3d> map) => this with { Points = [.. Points.Select(map)] };

    public static IEnumerable<Vector3d> SoupOf(Scan scan) => scan.Corners.Select(c => scan.Points[c]);
}
