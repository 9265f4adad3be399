using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>
/// Pieces with corners on a grid of 3 x 3 x 3 places 10 mm apart: nearly every pair shares corners, lies in one plane or on one line, has
/// no area or length, or touches at a face, edge or corner.
/// </summary>
internal static class Lattice
{
    public static Hull Draw(HullShape shape, SplitMix64 g)
    {
        double radius = g.Unit() < 0.5 ? 0 : 1 + (int)(g.Unit() * 4);
        switch (shape)
        {
            case HullShape.Capsule: return new([Place(g), Place(g)], PieceKind.Simplex, radius);
            case HullShape.Triangle: return new([Place(g), Place(g), Place(g)], PieceKind.Simplex, radius);
            case HullShape.Box:
                var corners = new Vector3d[8];
                new SolidBox(Place(g), Place(g)).Corners(0, corners);
                return new(corners, PieceKind.Box, radius);
            default: return Stave(g, radius);
        }
    }

    // A quarter of an eighth-turn and its likes: corners shared with other staves of the same axis, some of them on it.
    private static Hull Stave(SplitMix64 g, double radius)
    {
        double low = 10 * (int)(g.Unit() * 2), high = low + 10, along = 10 * (int)(g.Unit() * 3), width = 10 * (int)(g.Unit() * 2);
        ProfilePoint[] corners = (int)(g.Unit() * 4) switch
        {
            0 => [new(low, along)],
            1 => [new(low, along), new(high, along + width)],
            2 => [new(low, along), new(high, along), new(low, along + 10)],
            _ => [new(low, along), new(high, along), new(high, along + 10), new(low, along + 10)],
        };
        var solid = new Revolved(Vector3d.Zero, Vector3d.UnitZ, [new Section([.. corners], radius)], 3);
        int node = 0;
        while (!solid.IsLeaf(node)) node = g.Unit() < 0.8 ? solid.Left(node) : solid.Right(node);
        Span<Vector3d> all = stackalloc Vector3d[Piece.MaximumCorners];
        int count = solid.Corners(node, all);
        return new([.. all[..count]], PieceKind.Stave, radius);
    }

    private static Vector3d Place(SplitMix64 g) => new(10 * (int)(g.Unit() * 3), 10 * (int)(g.Unit() * 3), 10 * (int)(g.Unit() * 3));
}
