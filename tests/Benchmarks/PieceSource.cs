using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Benchmarks;

/// <summary>Draws pieces at random: capsules, triangles, boxes, and staves of a tire, all of a vehicle's sizes.</summary>
internal sealed class PieceSource(SplitMix64 random)
{
    private const string Capsule = "capsule";
    private const string Triangle = "triangle";
    private const string Box = "box";
    private const string Stave = "stave";

    private const double Spread = 150;
    private const double Size = 80;

    public static IReadOnlyList<string> Kinds { get; } = [Capsule, Triangle, Box, Stave];

    public Corners Next(string kind) => kind switch
    {
        Capsule => NextCapsule(),
        Triangle => NextTriangle(),
        Box => NextBox(),
        _ => NextStave(),
    };

    private Corners NextCapsule()
    {
        Vector3d from = random.Cube(Spread);
        return new Corners([from, from + random.Cube(Size)], PieceKind.Simplex, random.In(2, 25));
    }

    private Corners NextTriangle()
    {
        Vector3d a = random.Cube(Spread);
        return new Corners([a, a + random.Cube(Size), a + random.Cube(Size)], PieceKind.Simplex, 0);
    }

    private Corners NextBox()
    {
        Vector3d center = random.Cube(Spread), x = random.Cube(1).NormalizedOr(Vector3d.UnitX), y = x.AnyPerpendicular(), z = Vector3d.Cross(x, y);
        x *= random.In(10, Size);
        y *= random.In(10, Size);
        z *= random.In(10, Size);
        var corners = new Vector3d[8];
        for (int i = 0; i < corners.Length; i++)
            corners[i] = center + (x * ((i & 1) == 0 ? -1 : 1)) + (y * ((i & 2) == 0 ? -1 : 1)) + (z * ((i & 4) == 0 ? -1 : 1));
        return new Corners(corners, PieceKind.Box, 0);
    }

    // A leaf of a solid of revolution, moved so that it lies among the others.
    private Corners NextStave()
    {
        double inner = random.In(60, 120);
        Section section = new([new(inner, -40), new(inner + 60, -50), new(inner + 60, 50), new(inner, 40)], 0);
        var solid = new Revolved(Vector3d.Zero, random.Cube(1).NormalizedOr(Vector3d.UnitZ), [section]);
        int[] leaves = [.. Enumerable.Range(0, solid.NodeCount).Where(solid.IsLeaf)];
        int leaf = leaves[(int)(random.Unit() * leaves.Length)];
        Span<Vector3d> corners = stackalloc Vector3d[Piece.MaximumCorners];
        int count = solid.Corners(leaf, corners);
        Vector3d middle = Vector3d.Zero, place = random.Cube(Spread);
        foreach (Vector3d corner in corners[..count]) middle += corner / count;
        for (int i = 0; i < count; i++) corners[i] += place - middle;
        return new Corners(corners[..count].ToArray(), solid.Kind(leaf), solid.Radius(leaf));
    }
}
