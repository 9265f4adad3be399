using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>Random pieces of each kind, and pairs of them, every second pair with a point in common.</summary>
internal static class HullScenes
{
    public const int Count = 4096;

    public static IEnumerable<(Hull First, Hull Second)> Pairs(HullShape first, HullShape second, ulong seed, int count = Count)
    {
        var g = new SplitMix64(seed);
        for (int i = 0; i < count; i++)
        {
            Hull a = Draw(first, g), b = Draw(second, g);
            Vector3d shift = a.Inside(g) - b.Inside(g);
            if (i % 2 == 0) shift += g.UnitVector() * g.In(0, 200);
            yield return (a, b.With(c => c + shift));
        }
    }

    public static Hull Draw(HullShape shape, SplitMix64 g) => shape switch
    {
        HullShape.Capsule => Capsule(g),
        HullShape.Triangle => new([.. Three(g)], PieceKind.Simplex, g.Unit() < 0.3 ? 0 : g.In(0, 10)),
        HullShape.Box => Box(g),
        _ => Stave(g),
    };

    private static Hull Capsule(SplitMix64 g)
    {
        Vector3d from = g.Cube(200);
        return new([from, from + g.Cube(80)], PieceKind.Simplex, g.In(2, 25));
    }

    private static IEnumerable<Vector3d> Three(SplitMix64 g)
    {
        Vector3d at = g.Cube(200);
        double size = Math.Pow(10, g.In(0, 2));
        for (int i = 0; i < 3; i++) yield return at + g.Cube(size);
    }

    private static Hull Box(SplitMix64 g)
    {
        RigidMotion pose = g.Motion(200);
        var half = new Vector3d(g.In(1, 100), g.In(1, 100), g.In(1, 100));
        var corners = new Vector3d[8];
        for (int i = 0; i < 8; i++) corners[i] = pose.Apply(new((i & 1) == 0 ? -half.X : half.X, (i & 2) == 0 ? -half.Y : half.Y, (i & 4) == 0 ? -half.Z : half.Z));
        return new(corners, PieceKind.Box, g.Unit() < 0.5 ? 0 : g.In(0, 10));
    }

    private static Hull Stave(SplitMix64 g)
    {
        Revolved solid = Revolved(g);
        int node = 0;
        while (!solid.IsLeaf(node)) node = g.Unit() < 0.5 ? solid.Left(node) : solid.Right(node);
        Span<Vector3d> corners = stackalloc Vector3d[Piece.MaximumCorners];
        int count = solid.Corners(node, corners);
        return new([.. corners[..count]], solid.Kind(node), solid.Radius(node));
    }

    /// <summary>One to four sections of one to four corners, some of them on the axis.</summary>
    public static Revolved Revolved(SplitMix64 g)
    {
        var sections = new List<Section>();
        int count = 1 + (int)(g.Unit() * 4);
        for (int i = 0; i < count; i++) sections.Add(Section(g));
        return new Revolved(g.Cube(200), g.UnitVector(), [.. sections], Math.Pow(10, g.In(-2.3, 1)));
    }

    private static Section Section(SplitMix64 g)
    {
        double low = g.Unit() < 0.2 ? 0 : g.In(5, 300), along = g.In(-100, 100), high = low + g.In(5, 150), width = g.In(2, 200);
        double radius = g.Unit() < 0.5 ? 0 : g.In(0, 12);
        ProfilePoint[] corners = (int)(g.Unit() * 5) switch
        {
            0 => [new(low + 5, along)],
            1 => [new(low, along), new(high, along + (g.Unit() < 0.5 ? 0 : width))],
            2 => [new(low, along), new(high, along), new(low + (g.Unit() * 40), along + width)],
            3 => [new(low, along), new(high, along), new(high, along + width), new(low, along + width)],
            _ => [new(low, along), new(high, along + g.In(-20, 0)), new(high + g.In(0, 20), along + width), new(low, along + (width * 0.7))],
        };
        return new Section([.. corners], radius);
    }
}
