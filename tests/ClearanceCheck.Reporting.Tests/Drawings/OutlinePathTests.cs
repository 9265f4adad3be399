using System.Collections.Immutable;
using ClearanceCheck.Reporting.Drawings;
using CsCheck;

namespace ClearanceCheck.Reporting.Tests.Drawings;

public sealed class OutlinePathTests
{
    private static readonly Gen<ImmutableArray<PagePoint>> Polygons = Gen.Select(Gen.Int[0, 12], Gen.Int[0, 12])
        .Select((x, y) => new PagePoint(x, y)).Array[3, 5].Select(points => ConvexHull.Of(points).ToImmutableArray());

    [Fact]
    public void The_border_that_two_triangles_share_is_left_out() =>
        OutlinePath.Of([[new(0, 0), new(10, 0), new(10, 10.25)], [new(0, 0), new(10, 10.25), new(0, 10)]]).ShouldBe("M0 0l10 0 0 10.25-10-0.25z");

    [Fact]
    public void Pieces_without_area_are_a_line_and_a_dot() =>
        OutlinePath.Of([[new(1, 2), new(4, 6)], [new(7, 7)], [new(7.001, 7)]]).ShouldBe("M1 2l3 4M7 7l0 0");

    [Fact]
    public void The_path_covers_what_the_pieces_cover_and_nothing_else() => Polygons.Array[1, 12].Sample(polygons =>
    {
        DrawnPath path = new(OutlinePath.Of(polygons));
        SilhouettePiece[] pieces = [.. polygons.Where(p => p.Length > 2).Select(p => new SilhouettePiece(p, 0))];
        // Places off the grid of corners and with an odd slope between them, so that none lies on a border.
        for (double x = 0.37; x < 12; x++)
            for (double y = 0.413; y < 12; y++)
                if (path.Winding(new PagePoint(x, y)) != pieces.Count(p => p.RoomBeside(new PagePoint(x, y)) < 0)) return false;
        return true;
    });
}
